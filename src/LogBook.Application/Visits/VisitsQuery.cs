using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;

#pragma warning disable CA1304, CA1311, CA1862 // These run in the database, as upper(), the same on both providers.

namespace LogBook.Application.Visits;

/// <summary>The list of visits. Three statements.</summary>
public sealed class VisitsQuery(LogBookStore store)
{
    /// <summary>Visits on a page.</summary>
    public const int PageSize = 50;

    /// <summary>A page of visits that the viewer sees.</summary>
    public async Task<VisitsPage> ListAsync(Viewer viewer, VisitsFilter filter, CancellationToken cancellationToken = default) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var sites = await db.Sites.OrderBy(site => site.CodeKey).Select(site => new { site.Id, site.Code, site.CodeKey, site.Name, site.TimeZone }).ToListAsync(cancellationToken);
            var asked = Asked(db, viewer, filter);
            if (!string.IsNullOrEmpty(filter.Site))
            {
                var key = CodeKeys.Of(filter.Site);
                var ids = sites.Where(site => site.CodeKey == key).Select(site => site.Id).ToList();
                asked = asked.Where(visit => ids.Contains(visit.SiteId));
            }

            var ordered = asked.OrderByDescending(visit => visit.ArrivedAt).ThenByDescending(visit => visit.Id);
            var total = await ListCount.OfAsync(ordered, cancellationToken);
            var rows = await ordered.Skip((Math.Max(1, filter.Page) - 1) * PageSize).Take(PageSize + 1).ToListAsync(cancellationToken);
            var siteOf = sites.ToDictionary(site => site.Id);
            return new VisitsPage(
                [
                    .. rows.Take(PageSize).Select(row =>
                    {
                        var site = siteOf[row.SiteId];
                        return VisitRowView.Of(row, site.Code, site.Name, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone));
                    }),
                ],
                total,
                rows.Count > PageSize,
                [.. sites.Select(site => (site.Code, site.Name))]);
        },
        cancellationToken);

    private static IQueryable<VisitRow> Asked(LogBookDb db, Viewer viewer, VisitsFilter filter)
    {
        // That a visit was declared void is the firm's own business until it reissues the summary.
        var asked = (viewer.IsOfFirm ? filter.State : VisitStateFilter.Counting) switch
        {
            VisitStateFilter.ToReview => db.Visits.Where(visit => visit.VoidedAt == null && visit.State != VisitState.Reviewed),
            VisitStateFilter.Void => db.Visits.Where(visit => visit.VoidedAt != null),
            VisitStateFilter.All => db.Visits,
            _ => db.Visits.Where(visit => visit.VoidedAt == null),
        };
        if (!string.IsNullOrEmpty(filter.Technician))
        {
            var technician = CodeKeys.Of(filter.Technician);
            asked = asked.Where(visit => visit.Technician.ToUpper() == technician);
        }

        if (filter.Kind is { } kind)
        {
            asked = asked.Where(visit => visit.Kind == kind);
        }

        if (filter.From is { } from)
        {
            var start = from.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
            asked = asked.Where(visit => visit.ArrivedAt >= start);
        }

        if (filter.To is { } to)
        {
            var end = to.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
            asked = asked.Where(visit => visit.ArrivedAt < end);
        }

        return asked;
    }
}
