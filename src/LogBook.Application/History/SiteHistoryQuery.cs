using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Reviews;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.History;

/// <summary>Site history: readings, ranges, events, figures and findings of one system over a period. Five statements.</summary>
public sealed class SiteHistoryQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Days shown when the address does not say.</summary>
    public const int UsualDays = 182;

    /// <summary>Longest period of one page.</summary>
    public const int MostDays = 366 * 6;

    /// <summary>Most panels of one page.</summary>
    public const int MostPanels = 24;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The history; null where there is no such system or the viewer may not see it.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <param name="from">First day; null for <see cref="UsualDays"/> before the end.</param>
    /// <param name="to">Last day; null for today.</param>
    /// <param name="show">Keys of the panels; empty for the usual ones.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<SiteHistoryView?> OfAsync(
        Viewer viewer,
        string siteCode,
        string systemCode,
        DateOnly? from = null,
        DateOnly? to = null,
        IReadOnlyList<string>? show = null,
        CancellationToken cancellationToken = default) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var siteKey = CodeKeys.Of(siteCode);
            var systemKey = CodeKeys.Of(systemCode);
            var systems = await db.Sites.Where(site => site.CodeKey == siteKey)
                .Join(db.Systems, site => site.Id, system => system.SiteId, (site, system) => new { Site = site, System = system })
                .OrderBy(pair => pair.System.CodeKey)
                .ToListAsync(cancellationToken);
            if (systems.Find(pair => pair.System.CodeKey == systemKey) is not { } found)
            {
                return null;
            }

            var site = Documents.Site(found.Site.Document);
            var system = Documents.System(found.System.Document);
            var zone = TimeZoneInfo.FindSystemTimeZoneById(found.Site.TimeZone);
            var end = (to ?? SitesQuery.DayIn(zone, clock.GetUtcNow().UtcDateTime)).AddDays(1);
            var start = from is { } asked && asked < end ? asked : end.AddDays(-UsualDays);
            start = start < end.AddDays(-MostDays) ? end.AddDays(-MostDays) : start;
            var (fromUtc, toUtc) = (Utc(zone, start), Utc(zone, end));

            var documents = await db.Visits
                .Where(visit => visit.SiteId == found.Site.Id && visit.VoidedAt == null && visit.ArrivedAt >= fromUtc && visit.ArrivedAt < toUtc)
                .Join(
                    db.VisitVersions,
                    visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                    version => new { version.VisitRowId, version.Version },
                    (visit, version) => version.Document)
                .ToListAsync(cancellationToken);
            var figures = await db.Figures
                .Where(figure => figure.SystemId == found.System.Id && figure.To >= fromUtc && figure.To < toUtc)
                .Join(db.Visits.Where(visit => visit.VoidedAt == null), figure => figure.VisitRowId, visit => visit.Id, (figure, visit) => new { Figure = figure, visit.VisitId })
                .OrderBy(pair => pair.Figure.To).ThenBy(pair => pair.Figure.Id)
                .ToListAsync(cancellationToken);
            var findings = viewer.IsOfFirm
                ? await AttentionQuery.Seen(db, viewer)
                    .Where(finding => finding.SystemId == found.System.Id && finding.State != FindingState.Withdrawn && finding.FirstSeen < end && finding.LastSeen >= start)
                    .OrderByDescending(finding => finding.FirstSeen).Take(200)
                    .ToListAsync(cancellationToken)
                : [];

            var visits = documents.Select(Documents.Visit)
                .Select(visit => (visit, record: visit.Systems.FirstOrDefault(s => s.System.Equals(system.Code, StringComparison.OrdinalIgnoreCase))))
                .Where(pair => pair.record is not null)
                .Select(pair => new SystemVisit(pair.visit, pair.record!));
            var history = new SystemHistory(await ProductsAsync(db, [system], cancellationToken), site, system, visits);
            var worked = WithRates(figures.ConvertAll(pair => (pair.Figure, pair.VisitId)), zone);
            var readings = HistoryBuilder.KeysOf(history.Visits);
            var rates = HistoryFigures.KeysOf(worked);
            IReadOnlyList<string> keys = [.. readings, .. rates, .. HistoryRecords.KeysOf(history.Visits)];
            var shown = show?.Where(key => keys.Contains(key, StringComparer.OrdinalIgnoreCase)).Take(MostPanels).ToList() ?? [];
            if (show is ["all"])
            {
                shown = [.. keys.Take(MostPanels)];
            }
            else if (shown.Count == 0)
            {
                shown = [.. HistoryBuilder.UsualKeys(readings, history.ProgrammeOn(end.AddDays(-1))), .. HistoryFigures.UsualKeys(rates)];
            }

            var moments = history.Visits.Select(visit => HistoryBuilder.Wall(history, visit.At)).ToList();

            var rows = findings
                .Select(row => new AttentionRow(
                    new FindingKey(site.Code, system.Code, row.Kind, row.AboutKey, row.FirstSeen),
                    site.Name,
                    system.Name,
                    found.Site.AssignedTo,
                    Documents.Finding(row, viewer.Language) with { State = row.State },
                    end.DayNumber - 1 - row.FirstSeen.DayNumber))
                .ToList();
            return new SiteHistoryView(
                new SystemHeading(site.Code, site.Name, system.Code, system.Name, found.Site.TimeZone),
                start,
                end,
                history.Visits,
                keys,
                [.. shown.Select(key => HistoryFigures.PanelOf(worked, key, moments) ?? HistoryRecords.PanelOf(history, key) ?? HistoryBuilder.PanelOf(history, key, start, end))],
                HistoryBuilder.MarksOf(history, rows.Select(row => row.Finding), start, end),
                worked,
                rows,
                [.. systems.Where(pair => pair.System.Id != found.System.Id && pair.System.RetiredAt == null).Select(pair => (pair.System.Code, pair.System.Name))]) { System = system };
        },
        cancellationToken);

    /// <summary>A firm of the products that stand in drums: a level by weight is litres by their density.</summary>
    internal static async Task<FirmSetUp> ProductsAsync(LogBookDb db, IEnumerable<WaterSystem> systems, CancellationToken cancellationToken)
    {
        var codes = systems.SelectMany(system => system.Drums).Select(drum => CodeKeys.Of(drum.Product)).Distinct().ToList();
        var products = await db.SetUp.Where(row => row.Kind == SetUpKind.Product && codes.Contains(row.CodeKey)).Select(row => row.Document).ToListAsync(cancellationToken);
        return new FirmSetUp(new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version, Products = [.. products.Select(ExchangeReader.Parse<Product>)] });
    }

    // What is stored, with what it comes to a day and for each volume of make-up.
    internal static IReadOnlyList<HistoryFigure> WithRates(IReadOnlyList<(FigureRow Row, Guid Visit)> rows, TimeZoneInfo zone)
    {
        var rates = IntervalRates.Of(
        [
            .. rows.Where(row => row.Row.From is not null && (row.Row.Value is not null || row.Row.Reasons is not null)).Select(row => new Figure(
                row.Row.Code,
                row.Row.About,
                row.Visit,
                row.Row.From,
                row.Row.To,
                row.Row.Value is { } value
                    ? Computed<Estimate>.Of(new Estimate(value, row.Row.Unit ?? "1", row.Row.StandardUncertainty ?? 0))
                    : Computed<Estimate>.None([.. JsonSerializer.Deserialize<List<Reason>>(row.Row.Reasons!, Json)!]),
                [])),
        ]);
        return
        [
            .. rows.Select(row => FigureOf(row.Row, row.Visit, zone)),
            .. rates.Select(rate => new HistoryFigure(
                rate.Code,
                rate.About ?? "",
                rate.VisitId,
                TimeZoneInfo.ConvertTimeFromUtc(rate.From!.Value, zone),
                TimeZoneInfo.ConvertTimeFromUtc(rate.To, zone),
                rate.Result.HasValue ? rate.Result.Value : null,
                rate.Result.HasValue ? [] : [.. rate.Result.Reasons.Select(reason => reason.Text)],
                rate.Inputs)),
        ];
    }

    internal static HistoryFigure FigureOf(FigureRow row, Guid visit, TimeZoneInfo zone) => new(
        row.Code,
        row.About,
        visit,
        row.From is { } from ? TimeZoneInfo.ConvertTimeFromUtc(from, zone) : null,
        TimeZoneInfo.ConvertTimeFromUtc(row.To, zone),
        row.Value is { } value ? new Estimate(value, row.Unit ?? "1", row.StandardUncertainty ?? 0) : null,
        row.Reasons is null ? [] : [.. JsonSerializer.Deserialize<List<Reason>>(row.Reasons, Json)!.Select(reason => reason.Text)],
        JsonSerializer.Deserialize<List<FigureInput>>(row.Inputs, Json)!);

    private static DateTime Utc(TimeZoneInfo zone, DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);

        // Where a clock change skips midnight, the day begins an hour later.
        return TimeZoneInfo.ConvertTimeToUtc(zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight, zone);
    }
}
