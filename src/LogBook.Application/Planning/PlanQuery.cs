using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Sites;
using LogBook.Domain.History;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>The planning page: who goes where, and what is not planned yet. Eight statements at most, however many sites there are.</summary>
public sealed class PlanQuery(LogBookStore store, SitesQuery sites, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Most days of one page.</summary>
    public const int MostDays = 14;

    /// <summary>The plan; null for a viewer who is not of the firm.</summary>
    /// <param name="viewer">Who asks; a technician sees the own stops, who reviews sees all.</param>
    /// <param name="from">First day; today at the sites of who asks when null.</param>
    /// <param name="days">Number of days, 1 to <see cref="MostDays"/>.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<PlanView?> OfAsync(Viewer viewer, DateOnly? from, int days, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var all = await sites.ListAsync(viewer, null, cancellationToken);
        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        var served = viewer.MayReview ? all : [.. all.Where(site => CodeKeys.Of(site.AssignedTo ?? "") == CodeKeys.Of(viewer.PersonCode ?? ""))];
        var today = WorkingDay.Of((served.Count > 0 ? served : all).Select(site => site.Today)) ?? DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var first = from ?? today;
        var last = first.AddDays(Math.Clamp(days, 1, MostDays) - 1);
        var ((plans, calendar), visits) = await store.ReadAsync(
            viewer,
            async db => (await PlanStore.WithCalendarAsync(db, first, last, cancellationToken), await VisitsAsync(db, first, last, cancellationToken)),
            cancellationToken);
        var siteOf = all.ToDictionary(site => site.Code, StringComparer.OrdinalIgnoreCase);
        var own = viewer.MayReview ? null : viewer.PersonCode ?? "";
        var planned = plans.Values.SelectMany(kept => kept.Plan.Stops).Select(stop => stop.Site).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return new PlanView(
            first,
            today,
            [
                .. Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(first.AddDays).Select(day =>
                {
                    var kept = plans.GetValueOrDefault(day);
                    return new PlanDay(
                        day,
                        kept?.Version ?? 0,
                        day < DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime).AddDays(-1),
                        [
                            .. (kept?.Plan.Stops ?? []).GroupBy(stop => stop.Person, StringComparer.OrdinalIgnoreCase)
                                .Where(group => own is null || CodeKeys.Of(group.Key) == CodeKeys.Of(own))
                                .Select(group => new PersonDay(
                                    group.Key,
                                    firm.People.GetValueOrDefault(group.Key)?.Name ?? group.Key,
                                    [.. group.Select(stop => new PlanStop(stop.Site, siteOf.GetValueOrDefault(stop.Site), visits.TryGetValue((CodeKeys.Of(stop.Site), day), out var made) ? made.State : null) { Spent = made.Spent })]))
                                .OrderBy(person => person.Name, StringComparer.CurrentCultureIgnoreCase),
                        ])
                    {
                        HandedAway = viewer.PersonCode is { } self ? kept?.Plan.HandedBy(self) ?? [] : [],
                    };
                }),
            ],
            [
                .. all.Where(site => !planned.Contains(site.Code) && (own is null || CodeKeys.Of(site.AssignedTo ?? "") == CodeKeys.Of(own) || CodeKeys.Of(calendar.WhoGoes(site.AssignedTo, site.Today, site.Code) ?? "") == CodeKeys.Of(own)))
                    .OrderBy(site => site.UrgentInDays ?? int.MaxValue).ThenByDescending(site => site.Open.Act).ThenBy(site => site.Code, StringComparer.OrdinalIgnoreCase),
            ],
            WhoMayGo(firm),
            calendar)
        {
            Technicians = [.. WhoMayGo(firm).Select(person => person.Code).Where(code => firm.People[code].Role == PersonRole.Technician)],
        };
    }

    /// <summary>Who may be sent to sites: code and name, technicians first; those who have left are not in a set-up that is in use.</summary>
    public static IReadOnlyList<(string Code, string Name)> WhoMayGo(FirmSetUp firm) =>
    [
        .. firm.People.Values.Where(PlanStore.Goes).OrderBy(person => person.Role == PersonRole.Technician ? 0 : 1).ThenBy(person => person.Name, StringComparer.CurrentCultureIgnoreCase)
            .Select(person => (person.Code, person.Name)),
    ];

    // The day of a visit is the day at its site; a day more on either side holds every zone.
    private static async Task<Dictionary<(string Site, DateOnly Day), (VisitState State, double? Spent)>> VisitsAsync(LogBookDb db, DateOnly from, DateOnly to, CancellationToken cancellationToken)
    {
        var (first, last) = (from.AddDays(-1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc), to.AddDays(2).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc));
        var rows = await db.Visits.Where(visit => visit.VoidedAt == null && visit.ArrivedAt >= first && visit.ArrivedAt < last && visit.Kind != VisitKind.Delivery && visit.Kind != VisitKind.Result)
            .Join(db.Sites, visit => visit.SiteId, site => site.Id, (visit, site) => new { site.CodeKey, site.TimeZone, visit.ArrivedAt, visit.LeftAt, visit.State })
            .ToListAsync(cancellationToken);
        return rows.GroupBy(row => (row.CodeKey, SitesQuery.DayIn(TimeZoneInfo.FindSystemTimeZoneById(row.TimeZone), row.ArrivedAt)))
            .ToDictionary(group => group.Key, group =>
            {
                // Two visits on a day are added; one without a departure makes the sum unknown.
                var minutes = group.Select(row => VisitNeed.MinutesSpent(row.ArrivedAt, row.LeftAt)).ToList();
                return (group.OrderByDescending(row => row.ArrivedAt).First().State, minutes.TrueForAll(one => one is not null) ? minutes.Sum() : null);
            });
    }
}
