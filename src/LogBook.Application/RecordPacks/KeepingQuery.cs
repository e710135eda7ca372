using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Sites;
using LogBook.Domain.Clocks;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.RecordPacks;

/// <summary>How long the records of every site are kept. Two statements beside the set-up, whatever the number of sites.</summary>
public sealed class KeepingQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Sites with records, those that nothing asks for any more first, then by the day until which they are kept; null for whoever may not see it.</summary>
    /// <param name="viewer">Who asks; supervisor or administrator.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<IReadOnlyList<KeptSite>?> ListAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var (sites, holds) = await store.ReadAsync(
            viewer,
            async db =>
            {
                var rows = await db.Sites
                    .Join(db.Visits, site => site.Id, visit => visit.SiteId, (site, visit) => new { site.Code, site.Name, site.TimeZone, site.RetiredAt, visit.ArrivedAt })
                    .GroupBy(row => new { row.Code, row.Name, row.TimeZone, row.RetiredAt })
                    .Select(group => new { group.Key, Count = group.Count(), First = group.Min(row => row.ArrivedAt), Last = group.Max(row => row.ArrivedAt) })
                    .ToListAsync(cancellationToken);
                var held = await db.SetUp.Where(row => row.Kind == SetUpKind.LegalHold).Select(row => new { row.Document, row.Version }).ToListAsync(cancellationToken);
                return (rows, held.ConvertAll(row => LegalHold.Read(row.Document, row.Version)));
            },
            cancellationToken);
        var now = clock.GetUtcNow().UtcDateTime;
        return
        [
            .. sites.Select(row =>
            {
                var zone = TimeZoneInfo.FindSystemTimeZoneById(row.Key.TimeZone);
                var hold = holds.Find(one => one.Site.Equals(row.Key.Code, StringComparison.OrdinalIgnoreCase));
                var (first, last) = (SitesQuery.DayIn(zone, row.First), SitesQuery.DayIn(zone, row.Last));
                var keeping = Retention.Of(firm.SystemsOf(row.Key.Code), firm.Rules, first, last, hold?.IsHeld == true);
                return new KeptSite(row.Key.Code, row.Key.Name, row.Key.RetiredAt is null, row.Count, first, last, keeping, hold, keeping.IsOver(SitesQuery.DayIn(zone, now)));
            }).OrderByDescending(site => site.IsOver).ThenBy(site => site.Keeping.Until ?? DateOnly.MaxValue).ThenBy(site => site.Site, StringComparer.OrdinalIgnoreCase),
        ];
    }
}
