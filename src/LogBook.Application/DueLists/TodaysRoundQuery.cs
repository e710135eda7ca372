using LogBook.Application.Data;
using LogBook.Application.History;
using LogBook.Application.Planning;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

#pragma warning disable CA1304, CA1311, CA1862 // These run in the database, as upper(), the same on both providers.

namespace LogBook.Application.DueLists;

/// <summary>Today's round: what is planned for a technician today, in its order, then the own sites and those of people who are away, with what changed since the last visit; all sites for who reviews. Eight statements at most.</summary>
public sealed class TodaysRoundQuery(LogBookStore store, SitesQuery sites, TimeProvider clock)
{
    /// <summary>Entries told for a site; the rest is on its page.</summary>
    public const int MostEntries = 12;

    /// <summary>The round; null for a viewer who has none (customers and their staff).</summary>
    public async Task<Round?> OfAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        // Day by day of the calendar: which of them is today is a matter of each site's zone.
        var now = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var (plans, calendar) = await store.ReadAsync(viewer, db => PlanStore.WithCalendarAsync(db, now.AddDays(-1), now.AddDays(1), cancellationToken), cancellationToken);
        PlannedStop? PlannedAt(SiteDueRow site) => plans.GetValueOrDefault(site.Today)?.Plan.At(site.Code);
        if (viewer.Role != PersonRole.Technician || viewer.PersonCode is not { } person)
        {
            var all = await sites.ListAsync(viewer, null, cancellationToken);
            return new Round(null, [.. MostUrgentFirst(all).Select(site => With(calendar, new RoundStop(site, null, []) { PlannedFor = PlannedAt(site)?.Person }))]);
        }

