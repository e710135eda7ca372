using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Settings;

/// <summary>History and open findings of one system, for the pages about its settings. Three statements beside the set-up.</summary>
internal sealed record SystemRecords(SystemHeading Heading, SystemHistory History, int SystemId, DateOnly Today, IReadOnlyList<AttentionRow> Findings)
{
    /// <summary>Reads them; null where there is no such system, the viewer may not see it, or it is not in the set-up in use.</summary>
    public static async Task<SystemRecords?> ReadAsync(
        LogBookDb db, Viewer viewer, FirmSetUp firm, string siteCode, string systemCode, DateTime now, CancellationToken cancellationToken)
    {
        var (siteKey, systemKey) = (CodeKeys.Of(siteCode), CodeKeys.Of(systemCode));
        var found = await db.Sites.Where(site => site.CodeKey == siteKey)
            .Join(db.Systems.Where(system => system.CodeKey == systemKey), site => site.Id, system => system.SiteId, (site, system) => new { Site = site, System = system })
            .FirstOrDefaultAsync(cancellationToken);
        if (found is null || firm.System(found.Site.Code, found.System.Code) is null)
        {
            return null;
        }

        var documents = await db.Visits
            .Where(visit => visit.SiteId == found.Site.Id && visit.VoidedAt == null)
            .Join(
                db.VisitVersions,
                visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                version => new { version.VisitRowId, version.Version },
                (visit, version) => version.Document)
            .ToListAsync(cancellationToken);
        var rows = await AttentionQuery.Seen(db, viewer)
            .Where(finding => finding.SystemId == found.System.Id && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
            .OrderBy(finding => finding.Severity == Severity.Act ? 0 : finding.Severity == Severity.Plan ? 1 : 2).ThenBy(finding => finding.FirstSeen)
            .Take(200).ToListAsync(cancellationToken);
        var history = SystemHistory.From(firm, found.Site.Code, found.System.Code, documents.Select(Documents.Visit));
        var today = SitesQuery.DayIn(history.Zone, now);
        return new SystemRecords(
            new SystemHeading(found.Site.Code, found.Site.Name, found.System.Code, found.System.Name, found.Site.TimeZone),
            history,
            found.System.Id,
            today,
            [
                .. rows.Select(row => new AttentionRow(
                    new FindingKey(found.Site.Code, found.System.Code, row.Kind, row.AboutKey, row.FirstSeen),
                    found.Site.Name,
                    found.System.Name,
                    found.Site.AssignedTo,
                    Documents.Finding(row, viewer.Language),
                    today.DayNumber - row.FirstSeen.DayNumber)),
            ]);
    }
}
