using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.DueLists;

/// <summary>The site card. Four statements.</summary>
public sealed class SiteCardQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Visits whose actions and recommendations are looked through.</summary>
    public const int LookThrough = 30;

    /// <summary>Visits listed on the card.</summary>
    public const int Listed = 8;

    /// <summary>The card; null where there is no such site or the viewer may not see it.</summary>
    public async Task<SiteCard?> OfAsync(Viewer viewer, string siteCode, CancellationToken cancellationToken = default) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var key = CodeKeys.Of(siteCode);
            var found = await db.Sites.Where(site => site.CodeKey == key)
                .Join(db.Customers, site => site.CustomerId, customer => customer.Id, (site, customer) => new { Site = site, Customer = customer })
                .FirstOrDefaultAsync(cancellationToken);
            if (found is null)
            {
                return null;
            }

            var systems = await db.Systems.Where(system => system.SiteId == found.Site.Id && system.RetiredAt == null).OrderBy(system => system.CodeKey).ToListAsync(cancellationToken);
            var visits = await db.Visits.Where(visit => visit.SiteId == found.Site.Id)
                .OrderByDescending(visit => visit.ArrivedAt).Take(LookThrough)
                .Join(
                    db.VisitVersions,
                    visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                    version => new { version.VisitRowId, version.Version },
                    (visit, version) => new { Row = visit, version.Document })
                .ToListAsync(cancellationToken);
            var findings = viewer.IsOfFirm
                ? await AttentionQuery.Seen(db, viewer)
                    .Where(finding => finding.SiteId == found.Site.Id && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                    .OrderBy(finding => finding.Severity == Severity.Act ? 0 : finding.Severity == Severity.Plan ? 1 : 2).ThenBy(finding => finding.FirstSeen)
                    .Take(200).ToListAsync(cancellationToken)
                : [];

            var zone = TimeZoneInfo.FindSystemTimeZoneById(found.Site.TimeZone);
            var today = SitesQuery.DayIn(zone, clock.GetUtcNow().UtcDateTime);
            var codeOf = systems.ToDictionary(system => system.Id);
            var ordered = visits.OrderByDescending(visit => visit.Row.ArrivedAt).ToList();
            var counting = ordered.Where(visit => visit.Row.VoidedAt is null).ToList();
            var last = counting.Find(visit => visit.Row.Kind is not (VisitKind.Delivery or VisitKind.Result));
            DateOnly? lastDay = last is null ? null : SitesQuery.DayIn(zone, last.Row.ArrivedAt);
            var operations = systems.Select(system => Documents.System(system.Document).Operation).ToList();
            var due = VisitDue.On(lastDay, found.Site.VisitEveryDays, operations);
            var documents = counting.Select(visit => (Day: SitesQuery.DayIn(zone, visit.Row.ArrivedAt), Visit: Documents.Visit(visit.Document))).ToList();
            return new SiteCard(
                Documents.Site(found.Site.Document),
                found.Customer.Name,
                viewer.IsOfFirm ? Documents.Customer(found.Customer.Document).Contacts : [],
                [.. systems.Select(system => Documents.System(system.Document))],
                new SiteDueRow(
                    found.Site.Code,
                    found.Site.Name,
                    found.Customer.Name,
                    found.Site.AssignedTo,
                    systems.Count,
                    lastDay,
                    today.DayNumber - lastDay?.DayNumber,
                    found.Site.VisitEveryDays,
                    due,
                    due?.DayNumber - today.DayNumber,
                    VisitDue.IsLate(lastDay, found.Site.VisitEveryDays, operations, today),
                    new SeverityCounts(findings.Count(f => f.Severity == Severity.Act), findings.Count(f => f.Severity == Severity.Plan), findings.Count(f => f.Severity == Severity.Watch))),
                [.. ordered.Take(Listed).Select(visit => VisitRowView.Of(visit.Row, found.Site.Code, found.Site.Name, zone))],
                [
                    .. findings.Select(row =>
                    {
                        var system = row.SystemId is { } id ? codeOf.GetValueOrDefault(id) : null;
                        return new AttentionRow(
                            new FindingKey(found.Site.Code, system?.Code, row.Kind, row.AboutKey, row.FirstSeen),
                            found.Site.Name,
                            system?.Name,
                            found.Site.AssignedTo,
                            Documents.Finding(row, viewer.Language),
                            today.DayNumber - row.FirstSeen.DayNumber);
                    }),
                ],
                OpenActions(documents),
                OpenRecommendations(documents));
        },
        cancellationToken);

    // Latest first: the latest state of an action is the one that counts, the day it was first asked is the one that is shown.
    internal static IReadOnlyList<OpenAction> OpenActions(IReadOnlyList<(DateOnly Day, Visit Visit)> latestFirst) =>
    [
        .. latestFirst
            .SelectMany(pair => pair.Visit.Systems.SelectMany(system => system.Actions.Select(action => (pair.Day, pair.Visit.Id, system.System, Action: action))))
            .GroupBy(entry => entry.Action.Id ?? Guid.Empty)
            .SelectMany(group => group.Key == Guid.Empty ? group.Select(entry => (Latest: entry, First: entry)) : [(Latest: group.First(), First: group.Last())])
            .Where(entry => entry.Latest.Action.State is null or ActionState.Open)
            .Select(entry => new OpenAction(entry.First.Id, entry.First.Day, entry.Latest.System, entry.Latest.Action.For, entry.Latest.Action.Text, entry.Latest.Action.Owner, entry.Latest.Action.Due))
            .OrderBy(action => action.Due ?? DateOnly.MaxValue).ThenBy(action => action.Since),
    ];

    internal static IReadOnlyList<OpenRecommendation> OpenRecommendations(IReadOnlyList<(DateOnly Day, Visit Visit)> latestFirst) =>
    [
        .. latestFirst
            .SelectMany(pair => pair.Visit.Recommendations.Select(recommendation => (pair.Day, pair.Visit.Id, Recommendation: recommendation)))
            .GroupBy(entry => entry.Recommendation.Id ?? Guid.Empty)
            .SelectMany(group => group.Key == Guid.Empty ? group.Select(entry => (Latest: entry, First: entry)) : [(Latest: group.First(), First: group.Last())])
            .Where(entry => entry.Latest.Recommendation.State is null or RecommendationState.Asked)
            .Select(entry => new OpenRecommendation(entry.First.Id, entry.First.Day, entry.Latest.Recommendation.Text, entry.Latest.Recommendation.Consequence))
            .OrderBy(recommendation => recommendation.Since),
    ];
}