        var planned = plans.Values.SelectMany(kept => kept.Plan.Of(person)).Select(stop => CodeKeys.Of(stop.Site)).Distinct().ToList();
        var absent = Enumerable.Range(-1, 3).SelectMany(days => calendar.StandsInFor(person, now.AddDays(days))).Select(CodeKeys.Of).Distinct().ToList();
        var known = await sites.ListAsync(viewer, [CodeKeys.Of(person), .. absent], planned, cancellationToken);
        bool IsOf(SiteDueRow site) => CodeKeys.Of(site.AssignedTo ?? "") == CodeKeys.Of(person);
        bool StandsIn(SiteDueRow site) => !IsOf(site) && CodeKeys.Of(calendar.WhoGoes(site.AssignedTo, site.Today, site.Code) ?? "") == CodeKeys.Of(person);
        var own = known.Where(site => IsOf(site) || StandsIn(site) || IsFor(PlannedAt(site), person)).ToList();
        var since = await SinceAsync(viewer, person, own, cancellationToken);
        return new Round(
            person,
            [
                .. MostUrgentFirst(own)
                    .Select(site => (site, stop: PlannedAt(site)))
                    .OrderBy(pair => IsFor(pair.stop, person) ? PlaceOf(plans[pair.site.Today].Plan, pair.stop!) : int.MaxValue)
                    .ThenBy(pair => plans.GetValueOrDefault(pair.site.Today)?.Plan.PlaceByHand(person, pair.site.Code) ?? int.MaxValue)
                    .Select(pair => With(calendar, (since.TryGetValue(pair.site.Code, out var told)
                        ? new RoundStop(pair.site, told.OwnLast, told.Entries)
                        : new RoundStop(pair.site, null, [])) with { PlannedFor = pair.stop?.Person, PlanVersion = plans.GetValueOrDefault(pair.site.Today)?.Version ?? 0, InPlaceOf = StandsIn(pair.site) ? pair.site.AssignedTo : null })),
            ]);
    }

    private static RoundStop With(RoundCalendar calendar, RoundStop stop)
    {
        var (site, goes) = (stop.Site, calendar.WhoGoes(stop.Site.AssignedTo, stop.Site.Today, stop.Site.Code));
        return stop with
        {
            GoneTo = stop.InPlaceOf is null && goes is not null && CodeKeys.Of(goes) != CodeKeys.Of(site.AssignedTo!) ? goes : null,
            Closed = calendar.Closed(site.Code, site.Today),
            GoOn = site.UrgentOn is { } due && due >= site.Today && calendar.ProposedFor(site.Code, due, site.Today) is { } day && day != due ? day : null,
        };
    }

    private static bool IsFor(PlannedStop? stop, string person) => stop is not null && CodeKeys.Of(stop.Person) == CodeKeys.Of(person);

    private static int PlaceOf(DayPlan plan, PlannedStop stop) => plan.Of(stop.Person).ToList().IndexOf(stop);

    private static IEnumerable<SiteDueRow> MostUrgentFirst(IEnumerable<SiteDueRow> sites) => sites
        .OrderBy(site => site.UrgentInDays ?? int.MaxValue).ThenByDescending(site => site.Open.Act).ThenBy(site => site.Code, StringComparer.OrdinalIgnoreCase);

    private async Task<Dictionary<string, (DateOnly OwnLast, IReadOnlyList<SinceEntry> Entries)>> SinceAsync(
        Viewer viewer, string person, IReadOnlyList<SiteDueRow> own, CancellationToken cancellationToken) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var key = CodeKeys.Of(person);
            var codes = own.Select(site => site.Code).ToList();
            var ownVisits = db.Visits.Where(visit => visit.VoidedAt == null && visit.Technician.ToUpper() == key && visit.Kind != VisitKind.Delivery && visit.Kind != VisitKind.Result);
            var lastOwn = (await db.Sites.Where(site => codes.Contains(site.Code))
                    .Select(site => new
                    {
                        site.Id,
                        site.Code,
                        site.TimeZone,
                        Arrived = ownVisits.Where(visit => visit.SiteId == site.Id).Max(visit => (DateTime?)visit.ArrivedAt),
                        Left = ownVisits.Where(visit => visit.SiteId == site.Id).Max(visit => visit.LeftAt),
                    })
                    .ToListAsync(cancellationToken))
                .Where(site => site.Arrived is not null).Select(site => new { site.Id, site.Code, site.TimeZone, Arrived = site.Arrived!.Value, site.Left }).ToList();
            if (lastOwn.Count == 0)
            {
                return [];
            }

            var ids = lastOwn.ConvertAll(site => site.Id);
            var earliest = lastOwn.Min(site => site.Arrived);

            // Versions that came in after the person left: visits by others, and what was amended or came back from the laboratory.
            var later = await db.Visits
                .Where(visit => visit.VoidedAt == null && ids.Contains(visit.SiteId))
                .Join(
                    db.VisitVersions.Where(version => version.ReceivedAt > earliest),
                    visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                    version => new { version.VisitRowId, version.Version },
                    (visit, version) => new { visit.SiteId, visit.ArrivedAt, visit.Technician, version.Version, version.Document })
                .Where(pair => pair.ArrivedAt > earliest || pair.Version > 1)
                .OrderByDescending(pair => pair.ArrivedAt).Take(400)
                .ToListAsync(cancellationToken);
            var earliestDay = DateOnly.FromDateTime(earliest).AddDays(-1);
            var findings = await AttentionQuery.Seen(db, viewer)
                .Where(finding => finding.SiteId != null && ids.Contains(finding.SiteId.Value) && finding.FirstSeen >= earliestDay && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                .Select(finding => new { finding.SiteId, finding.SystemId, finding.Kind, finding.AboutKey, finding.FirstSeen, finding.FirstVisit, finding.Severity, finding.English, finding.Spanish, finding.Portuguese })
                .ToListAsync(cancellationToken);
            var systemCodes = own.SelectMany(site => site.SystemCodes).ToDictionary();

            return lastOwn.ToDictionary(
                site => site.Code,
                site =>
                {
                    var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
                    var left = site.Left is { } moment && moment > site.Arrived ? moment : site.Arrived;
                    var leftDay = SitesQuery.DayIn(zone, left);
                    var entries = later.Where(pair => pair.SiteId == site.Id)
                        .SelectMany(pair => Told(Documents.Visit(pair.Document), key, left, zone))
                        .Concat(findings.Where(finding => finding.SiteId == site.Id && finding.FirstSeen > leftDay).Select(finding => new SinceEntry(
                            SinceKind.Finding,
                            finding.FirstSeen,
                            new Said(
                                RoundTexts.Found,
                                FindingTexts.NameOf(finding.Kind),
                                new Text(Documents.Finding(finding.English).Text, Documents.Finding(finding.Spanish).Text, Documents.Finding(finding.Portuguese).Text)),
                            finding.FirstVisit,
                            new FindingKey(site.Code, finding.SystemId is { } id ? systemCodes.GetValueOrDefault(id) : null, finding.Kind, finding.AboutKey, finding.FirstSeen),
                            finding.Severity)))
                        .OrderByDescending(entry => entry.Day).ThenBy(entry => entry.Kind)
                        .Take(MostEntries)
                        .ToList();
                    return (leftDay, (IReadOnlyList<SinceEntry>)entries);
                });
        },
        cancellationToken);

    private static IEnumerable<SinceEntry> Told(Visit visit, string person, DateTime left, TimeZoneInfo zone)
    {
        var day = SitesQuery.DayIn(zone, visit.Arrived.Utc);
        var byOther = CodeKeys.Of(visit.Technician) != person;
        if (visit.Arrived.Utc > left && byOther)
        {
            yield return new SinceEntry(SinceKind.Visit, day, new Said(RoundTexts.OtherVisit, VisitTexts.NameOf(visit.Kind), visit.Technician), visit.Id);
            foreach (var setting in visit.Systems.SelectMany(system => system.Settings).Where(setting => setting is { Found: not null, Left: not null } && setting.Found != setting.Left))
            {
                yield return new SinceEntry(SinceKind.Setting, day, HistoryMarks.Changed(setting), visit.Id);
            }
        }

        if (visit.Version > 1 && visit.AmendedAt is { } amended && amended.Utc > left)
        {
            yield return new SinceEntry(
                SinceKind.Amendment,
                SitesQuery.DayIn(zone, amended.Utc),
                new Said(RoundTexts.Amended, visit.AmendedBy ?? "–", string.IsNullOrWhiteSpace(visit.Reason) ? RoundTexts.NoReason : visit.Reason),
                visit.Id);
        }

        foreach (var reading in visit.Systems.SelectMany(system => system.Readings).Where(reading => reading.ResultAt is { } result && result.Utc > left))
        {
            yield return new SinceEntry(SinceKind.Result, SitesQuery.DayIn(zone, reading.ResultAt!.Value.Utc), HistoryMarks.Came(reading), visit.Id);
        }
    }
}
