using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.DueLists;

/// <summary>Sites with last visit, all their clocks and open findings. Four statements, however many sites there are.</summary>
public sealed class SitesQuery(LogBookStore store, TimeProvider clock)
{
    // A delivery or a late result is on record but nobody looked at the plant.
    private static readonly VisitKind[] NotALook = [VisitKind.Delivery, VisitKind.Result];

    /// <summary>Sites the viewer sees.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="assignedTo">Code of a technician, for that person's round; null for all.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    /// <returns>Those due first come first; sites without a clock last.</returns>
    public Task<IReadOnlyList<SiteDueRow>> ListAsync(Viewer viewer, string? assignedTo = null, CancellationToken cancellationToken = default) =>
        ListAsync(viewer, assignedTo is null ? null : [CodeKeys.Of(assignedTo)], [], cancellationToken);

    /// <summary>The same for several people, by the keys of their codes, with further sites by theirs, whoever's round they are on.</summary>
    internal async Task<IReadOnlyList<SiteDueRow>> ListAsync(Viewer viewer, IReadOnlyList<string>? people, IReadOnlyList<string> also, CancellationToken cancellationToken) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var isAll = people is null;
            var keys = people ?? [];
            var sites = await db.Sites
                .Where(site => site.RetiredAt == null && (isAll || (site.AssignedTo != null && keys.Contains(site.AssignedTo)) || also.Contains(site.CodeKey)))
                .Join(db.Customers, site => site.CustomerId, customer => customer.Id, (site, customer) => new
                {
                    site.Id,
                    site.Code,
                    site.CodeKey,
                    site.Name,
                    Customer = customer.Name,
                    site.AssignedTo,
                    site.TimeZone,
                    site.VisitEveryDays,
                })
                .ToListAsync(cancellationToken);
            // Site by site: a group over all visits would walk through every one of them.
            var lastVisits = (await db.Sites
                    .Select(site => new
                    {
                        site.Id,
                        Last = db.Visits.Where(visit => visit.SiteId == site.Id && visit.VoidedAt == null && !NotALook.Contains(visit.Kind))
                            .OrderByDescending(visit => visit.ArrivedAt).Select(visit => (DateTime?)visit.ArrivedAt).FirstOrDefault(),
                    })
                    .ToListAsync(cancellationToken))
                .Where(site => site.Last is not null).ToDictionary(site => site.Id, site => site.Last!.Value);
            var isOfFirm = viewer.IsOfFirm;
            var systems = (await db.Systems.Where(system => system.RetiredAt == null)
                    .OrderBy(system => system.CodeKey)
                    .Select(system => new { system.Id, system.SiteId, system.Code, system.Document, Ahead = isOfFirm ? system.Ahead : null }).ToListAsync(cancellationToken))
                .ToLookup(system => system.SiteId, system => (system.Id, System: Documents.System(system.Document), Ahead: KeptAhead.Read(system.Ahead)));
            var counts = isOfFirm
                ? await AttentionQuery.Seen(db, viewer)
                    .Where(finding => finding.SiteId != null && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                    .GroupBy(finding => new { finding.SiteId, finding.SystemId, finding.Kind, finding.Severity, finding.State })
                    .Select(group => new { group.Key.SiteId, group.Key.SystemId, group.Key.Kind, group.Key.Severity, group.Key.State, Count = group.Count(), Since = group.Min(finding => finding.FirstSeen) })
                    .ToListAsync(cancellationToken)
                : [];
            var bySite = counts.ToLookup(count => count.SiteId!.Value);
            var now = clock.GetUtcNow().UtcDateTime;
            return (IReadOnlyList<SiteDueRow>)
            [
                .. sites
                    .Select(site =>
                    {
                        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
                        var today = DayIn(zone, now);
                        DateOnly? last = lastVisits.TryGetValue(site.Id, out var at) ? DayIn(zone, at) : null;
                        var own = systems[site.Id].ToList();
                        var operations = own.ConvertAll(system => system.System.Operation);
                        var due = VisitDue.On(last, site.VisitEveryDays, operations);
                        int Of(Severity severity) => bySite[site.Id].Where(count => count.Severity == severity).Sum(count => count.Count);
                        return new SiteDueRow(
                            site.Code,
                            site.Name,
                            site.Customer,
                            site.AssignedTo,
                            operations.Count,
                            last,
                            today.DayNumber - last?.DayNumber,
                            site.VisitEveryDays,
                            due,
                            due?.DayNumber - today.DayNumber,
                            VisitDue.IsLate(last, site.VisitEveryDays, operations, today),
                            new SeverityCounts(Of(Severity.Act), Of(Severity.Plan), Of(Severity.Watch)))
                        {
                            Today = today,
                            SystemCodes = own.ToDictionary(system => system.Id, system => system.System.Code),
                            Reasons = !isOfFirm ? [] : DueReasons.Of(
                                last,
                                site.VisitEveryDays,
                                own.ConvertAll(system => (system.System.Code, system.System.Operation, system.Ahead)),
                                [
                                    .. bySite[site.Id].Where(count => count.Severity == Severity.Act && count.State == FindingState.Open)
                                        .Select(count => new OpenActFinding(own.Find(system => system.Id == count.SystemId).System?.Code, count.Kind, count.Since)),
                                ],
                                today),
                            Need = isOfFirm ? VisitNeed.Of(own.ConvertAll(system => (system.System, system.Ahead)), today) : null,
                        };
                    })
                    .OrderBy(site => site.DueInDays ?? int.MaxValue).ThenByDescending(site => site.Open.Act).ThenBy(site => site.Code, StringComparer.OrdinalIgnoreCase),
            ];
        },
        cancellationToken);

    internal static DateOnly DayIn(TimeZoneInfo zone, DateTime utc) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), zone));
}
