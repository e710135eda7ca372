using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.History;

/// <summary>Compares one reading or figure of two or three systems that the viewer sees. Four statements.</summary>
public sealed class CompareQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Most systems on one axis: with more nobody tells the lines apart.</summary>
    public const int Most = 3;

    /// <summary>The comparison; systems that the viewer does not see are left out as if they were not there.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="systems">Systems as "SITE/SYSTEM".</param>
    /// <param name="key">Which reading or figure; the reading most of them have when null or unknown.</param>
    /// <param name="from">First day; null for half a year before the end.</param>
    /// <param name="to">Last day; null for today.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<CompareView> OfAsync(Viewer viewer, IReadOnlyList<string> systems, string? key = null, DateOnly? from = null, DateOnly? to = null, CancellationToken cancellationToken = default) =>
        await store.ReadAsync(
            viewer,
            async db =>
            {
                var all = await db.Systems.Where(system => system.RetiredAt == null)
                    .Join(db.Sites.Where(site => site.RetiredAt == null), system => system.SiteId, site => site.Id, (system, site) => new { SiteId = site.Id, Site = site.Code, SiteName = site.Name, site.CodeKey, system.Id, system.Code, system.Name, Order = system.CodeKey })
                    .OrderBy(row => row.CodeKey).ThenBy(row => row.Order).ToListAsync(cancellationToken);
                var wanted = systems.Distinct(StringComparer.OrdinalIgnoreCase)
                    .Select(asked => all.Find(row => asked.Equals($"{row.Site}/{row.Code}", StringComparison.OrdinalIgnoreCase))).OfType<object>().Take(Most).ToList();
                var chosen = all.Where(row => wanted.Contains(row)).OrderBy(row => wanted.IndexOf(row)).ToList();
                var end = (to ?? DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime)).AddDays(1);
                var start = from is { } first && first < end ? first : end.AddDays(-SiteHistoryQuery.UsualDays);
                start = start < end.AddDays(-SiteHistoryQuery.MostDays) ? end.AddDays(-SiteHistoryQuery.MostDays) : start;
                var (ids, sites) = (chosen.ConvertAll(row => row.Id), chosen.ConvertAll(row => row.SiteId));
                var documents = await db.Systems.Where(system => ids.Contains(system.Id))
                    .Join(db.Sites, system => system.SiteId, site => site.Id, (system, site) => new { system.Id, System = system.Document, Site = site.Document }).ToListAsync(cancellationToken);

                // Days are those of each site: a day more on either side holds every zone.
                var (fromUtc, toUtc) = (start.AddDays(-1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc), end.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc));
                var visits = await db.Visits.Where(visit => sites.Contains(visit.SiteId) && visit.VoidedAt == null && visit.ArrivedAt >= fromUtc && visit.ArrivedAt < toUtc)
                    .Join(
                        db.VisitVersions,
                        visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                        version => new { version.VisitRowId, version.Version },
                        (visit, version) => new { visit.SiteId, version.Document })
                    .ToListAsync(cancellationToken);
                var visitsOf = visits.ToLookup(row => row.SiteId, row => Documents.Visit(row.Document));
                var histories = chosen.ConvertAll(row =>
                {
                    var document = documents.Find(found => found.Id == row.Id)!;
                    var (site, system) = (Documents.Site(document.Site), Documents.System(document.System));
                    return (row.Site, row.Code, History: HistoryOf(site, system, visitsOf[row.SiteId], start, end));
                });
                var stored = await db.Figures.Where(figure => ids.Contains(figure.SystemId) && figure.To >= fromUtc && figure.To < toUtc)
                    .Join(db.Visits.Where(visit => visit.VoidedAt == null), figure => figure.VisitRowId, visit => visit.Id, (figure, visit) => new { Figure = figure, visit.VisitId })
                    .OrderBy(pair => pair.Figure.To).ThenBy(pair => pair.Figure.Id).ToListAsync(cancellationToken);
                var figures = chosen.Select((row, place) => SiteHistoryQuery.WithRates(stored.Where(pair => pair.Figure.SystemId == row.Id).Select(pair => (pair.Figure, pair.VisitId)).ToList(), histories[place].History.Zone)
                    .Where(figure => DateOnly.FromDateTime(figure.To) is var day && day >= start && day < end).ToList()).ToList();
                var keys = histories.SelectMany(one => HistoryBuilder.KeysOf(one.History.Visits)).GroupBy(known => known, StringComparer.OrdinalIgnoreCase)
                    .OrderByDescending(group => group.Count()).ThenBy(group => group.Key == Conductivity ? 0 : 1).Select(group => group.First()).ToList();
                var rates = ComparedFigures.KeysOf(histories.Select((one, place) => (one.History.System, (IReadOnlyList<HistoryFigure>)figures[place])));
                var shown = keys.Concat(rates).FirstOrDefault(known => known.Equals(key, StringComparison.OrdinalIgnoreCase)) ?? keys.Concat(rates).FirstOrDefault();
                var isFigure = shown is not null && ComparedFigures.TitleOf(shown) is not null;
                var compared = chosen.ConvertAll(row => new ComparedSystem(row.Site, row.SiteName, row.Code, row.Name)
                {
                    Range = shown is null || isFigure ? null : RangeOf(histories.Find(one => one.Site == row.Site && one.Code == row.Code).History, shown, end.AddDays(-1)),
                });
                return new CompareView(
                    start,
                    end,
                    shown,
                    compared,
                    shown is null ? null : isFigure
                        ? ComparedFigures.PanelOf(shown, histories.Select((one, place) => (NameOf(compared[place]), one.History.System, (IReadOnlyList<HistoryFigure>)figures[place], WallsOf(one.History))))
                        : PanelOf([.. histories.Select(one => one.History)], compared, shown, start, end),
                    keys,
                    [.. rates.Select(rate => new ComparedFigure(rate, [.. histories.Select((one, place) => ComparedFigures.Of(one.History.System, figures[place], rate) is { Count: > 0 } known ? known[^1] : null)]))],
                    all.ConvertAll(row => new ComparedSystem(row.Site, row.SiteName, row.Code, row.Name)));
            },
            cancellationToken);

    private static string Conductivity { get; } = HistoryBuilder.KeyOf(SamplePoints.Tower, TestCodes.Conductivity);

    private static SystemHistory HistoryOf(Site site, WaterSystem system, IEnumerable<Visit> visits, DateOnly start, DateOnly end)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        return new SystemHistory(
            FirmSetUp.Empty,
            site,
            system,
            visits.Where(visit => SitesQuery.DayIn(zone, visit.Arrived.Utc) is var day && day >= start && day < end)
                .Select(visit => (visit, record: visit.Systems.FirstOrDefault(s => s.System.Equals(system.Code, StringComparison.OrdinalIgnoreCase))))
                .Where(pair => pair.record is not null)
                .Select(pair => new SystemVisit(pair.visit, pair.record!)));
    }

    // Readings of the water; the controller's display only where nobody read anything else. All in the unit that most of them have.
    private static HistoryPanel PanelOf(IReadOnlyList<SystemHistory> histories, IReadOnlyList<ComparedSystem> systems, string key, DateOnly from, DateOnly to)
    {
        var panels = histories.Select(history => HistoryBuilder.PanelOf(history, key, from, to)).ToList();
        var unit = panels.Where(panel => panel.Series.Count > 0).GroupBy(panel => panel.Unit).OrderByDescending(group => group.Count()).FirstOrDefault()?.Key ?? "1";
        var series = panels.Select((own, place) =>
        {
            var panel = own.Unit == unit ? own : HistoryBuilder.PanelOf(histories[place], key, from, to, unit);
            var water = panel.Series.Where(one => one.Source != ReadingSource.Controller).ToList();
            var points = (water.Count > 0 ? water : panel.Series).SelectMany(one => one.Points);
            var name = NameOf(systems[place]);
            return HistoryBuilder.WithGaps(null, points, WallsOf(histories[place])) with { Name = new Text(name, name, name) };
        });
        return panels[0] with { Unit = unit, Series = [.. series], Bands = [], SetPoints = [], InOtherUnits = panels.Sum(panel => panel.InOtherUnits) };
    }

    private static string NameOf(ComparedSystem system) => $"{system.Site} {system.SystemName}";

    private static IReadOnlyList<DateTime> WallsOf(SystemHistory history) => [.. history.Visits.Select(visit => HistoryBuilder.Wall(history, visit.At))];

    private static TestRange? RangeOf(SystemHistory history, string key, DateOnly day)
    {
        var dot = key.IndexOf('.', StringComparison.Ordinal);
        return RangeJudgement.RangeOf(history.ProgrammeOn(day), key[..dot], key[(dot + 1)..]);
    }
}
