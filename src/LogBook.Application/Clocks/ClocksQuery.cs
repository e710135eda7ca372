using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.DueLists;
using LogBook.Application.Mail;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Clocks;

/// <summary>All clocks of the firm: rules from the stored assessment, agreed visits and promised summaries. The same few statements for any number of sites.</summary>
public sealed class ClocksQuery(LogBookStore store, SetUpStore setUp, SitesQuery dues, TimeProvider clock)
{
    /// <summary>Clocks on a page.</summary>
    public const int PageSize = 100;

    // A summary that nobody sent for two months is a finding, not a clock.
    private const int SummaryDays = 100;

    /// <summary>The list; null where the viewer may not see clocks at all, or no such site.</summary>
    public async Task<ClocksList?> ListAsync(Viewer viewer, ClocksFilter filter, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var (now, firm, sites, lines) = await LinesAsync(viewer, cancellationToken);
        if (filter.Site is { } asked && !sites.Exists(site => Same(site.Code, asked)))
        {
            return null;
        }

        var matching = lines.Where(line => Matches(line, filter)).ToList();
        var shown = matching.Where(line => filter.Standing is { } standing ? line.Standing == standing : line.Standing != ClockStanding.Met).ToList();
        return new ClocksList(
            now,
            [
                .. shown.OrderBy(line => line.IsIdle).ThenBy(line => line.Standing switch { ClockStanding.Missed => 0, ClockStanding.DueSoon => 1, ClockStanding.Met => 3, _ => 2 })
                    .ThenBy(line => line.Clock.Kind == DutyKind.Notify ? 0 : 1)
                    .ThenBy(line => line.Clock.Due).ThenBy(line => line.Site, StringComparer.Ordinal).ThenBy(line => line.System, StringComparer.Ordinal).ThenBy(line => line.Clock.Rule, StringComparer.Ordinal)
                    .Skip((Math.Max(1, filter.Page) - 1) * PageSize).Take(PageSize),
            ],
            shown.Count,
            Enum.GetValues<ClockStanding>().ToDictionary(standing => standing, standing => matching.Count(line => line.Standing == standing)),
            [.. sites.OrderBy(site => site.Code, StringComparer.OrdinalIgnoreCase).Select(site => (site.Code, site.Name))],
            [.. sites.Select(site => site.AssignedTo).OfType<string>().Distinct().Order(StringComparer.Ordinal)],
            [.. lines.Select(line => line.Rule).OfType<Rule>().GroupBy(rule => rule.Code, StringComparer.OrdinalIgnoreCase).Select(versions => (versions.Key, versions.MaxBy(rule => rule.From)!.Name)).OrderBy(rule => rule.Key, StringComparer.OrdinalIgnoreCase)])
        {
            Versions = firm.Rules,
            Zones = sites.ToDictionary(site => site.Code, site => TimeZoneInfo.FindSystemTimeZoneById(firm.Sites[site.Code].TimeZone)),
        };
    }

