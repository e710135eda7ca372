using LogBook.Application.Data;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>Needs attention: the open findings of the firm, for its own people only.</summary>
public sealed class AttentionQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Findings on a page.</summary>
    public const int PageSize = 100;

    // What the list says a number of; counted in one statement.
    private enum Counted
    {
        Listed,
        Ahead,
        Asleep,
        SecondLook,
    }

    // What sleeps has left the list until its day; kinds of it are still offered by the filter.
    private static readonly FindingState[] Waiting = [FindingState.Open, FindingState.Acknowledged];

    private static readonly FindingState[] NotOver = [.. Waiting, FindingState.Snoozed];

    /// <summary>The list; null where the viewer may not see findings at all.</summary>
    public async Task<AttentionList?> ListAsync(Viewer viewer, AttentionFilter filter, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm || (filter.SecondLook && !viewer.MayReview))
        {
            return null;
        }

        return await store.ReadAsync(
            viewer,
            async db =>
            {
                var sites = await db.Sites.Where(site => site.RetiredAt == null).OrderBy(site => site.CodeKey)
                    .Select(site => new { site.Id, site.Code, site.CodeKey, site.Name, site.AssignedTo, site.TimeZone })
                    .ToListAsync(cancellationToken);
                var seen = Seen(db, viewer);
                var kinds = await seen.Where(finding => NotOver.Contains(finding.State)).Select(finding => finding.Kind).Distinct().OrderBy(kind => kind).ToListAsync(cancellationToken);
                var apart = viewer.MayReview && !filter.SecondLook && string.IsNullOrEmpty(filter.Kind);
                var asked = Asked(db, apart ? seen.Where(finding => !FindingKey.AboutRecords.Contains(finding.Kind)) : seen, filter);
                var counted = asked.Select(_ => Counted.Listed);
                if (LeavesDuesOut(filter))
                {
                    counted = counted.Concat(Asked(db, seen, filter with { Kind = FindingKinds.ClockDue, Severity = Severity.Watch }).Select(_ => Counted.Ahead));
                }

                if (filter.State is null)
                {
                    counted = counted.Concat(Asked(db, seen, filter with { State = FindingState.Snoozed }).Select(_ => Counted.Asleep));
                }

                if (apart)
                {
                    counted = counted.Concat(Asked(db, seen, new AttentionFilter(SecondLook: true)).Select(_ => Counted.SecondLook));
                }

                var counts = await counted.GroupBy(what => what).Select(group => new { What = group.Key, Count = group.Count() }).ToDictionaryAsync(group => group.What, group => group.Count, cancellationToken);
                var rows = await asked
                    .OrderBy(finding => finding.Severity == Severity.Act ? 0 : finding.Severity == Severity.Plan ? 1 : 2)
                    .ThenBy(finding => finding.FirstSeen)
                    .ThenBy(finding => finding.SiteId).ThenBy(finding => finding.SystemId).ThenBy(finding => finding.Kind).ThenBy(finding => finding.AboutKey)
                    .Skip((Math.Max(1, filter.Page) - 1) * PageSize).Take(PageSize)
                    .Select(finding => new
                    {
                        finding.SiteId,
                        finding.SystemId,
                        finding.Kind,
                        finding.AboutKey,
                        finding.FirstSeen,
                        Owner = db.FindingMarks
                            .Where(mark => mark.SystemId == finding.SystemId && mark.Kind == finding.Kind && mark.AboutKey == finding.AboutKey && mark.FirstSeen == finding.FirstSeen && mark.State == FindingState.Acknowledged)
                            .Select(mark => mark.Owner).FirstOrDefault(),
                        System = db.Systems.Where(system => system.Id == finding.SystemId).Select(system => new { system.Code, system.Name }).FirstOrDefault(),
                        Json = viewer.Language == Language.Spanish ? finding.Spanish : viewer.Language == Language.Portuguese ? finding.Portuguese : finding.English,
                    })
                    .ToListAsync(cancellationToken);
                var owners = await db.FindingMarks.Where(mark => mark.State == FindingState.Acknowledged && mark.Owner != null).Select(mark => mark.Owner!).Distinct().OrderBy(owner => owner).ToListAsync(cancellationToken);
                var deadlines = await DeadlineReader.ReadAsync(db, [.. rows.Where(row => FindingDeadlines.Kinds.Contains(row.Kind)).Select(row => row.SystemId).OfType<int>().Distinct()], cancellationToken);
                var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
                var siteOf = sites.ToDictionary(site => site.Id);
                return new AttentionList(
                    [
                        .. rows.Select(row =>
                        {
                            var site = row.SiteId is { } id ? siteOf.GetValueOrDefault(id) : null;
                            var finding = Documents.Finding(row.Json);
                            return new AttentionRow(
                                new FindingKey(site?.Code, row.System?.Code, row.Kind, row.AboutKey, row.FirstSeen),
                                site?.Name,
                                row.System?.Name,
                                site?.AssignedTo,
                                finding,
                                today.DayNumber - row.FirstSeen.DayNumber)
                            {
                                Deadline = site is null ? null : deadlines.Of(row.SystemId, finding, site.TimeZone),
                                TimeZone = site?.TimeZone,
                                Owner = row.Owner,
                            };
                        }),
                    ],
                    counts.GetValueOrDefault(Counted.Listed),
                    kinds,
                    [.. sites.Select(site => (site.Code, site.Name))],
                    [.. sites.Select(site => site.AssignedTo).OfType<string>().Distinct().Order(StringComparer.Ordinal)])
                {
                    Owners = owners,
                    DuesAhead = counts.GetValueOrDefault(Counted.Ahead),
                    SecondLooks = counts.GetValueOrDefault(Counted.SecondLook),
                    Asleep = counts.GetValueOrDefault(Counted.Asleep),
                };
            },
            cancellationToken);
    }

    /// <summary>One finding; null where there is none or the viewer may not see it.</summary>
    public async Task<AttentionRow?> FindAsync(Viewer viewer, FindingKey key, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        return await store.ReadAsync(
            viewer,
            async db =>
            {
                var rows = Seen(db, viewer).Where(finding => finding.Kind == key.Kind && finding.AboutKey == key.About && finding.FirstSeen == key.FirstSeen);
                var siteKey = key.Site is null ? null : CodeKeys.Of(key.Site);
                var systemKey = key.System is null ? null : CodeKeys.Of(key.System);
                rows = siteKey is null ? rows.Where(finding => finding.SiteId == null) : rows.Where(finding => db.Sites.Any(site => site.Id == finding.SiteId && site.CodeKey == siteKey));
                rows = systemKey is null ? rows.Where(finding => finding.SystemId == null) : rows.Where(finding => db.Systems.Any(system => system.Id == finding.SystemId && system.CodeKey == systemKey));
                var row = await rows
                    .Select(finding => new
                    {
                        Finding = finding,
                        Site = db.Sites.Where(site => site.Id == finding.SiteId).Select(site => new { site.Code, site.Name, site.AssignedTo, site.TimeZone }).FirstOrDefault(),
                        System = db.Systems.Where(system => system.Id == finding.SystemId).Select(system => new { system.Code, system.Name }).FirstOrDefault(),
                        Owner = db.FindingMarks
                            .Where(mark => mark.SystemId == finding.SystemId && mark.Kind == finding.Kind && mark.AboutKey == finding.AboutKey && mark.FirstSeen == finding.FirstSeen && mark.State == FindingState.Acknowledged)
                            .Select(mark => mark.Owner).FirstOrDefault(),
                    })
                    .FirstOrDefaultAsync(cancellationToken);
                var deadlines = await DeadlineReader.ReadAsync(db, row?.Finding.SystemId is { } own && FindingDeadlines.Kinds.Contains(key.Kind) ? [own] : [], cancellationToken);
                var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
                return row is null
                    ? null
                    : new AttentionRow(
                        new FindingKey(row.Site?.Code, row.System?.Code, row.Finding.Kind, row.Finding.AboutKey, row.Finding.FirstSeen),
                        row.Site?.Name,
                        row.System?.Name,
                        row.Site?.AssignedTo,
                        Documents.Finding(row.Finding, viewer.Language),
                        today.DayNumber - row.Finding.FirstSeen.DayNumber)
                    {
                        Id = row.Finding.Id,
                        Deadline = row.Site is null ? null : deadlines.Of(row.Finding.SystemId, Documents.Finding(row.Finding, viewer.Language), row.Site.TimeZone),
                        TimeZone = row.Site?.TimeZone,
                        Owner = row.Owner,
                    };
            },
            cancellationToken);
    }

    /// <summary>Findings that a viewer may see: what is about instruments, lots and somebody's records is for reviewers alone (<see cref="FindingKey.MaySee"/>).</summary>
    internal static IQueryable<FindingRow> Seen(LogBookDb db, Viewer viewer) => viewer.MayReview
        ? db.Findings
        : db.Findings.Where(finding => !FindingKey.AboutRecords.Contains(finding.Kind));

    // What is due soon is planned work and would bury what is out of line; it is listed when it is asked for.
    private static bool LeavesDuesOut(AttentionFilter filter) => string.IsNullOrEmpty(filter.Kind) && filter.Severity is null && filter.State is null;

    private static IQueryable<FindingRow> Asked(LogBookDb db, IQueryable<FindingRow> seen, AttentionFilter filter)
    {
        var asked = filter.State is { } state ? seen.Where(finding => finding.State == state) : seen.Where(finding => Waiting.Contains(finding.State));
        if (filter.SecondLook)
        {
            asked = asked.Where(finding => FindingKey.AboutRecords.Contains(finding.Kind));
        }

        if (!string.IsNullOrEmpty(filter.Kind))
        {
            asked = asked.Where(finding => finding.Kind == filter.Kind);
        }
        else if (LeavesDuesOut(filter))
        {
            asked = asked.Where(finding => finding.Kind != FindingKinds.ClockDue || finding.Severity != Severity.Watch);
        }

        if (filter.Severity is { } severity)
        {
            asked = asked.Where(finding => finding.Severity == severity);
        }

        if (!string.IsNullOrEmpty(filter.Site))
        {
            var key = CodeKeys.Of(filter.Site);
            asked = asked.Where(finding => db.Sites.Any(site => site.Id == finding.SiteId && site.CodeKey == key));
        }

        if (!string.IsNullOrEmpty(filter.Person))
        {
            var key = CodeKeys.Of(filter.Person);
            asked = asked.Where(finding => db.Sites.Any(site => site.Id == finding.SiteId && site.AssignedTo == key));
        }

        if (filter.Owner == AttentionFilter.Nobody)
        {
            asked = asked.Where(finding => !db.FindingMarks.Any(mark => mark.SystemId == finding.SystemId && mark.Kind == finding.Kind && mark.AboutKey == finding.AboutKey && mark.FirstSeen == finding.FirstSeen
                && mark.State == FindingState.Acknowledged && mark.Owner != null));
        }
        else if (!string.IsNullOrEmpty(filter.Owner))
        {
            asked = asked.Where(finding => db.FindingMarks.Any(mark => mark.SystemId == finding.SystemId && mark.Kind == finding.Kind && mark.AboutKey == finding.AboutKey && mark.FirstSeen == finding.FirstSeen
                && mark.State == FindingState.Acknowledged && mark.Owner == filter.Owner));
        }

        return asked;
    }
}
