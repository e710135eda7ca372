using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.DueLists;
using LogBook.Domain.Rounds.Planning;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>Stops that somebody handed over and whose visit was begun by who took them: one that came in, or a draft on the server. A draft on a tablet is not known here.</summary>
internal static class BegunStops
{
    public static Task<IReadOnlyList<PlannedStop>> OfAsync(LogBookStore store, Viewer viewer, DateOnly day, CancellationToken cancellationToken) =>
        store.ReadAsync<IReadOnlyList<PlannedStop>>(
            viewer,
            async db =>
            {
                if (!(await PlanStore.DaysAsync(db, day, day, cancellationToken)).TryGetValue(day, out var kept) || kept.Plan.HandedBy(viewer.PersonCode!) is not { Count: > 0 } handed)
                {
                    return [];
                }

                // The day is the one at the site; a day more on either side holds every zone.
                var (first, last) = (day.AddDays(-1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc), day.AddDays(2).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc));
                var keys = handed.Select(stop => CodeKeys.Of(stop.Site)).ToList();
                var sites = db.Sites.Where(site => keys.Contains(site.CodeKey));
                var visits = await db.Visits.Where(visit => visit.VoidedAt == null && visit.ArrivedAt >= first && visit.ArrivedAt < last)
                    .Join(sites, visit => visit.SiteId, site => site.Id, (visit, site) => new { site.CodeKey, site.TimeZone, Person = visit.Technician, At = visit.ArrivedAt }).ToListAsync(cancellationToken);
                var drafts = await db.Drafts.Where(draft => draft.UpdatedAt >= first && draft.UpdatedAt < last)
                    .Join(sites, draft => draft.SiteId, site => site.Id, (draft, site) => new { draft.UserId, draft.UpdatedAt, site.CodeKey, site.TimeZone })
                    .Join(db.Users.Where(user => user.PersonCode != null), draft => draft.UserId, user => user.Id, (draft, user) => new { draft.CodeKey, draft.TimeZone, Person = user.PersonCode!, At = draft.UpdatedAt })
                    .ToListAsync(cancellationToken);
                var begun = visits.Concat(drafts).Where(one => SitesQuery.DayIn(TimeZoneInfo.FindSystemTimeZoneById(one.TimeZone), one.At) == day)
                    .Select(one => (one.CodeKey, CodeKeys.Of(one.Person))).ToHashSet();
                return [.. handed.Where(stop => begun.Contains((CodeKeys.Of(stop.Site), CodeKeys.Of(stop.Person))))];
            },
            cancellationToken);
}
