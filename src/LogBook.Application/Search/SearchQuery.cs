using System.Globalization;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using Microsoft.EntityFrameworkCore;

#pragma warning disable CA1304, CA1311, CA1862 // These run in the database, as upper(), the same on both providers.

namespace LogBook.Application.Search;

/// <summary>Finds what the viewer may see by code, name or day.</summary>
public sealed class SearchQuery(LogBookStore store)
{
    /// <summary>Hits of each kind at most.</summary>
    public const int PerKind = 20;

    private const int Longest = 100;

    /// <summary>Hits, sites first.</summary>
    /// <param name="viewer">Who asks; products and people are for the firm's own people.</param>
    /// <param name="text">Part of a code or name, the id of a visit, or a day as 2025-03-03.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    /// <returns>Hits; none for a text of less than two signs.</returns>
    public async Task<IReadOnlyList<SearchHit>> FindAsync(Viewer viewer, string? text, CancellationToken cancellationToken = default)
    {
        var wanted = text?.Trim() ?? "";
        if (wanted.Length is < 2 or > Longest)
        {
            return [];
        }

        var pattern = $"%{wanted.ToUpperInvariant().Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal)}%";
        return await store.ReadAsync(
            viewer,
            async db =>
            {
                var hits = new List<SearchHit>();
                hits.AddRange(await db.Sites
                    .Where(row => EF.Functions.Like(row.CodeKey, pattern, "\\") || EF.Functions.Like(row.Name.ToUpper(), pattern, "\\"))
                    .OrderBy(row => row.CodeKey).Take(PerKind)
                    .Select(row => new SearchHit(SearchHitKind.Site, row.Code, row.Name, null, null)).ToListAsync(cancellationToken));
                hits.AddRange(await db.Systems
                    .Where(row => EF.Functions.Like(row.CodeKey, pattern, "\\") || EF.Functions.Like(row.Name.ToUpper(), pattern, "\\"))
                    .Join(db.Sites, row => row.SiteId, site => site.Id, (row, site) => new { row.Code, row.Name, Site = site.Code })
                    .OrderBy(row => row.Site).ThenBy(row => row.Code).Take(PerKind)
                    .Select(row => new SearchHit(SearchHitKind.System, row.Code, row.Name, row.Site, null)).ToListAsync(cancellationToken));
                hits.AddRange(await db.Customers
                    .Where(row => EF.Functions.Like(row.CodeKey, pattern, "\\") || EF.Functions.Like(row.Name.ToUpper(), pattern, "\\"))
                    .OrderBy(row => row.CodeKey).Take(PerKind)
                    .Select(row => new SearchHit(SearchHitKind.Customer, row.Code, row.Name, null, null)).ToListAsync(cancellationToken));
                hits.AddRange(await VisitsAsync(db, wanted, cancellationToken));
                if (viewer.IsOfFirm)
                {
                    hits.AddRange(await SetUpAsync(db, pattern, cancellationToken));
                }

                return (IReadOnlyList<SearchHit>)hits;
            },
            cancellationToken);
    }

    private static async Task<List<SearchHit>> VisitsAsync(LogBookDb db, string wanted, CancellationToken cancellationToken)
    {
        var visits = db.Visits.AsQueryable();
        if (Guid.TryParse(wanted, out var id))
        {
            visits = visits.Where(visit => visit.VisitId == id);
        }
        else if (DateOnly.TryParseExact(wanted, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            // Wide enough for every zone; the day shown is the site's own.
            var from = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc).AddHours(-14);
            var to = from.AddHours(52);
            visits = visits.Where(visit => visit.ArrivedAt >= from && visit.ArrivedAt < to);
        }
        else
        {
            return [];
        }

        var found = await visits
            .Join(db.Sites, visit => visit.SiteId, site => site.Id, (visit, site) => new { visit.VisitId, visit.Technician, visit.ArrivedAt, Site = site.Code, site.TimeZone })
            .OrderBy(visit => visit.ArrivedAt).Take(3 * PerKind).ToListAsync(cancellationToken);
        return
        [
            .. found
                .Select(visit => new SearchHit(
                    SearchHitKind.Visit,
                    visit.VisitId.ToString(),
                    visit.Technician,
                    visit.Site,
                    SitesQuery.DayIn(TimeZoneInfo.FindSystemTimeZoneById(visit.TimeZone), visit.ArrivedAt)))
                .Where(hit => !DateOnly.TryParseExact(wanted, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var asked) || hit.Day == asked)
                .Take(PerKind),
        ];
    }

    private static async Task<IEnumerable<SearchHit>> SetUpAsync(LogBookDb db, string pattern, CancellationToken cancellationToken)
    {
        var rows = await db.SetUp
            .Where(row => (row.Kind == SetUpKind.Product || row.Kind == SetUpKind.Person)
                && (EF.Functions.Like(row.CodeKey, pattern, "\\") || EF.Functions.Like(row.Name.ToUpper(), pattern, "\\")))
            .OrderBy(row => row.Kind).ThenBy(row => row.CodeKey).Take(2 * PerKind)
            .Select(row => new { row.Kind, row.Code, row.Name }).ToListAsync(cancellationToken);
        return rows.Select(row => new SearchHit(row.Kind == SetUpKind.Product ? SearchHitKind.Product : SearchHitKind.Person, row.Code, row.Name));
    }
}