    /// <summary>Clocks that no visit meets: an authority to be told, a summary to be sent. For people of the firm.</summary>
    internal async Task<IReadOnlyList<ClockLine>> OfOfficeAsync(Viewer viewer, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? []
        : [.. (await LinesAsync(viewer, cancellationToken)).Lines.Where(line => line.Clock is { Kind: DutyKind.Notify or DutyKind.Summary, IsMet: false })];

    private async Task<(DateTime Now, FirmSetUp Firm, List<SiteDueRow> Sites, List<ClockLine> Lines)> LinesAsync(Viewer viewer, CancellationToken cancellationToken)
    {
        var now = Utc.Now(clock);
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var sites = (await dues.ListAsync(viewer, cancellationToken: cancellationToken)).Where(site => firm.Sites.ContainsKey(site.Code)).ToList();
        var (kept, mails) = await store.ReadAsync(
            viewer,
            async db =>
            {
                var rows = await db.Clocks
                    .Join(db.Systems.Where(system => system.RetiredAt == null), row => row.SystemId, system => system.Id, (row, system) => new { row.Clocks, system.Code, system.SiteId })
                    .Join(db.Sites.Where(site => site.RetiredAt == null), row => row.SiteId, site => site.Id, (row, site) => new KeptRow(site.Code, row.Code, row.Clocks))
                    .ToListAsync(cancellationToken);
                var since = now.AddDays(-SummaryDays);
                var sent = await db.Outbox.Where(mail => mail.Kind == OutboxKinds.VisitSummary && mail.CreatedAt >= since)
                    .Join(db.Visits.Where(visit => visit.VoidedAt == null), mail => mail.VisitRowId, visit => visit.Id, (mail, visit) => new { mail.VisitVersion, mail.AcceptedAt, mail.LastError, visit.VisitId, visit.SiteId, visit.ArrivedAt, visit.LeftAt })
                    .Join(db.Sites, mail => mail.SiteId, site => site.Id, (mail, site) => new SentRow(site.Code, mail.VisitId, mail.VisitVersion, mail.LeftAt ?? mail.ArrivedAt, mail.AcceptedAt, mail.LastError))
                    .ToListAsync(cancellationToken);
                return (rows, sent);
            },
            cancellationToken);

        var lines = new List<ClockLine>();
        var duesOf = sites.ToDictionary(site => site.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var row in kept.Where(row => duesOf.ContainsKey(row.Site)))
        {
            lines.AddRange(OfRules(firm, duesOf[row.Site], row, now));
        }

        foreach (var site in sites)
        {
            lines.AddRange(OfContract(firm, site, mails, now));
        }

        return (now, firm, sites, lines);
    }

    private static IEnumerable<ClockLine> OfRules(FirmSetUp firm, SiteDueRow due, KeptRow row, DateTime now)
    {
        if (firm.System(row.Site, row.System) is not { } system)
        {
            yield break;
        }

        var zone = firm.Sites[row.Site].TimeZone;
        var isIdle = !PlantDays.Runs(system.Operation, DayIn(zone, now));
        foreach (var running in KeptClocks.Clocks(row.Clocks))
        {
            var rule = firm.Rules.FirstOrDefault(version => Same(version.Code, running.Rule) && version.From == running.RuleFrom);
            yield return new ClockLine(due.Code, due.Name, zone, due.AssignedTo, system.Code, system.Name, running, rule, running.StandingAt(now), isIdle && running.CountsOperatingDays);
        }
    }

    private static IEnumerable<ClockLine> OfContract(FirmSetUp firm, SiteDueRow due, List<SentRow> mails, DateTime now)
    {
        var site = firm.Sites[due.Code];
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        var operations = firm.SystemsOf(due.Code).Select(system => system.Operation).ToList();
        ClockLine Line(RunningClock running, bool isIdle) => new(due.Code, due.Name, site.TimeZone, due.AssignedTo, null, null, running, null, running.StandingAt(now), isIdle);
        if (due is { LastVisit: { } last, DueOn: { } on, EveryDays: { } every })
        {
            yield return Line(RunningClock.OfVisit(zone, last, on, every, operations), operations.Count > 0 && operations.TrueForAll(operation => !PlantDays.Runs(operation, DayIn(site.TimeZone, now))));
        }

        if (site.SummaryWithinHours is null && site.SummaryByMonthDay is null)
        {
            yield break;
        }

        // A summary is kept when any copy of it was taken; an amended one is a new promise of nothing.
        var promises = mails.Where(mail => Same(mail.Site, due.Code) && !MailNotes.IsReplaced(mail.LastError))
            .GroupBy(mail => mail.Visit)
            .Select(copies => RunningClock.OfSummary(copies.Key, copies.First().Left, SummaryPromise.DueOf(site, zone, copies.First().Left)!.Value, copies.Select(copy => copy.AcceptedAt).Where(accepted => accepted is not null).Min()))
            .OrderByDescending(promise => promise.Since)
            .ToList();
        foreach (var promise in promises.Where((promise, place) => place == 0 || !promise.IsMet))
        {
            yield return Line(promise, false) with { PromisedBy = SummaryPromise.DayOf(site, zone, promise.Since) };
        }
    }

    private static bool Matches(ClockLine line, ClocksFilter filter) =>
        (filter.Site is null || Same(line.Site, filter.Site))
        && (filter.Person is null || Same(line.AssignedTo, filter.Person))
        && (filter.Rule is null || Same(line.Rule?.Code, filter.Rule))
        && (filter.Kind is null || line.Clock.Kind == filter.Kind);

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static DateOnly DayIn(string zone, DateTime utc) => SitesQuery.DayIn(TimeZoneInfo.FindSystemTimeZoneById(zone), utc);

    private sealed record KeptRow(string Site, string System, string Clocks);

    private sealed record SentRow(string Site, Guid Visit, int Version, DateTime Left, DateTime? AcceptedAt, string? LastError);
}
