using LogBook.Application.History;
using LogBook.Domain.Estimates;
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
        new Dictionary<string, string>(StringComparer.Ordinal))
    {
        Title = string.Join(", ", new[] { $"{view.Heading.SiteCode} {view.Heading.SiteName}".Trim(), view.Heading.SystemName }.Where(part => part.Length > 0)),
        File = string.Join('-', new[] { view.Heading.SiteCode.Replace(", ", "-", StringComparison.Ordinal), view.Heading.SystemCode, ReadingLinks.Day(view.From) }.Where(part => !string.IsNullOrEmpty(part))) + ".png",
        Notes = [.. NotesOf(view).Select(note => note.Sign + note.Words.In(language))],
    };

    /// <summary>What the marks of a history mean: only those that are in it.</summary>
    private static IEnumerable<(string Sign, Text Words)> NotesOf(SiteHistoryView view)
    {
        var series = view.Panels.SelectMany(panel => panel.Series).ToList();
        if (view.Panels.Any(panel => panel.Bands.Count > 0))
        {
            yield return ("▒ ", HistoryPageTexts.InRange);
        }

        if (view.Panels.Any(panel => panel.SetPoints.Count > 0))
        {
            yield return ("┄ ", HistoryPageTexts.SetPoint);
        }

        if (series.Any(one => one.Source == ReadingSource.Controller))
        {
            yield return ("", HistoryPageTexts.DisplayMark);
        }

        var points = series.SelectMany(one => one.Points).ToList();
        if (points.Any(point => point.Standing is RangeStanding.Above or RangeStanding.Below))
        {
            yield return ("", HistoryPageTexts.OutsideMark);
        }

        if (points.Any(point => point.Low is not null))
        {
            yield return ("", HistoryPageTexts.UncertaintyMark);
        }

        if (points.Any(point => point.Qualifier is not null))
        {
            yield return ("", HistoryPageTexts.CensoredMark);
        }
    }

    // In the order in which they are given out; the legend draws the same shapes.
    private static readonly string[] Symbols = ["circle", "diamond", "square", "plus", "hexagon", "hourglass"];

    /// <summary>The chart in a few sentences.</summary>
    public static IReadOnlyList<string> SummaryOf(SiteHistoryView view, Language language)
    {
        var sentences = new List<string>
        {
            view.Visits.Count == 0
                ? HistoryPageTexts.SummaryPeriod.In(language, Shown.Day(view.From, language), Shown.Day(view.To.AddDays(-1), language))
                : HistoryPageTexts.SummaryVisits.In(language, Shown.Day(view.From, language), Shown.Day(view.To.AddDays(-1), language), view.Visits.Count),
        };
        foreach (var panel in view.Panels)
        {
            if (panel.Series.Any(series => series.Name is not null))
            {
                sentences.AddRange(panel.Series.Select(series => SummaryOf(panel, series, language)).OfType<string>());
                continue;
            }

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

    /// <summary>Name of a series: its own, or who read it.</summary>
    public static string NameOf(HistorySeries series, Language language) => (series.Name ?? VisitTexts.NameOf(series.Source)).In(language);

    /// <summary>Shape of a series by its place in its panel.</summary>
    public static string SymbolOf(HistorySeries series, int place) => series.Name is not null ? Symbols[place % Symbols.Length] : series.Source == ReadingSource.Lab ? "diamond" : "circle";

    // A series with a name of its own has its own sentence: one system among others, or one figure.
    private static string? SummaryOf(HistoryPanel panel, HistorySeries series, Language language)
    {
        var points = series.Points.Where(point => point.Value is not null).ToList();
        if (points.Count == 0)
        {
            return null;
        }

        var (least, most) = (points.Min(point => point.Value!.Value), points.Max(point => point.Value!.Value));
        var isFigure = points[^1].Low is not null;
        var last = isFigure ? Shown.Estimated(EstimateOf(points[^1], panel.Unit), language) : ReadingWords.Value(points[^1].Value!.Value, panel.Unit, points[^1].Qualifier, language);
        var range = isFigure ? Shown.Range(least, most, panel.Unit, language) : Shown.EnteredRange(least, most, panel.Unit, language);
        return points.Count == 1 ? HistoryPageTexts.SummarySeriesOne.In(language, NameOf(series, language), last) : HistoryPageTexts.SummarySeries.In(language, NameOf(series, language), points.Count, range, last);
    }

    private static Estimate EstimateOf(HistoryPoint point, string unit) => new(point.Value!.Value, unit, (point.High!.Value - point.Low!.Value) / 4);

    /// <summary>Test and point of a panel.</summary>
    public static string TitleOf(HistoryPanel panel, Language language) => panel.Title is { } title ? title.In(language) : $"{TestTexts.NameOf(panel.Test).In(language)}, {TestTexts.NameOfPoint(panel.At).In(language)}";

    /// <summary>Test and point of a key.</summary>
    public static string TitleOf(string key, Language language)
    {
        if ((HistoryFigures.TitleOf(key) ?? ComparedFigures.TitleOf(key) ?? HistoryRecords.TitleOf(key)) is { } title)
        {
            return title.In(language);
        }

        var dot = key.IndexOf('.', StringComparison.Ordinal);
        return $"{TestTexts.NameOf(key[(dot + 1)..]).In(language)}, {TestTexts.NameOfPoint(key[..dot]).In(language)}";
    }

    private static ChartPanel PanelOf(HistoryPanel panel, Language language) => new(
        panel.Key,
        TitleOf(panel, language),
        panel.Unit == "[pH]" ? "" : Shown.Unit(panel.Unit, language),
        [.. panel.Bands.Select(band => new ChartBand(Ms(band.From), Ms(band.To), band.Low, band.High))],
        [.. panel.SetPoints.Where(line => line.Low is not null).Select(line => new ChartLine(Ms(line.From), Ms(line.To), line.Low!.Value, HistoryPageTexts.SetPoint.In(language)))],
        [.. panel.Series.Select((series, place) => SeriesOf(panel, series, place, language))]);

    private static ChartSeries SeriesOf(HistoryPanel panel, HistorySeries series, int place, Language language)
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
                WordsOf(panel, series, point, language)) { Low = point.Low, High = point.High });
        }

        var isDisplay = series.Source == ReadingSource.Controller;
        return new ChartSeries(NameOf(series, language), SymbolOf(series, place), isDisplay, isDisplay, points);
    }

    private static string WordsOf(HistoryPanel panel, HistorySeries series, HistoryPoint point, Language language)
    {
        if (point is { Value: not null, Low: not null, High: not null })
        {
            return $"{NameOf(series, language)} {Shown.Estimated(EstimateOf(point, panel.Unit), language)}";
        }

        var value = point.Value is { } number ? ReadingWords.Value(number, panel.Unit, point.Qualifier, language) : HistoryTexts.NotQuantifiable.In(language);
        var standing = StandingWords(point.Standing) is { } words ? $", {words.In(language)}" : "";
        return $"{value} ({NameOf(series, language)}){standing}";
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
        { Kind: HistoryMarkKind.Photo } => "hexagon",
        _ => "arrow",
    };

    // The wall clock's own time line: drawn as if it were UTC, so that no zone of a browser moves a mark.
    private static double Ms(DateTime wall) => (DateTime.SpecifyKind(wall, DateTimeKind.Utc) - DateTime.UnixEpoch).TotalMilliseconds;

    private static double Ms(DateOnly day) => Ms(day.ToDateTime(TimeOnly.MinValue));
}
