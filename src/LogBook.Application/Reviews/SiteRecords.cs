using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>What is recorded of a site: its systems and every version of every visit that counts.</summary>
internal sealed record SiteRecords(SiteRow Site, IReadOnlyList<SystemRow> Systems, IReadOnlyList<Visit> Versions, IReadOnlyDictionary<Guid, int> VisitRows)
{
    /// <summary>Reads it under the viewer; null when the viewer knows no such site.</summary>
    public static async Task<SiteRecords?> ReadAsync(LogBookDb db, int siteId, CancellationToken cancellationToken)
    {
        if (await db.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellationToken) is not { } site)
        {
            return null;
        }

        var systems = await db.Systems.AsNoTracking().Where(row => row.SiteId == siteId).OrderBy(row => row.CodeKey).ToListAsync(cancellationToken);
        var rows = await db.Visits.AsNoTracking().Where(visit => visit.SiteId == siteId && visit.VoidedAt == null)
            .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (visit, version) => new { visit, version.Document })
            .ToListAsync(cancellationToken);
        return new SiteRecords(
            site,
            systems,
            [.. rows.Select(row => VisitReader.Placed(ExchangeReader.Parse<Visit>(row.Document), row.visit, site.Code))],
            rows.DistinctBy(row => row.visit.Id).ToDictionary(row => row.visit.VisitId, row => row.visit.Id));
    }
}
