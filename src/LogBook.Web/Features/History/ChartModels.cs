using LogBook.Application.History;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Web.Features.History;

/// <summary>From a history to what the chart draws, and to the sentence that says the same.</summary>
public static class ChartModels
{
    /// <summary>The chart's model in a language.</summary>
    public static ChartModel Of(SiteHistoryView view, Language language) => new(
        Components.LanguageCodes.Of(language),
        Ms(view.From),
        Ms(view.To),
        [.. view.Panels.Select(panel => PanelOf(panel, language))],
        [
            .. view.Marks.GroupBy(mark => mark.Kind).OrderBy(group => group.Key).Select(group => new ChartLane(
                group.Key.ToString(),
                HistoryPageTexts.NameOf(group.Key).In(language),
                [
                    .. group.Select(mark => new ChartMark(
                        Ms(mark.At),
                        SymbolOf(mark),
                        mark.Severity == Severity.Watch || mark.Kind == HistoryMarkKind.Result,
                        mark.Visit?.ToString(),
                        mark.Severity is { } severity ? $"{FindingTexts.NameOf(severity).In(language)}: {mark.Words.In(language)}" : mark.Words.In(language))),
                ])),
        ],
        new Dictionary<string, string>(StringComparer.Ordinal));

    /// <summary>The chart in a few sentences.</summary>
    public static IReadOnlyList<string> SummaryOf(SiteHistoryView view, Language language)
    {
        var sentences = new List<string>
        {
            HistoryPageTexts.SummaryVisits.In(language, Shown.Day(view.From, language), Shown.Day(view.To.AddDays(-1), language), view.Visits.Count),
        };
        foreach (var panel in view.Panels)
        {
            // What the controller shows is not the water: the sentence counts readings of the water where there are any.
            var points = (panel.Series.FirstOrDefault(series => series.Source != ReadingSource.Controller) ?? (panel.Series.Count > 0 ? panel.Series[0] : null))?.Points.Where(point => point.Value is not null).ToList() ?? [];
            if (points.Count == 0)
            {
                continue;
            }

            var outside = points.Count(point => point.Standing is RangeStanding.Above or RangeStanding.Below);
            var (least, most) = (points.Min(point => point.Value!.Value), points.Max(point => point.Value!.Value));
            var last = ReadingWords.Value(points[^1].Value!.Value, panel.Unit, points[^1].Qualifier, language);
            var sentence = points.Count == 1
                ? HistoryPageTexts.SummaryPanelOne.In(language, TitleOf(panel, language), last)
                : least == most
                    ? HistoryPageTexts.SummaryPanelSame.In(language, TitleOf(panel, language), points.Count, last)
                    : HistoryPageTexts.SummaryPanel.In(language, TitleOf(panel, language), points.Count, Shown.EnteredRange(least, most, panel.Unit, language), last);
            sentences.Add(outside == 0 ? sentence : sentence + " " + HistoryPageTexts.SummaryOutside.In(language, outside));
        }

        return sentences;
    }

    /// <summary>Test and point of a panel.</summary>
    public static string TitleOf(HistoryPanel panel, Language language) => $"{TestTexts.NameOf(panel.Test).In(language)}, {TestTexts.NameOfPoint(panel.At).In(language)}";

    /// <summary>Test and point of a key.</summary>
    public static string TitleOf(string key, Language language)
    {
        var dot = key.IndexOf('.', StringComparison.Ordinal);
        return $"{TestTexts.NameOf(key[(dot + 1)..]).In(language)}, {TestTexts.NameOfPoint(key[..dot]).In(language)}";
    }

    private static ChartPanel PanelOf(HistoryPanel panel, Language language) => new(
        panel.Key,
        TitleOf(panel, language),
        panel.Unit == "[pH]" ? "" : Shown.Unit(panel.Unit, language),
        [.. panel.Bands.Select(band => new ChartBand(Ms(band.From), Ms(band.To), band.Low, band.High))],
        [.. panel.SetPoints.Where(line => line.Low is not null).Select(line => new ChartLine(Ms(line.From), Ms(line.To), line.Low!.Value, HistoryPageTexts.SetPoint.In(language)))],
        [.. panel.Series.Select(series => SeriesOf(panel, series, language))]);

    private static ChartSeries SeriesOf(HistoryPanel panel, HistorySeries series, Language language)
    {
        var points = new List<ChartPoint>();
        for (var i = 0; i < series.Points.Count; i++)
        {
            var point = series.Points[i];
            if (series.Gaps.Contains(i))
            {
                points.Add(new ChartPoint((Ms(series.Points[i - 1].At) + Ms(point.At)) / 2, null, null, false, null, null));
            }

            points.Add(new ChartPoint(
                Ms(point.At),
                point.Value,
                point.Qualifier,
                point.Standing is RangeStanding.Above or RangeStanding.Below,
                point.Visit.ToString(),
                WordsOf(panel, series, point, language)));
        }

        var isDisplay = series.Source == ReadingSource.Controller;
        return new ChartSeries(VisitTexts.NameOf(series.Source).In(language), series.Source == ReadingSource.Lab ? "diamond" : "circle", isDisplay, isDisplay, points);
    }

    private static string WordsOf(HistoryPanel panel, HistorySeries series, HistoryPoint point, Language language)
    {
        var value = point.Value is { } number ? ReadingWords.Value(number, panel.Unit, point.Qualifier, language) : HistoryTexts.NotQuantifiable.In(language);
        var standing = StandingWords(point.Standing) is { } words ? $", {words.In(language)}" : "";
        return $"{value} ({VisitTexts.NameOf(series.Source).In(language)}){standing}";
    }

    /// <summary>Where a value stands, when that wants saying.</summary>
    public static Text? StandingWords(RangeStanding standing) => standing switch
    {
        RangeStanding.Above => ReadingTexts.Above,
        RangeStanding.Below => ReadingTexts.Below,
        _ => null,
    };

    private static string SymbolOf(HistoryMark mark) => mark switch
    {
        { Severity: Severity.Act } => "up",
        { Severity: Severity.Plan } => "diamond",
        { Severity: Severity.Watch } => "circle",
        { Kind: HistoryMarkKind.Settings } => "square",
        { Kind: HistoryMarkKind.Delivery } => "down",
        { Kind: HistoryMarkKind.Cleaning } => "roundRect",
        { Kind: HistoryMarkKind.Calibration } => "pin",
        { Kind: HistoryMarkKind.Result } => "circle",
        _ => "arrow",
    };

    // The wall clock's own time line: drawn as if it were UTC, so that no zone of a browser moves a mark.
    private static double Ms(DateTime wall) => (DateTime.SpecifyKind(wall, DateTimeKind.Utc) - DateTime.UnixEpoch).TotalMilliseconds;

    private static double Ms(DateOnly day) => Ms(day.ToDateTime(TimeOnly.MinValue));
}
