using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>What is recorded of a site: its systems and every version of every visit that counts.</summary>
internal sealed record SiteRecords(SiteRow Site, IReadOnlyList<SystemRow> Systems, IReadOnlyList<Visit> Versions, IReadOnlyDictionary<Guid, int> VisitRows, IReadOnlyList<Notice> Notices)
{
    // More than this one by one would cost more than reading all of them again.
    private const int MostMissing = 40;

    /// <summary>What authorities were told of results of a system.</summary>
    /// <param name="system">Code of the system.</param>
    public IReadOnlyList<Notification> NotificationsOf(string system) => [.. Notices.Where(notice => CodeKeys.Of(notice.System) == CodeKeys.Of(system)).Select(notice => notice.Told)];

    /// <summary>Reads it under the viewer; null when the viewer knows no such site.</summary>
    /// <param name="db">Unit of work.</param>
    /// <param name="siteId">The site.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <param name="kept">Documents read before, which are then not read again; null to read every one.</param>
    public static async Task<SiteRecords?> ReadAsync(LogBookDb db, int siteId, CancellationToken cancellationToken, KeptDocuments? kept = null)
    {
        if (await db.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId, cancellationToken) is not { } site)
        {
            return null;
        }

        var systems = await db.Systems.AsNoTracking().Where(row => row.SiteId == siteId).OrderBy(row => row.CodeKey).ToListAsync(cancellationToken);
        var visits = kept is null ? await AllAsync(db, site, cancellationToken) : await NewAsync(db, site, kept, cancellationToken);

        // Few in number, and of the firm alone: their key begins with the site.
        var prefix = Notice.PrefixOf(site.CodeKey);
        var notices = await db.SetUp.Where(row => row.Kind == SetUpKind.Notice && row.RetiredAt == null && row.CodeKey.StartsWith(prefix)).OrderBy(row => row.Id).Select(row => row.Document).ToListAsync(cancellationToken);
        return new SiteRecords(
            site,
            systems,
            [.. visits.Select(visit => visit.Document)],
            visits.DistinctBy(visit => visit.Row).ToDictionary(visit => visit.VisitId, visit => visit.Row),
            [.. notices.Select(Notice.Read)]);
    }

    private static async Task<List<(int Row, Guid VisitId, Visit Document)>> AllAsync(LogBookDb db, SiteRow site, CancellationToken cancellationToken)
    {
        var rows = await db.Visits.AsNoTracking().Where(visit => visit.SiteId == site.Id && visit.VoidedAt == null)
            .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (visit, version) => new { visit, version.Document })
            .ToListAsync(cancellationToken);
        return rows.ConvertAll(row => (row.visit.Id, row.visit.VisitId, VisitReader.Placed(ExchangeReader.Parse<Visit>(row.Document), row.visit, site.Code)));
    }

    private static async Task<List<(int Row, Guid VisitId, Visit Document)>> NewAsync(LogBookDb db, SiteRow site, KeptDocuments kept, CancellationToken cancellationToken)
    {
        var rows = await db.Visits.AsNoTracking().Where(visit => visit.SiteId == site.Id && visit.VoidedAt == null)
            .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (visit, version) => new { visit, version.Id, version.Sha256 })
            .ToListAsync(cancellationToken);
        var known = kept.Of(site.Id);
        string KeyOf(VisitRow visit, string sha256) => KeptDocuments.KeyOf(sha256, visit.MovedFromSiteId is null ? null : site.Code);
        var missing = rows.Where(row => !known.ContainsKey(KeyOf(row.visit, row.Sha256))).Select(row => row.Id).ToList();
        var texts = missing.Count == 0 ? []
            : missing.Count <= MostMissing
                ? await db.VisitVersions.Where(version => missing.Contains(version.Id)).ToDictionaryAsync(version => version.Id, version => version.Document, cancellationToken)
                : await db.Visits.Where(visit => visit.SiteId == site.Id && visit.VoidedAt == null)
                    .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (_, version) => new { version.Id, version.Document })
                    .ToDictionaryAsync(version => version.Id, version => version.Document, cancellationToken);

        // A visit has an identity, so that no two of a site have the same text.
        var now = new Dictionary<string, Visit>();
        var visits = new List<(int, Guid, Visit)>(rows.Count);
        foreach (var row in rows)
        {
            var key = KeyOf(row.visit, row.Sha256);
            var visit = known.TryGetValue(key, out var read) ? read : VisitReader.Placed(ExchangeReader.Parse<Visit>(texts[row.Id]), row.visit, site.Code);
            now[key] = visit;
            visits.Add((row.visit.Id, row.visit.VisitId, visit));
        }

        kept.Keep(site.Id, now);
        return visits;
    }
}
