using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Reads visits.</summary>
public sealed class VisitReader(LogBookStore store)
{
    /// <summary>A visit, in its current version or the one asked for; null when the viewer knows none.</summary>
    public Task<StoredVisit?> FindAsync(Viewer viewer, Guid visitId, int? version = null, CancellationToken cancellationToken = default) => store.ReadAsync(
        viewer,
        async db =>
        {
            var found = await db.Visits.Where(visit => visit.VisitId == visitId)
                .Join(db.Sites, visit => visit.SiteId, site => site.Id, (visit, site) => new { Row = visit, site.Code })
                .SingleOrDefaultAsync(cancellationToken);
            if (found is null)
            {
                return null;
            }

            var versions = await db.VisitVersions.Where(row => row.VisitRowId == found.Row.Id).OrderBy(row => row.Version)
                .Select(row => new StoredVersion(row.Version, row.Sha256, row.ReceivedAt, row.Source, row.Who, row.Reason)).ToListAsync(cancellationToken);
            var wanted = version ?? found.Row.CurrentVersion;
            var document = await db.VisitVersions.Where(row => row.VisitRowId == found.Row.Id && row.Version == wanted)
                .Select(row => row.Document).SingleOrDefaultAsync(cancellationToken);
            return document is null ? null : new StoredVisit(found.Row, Placed(ExchangeReader.Parse<Visit>(document), found.Row, found.Code), versions);
        },
        cancellationToken);

    /// <summary>The visit at the site where it counts now.</summary>
    internal static Visit Placed(Visit visit, VisitRow row, string siteCode) => row.MovedFromSiteId is null ? visit : visit with { Site = siteCode };
}
