using LogBook.Application.Records;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Records;
using LogBook.Web.Components;
using LogBook.Web.Features.History;

namespace LogBook.Web.Features.Records;

/// <summary>From a record to what the chart draws.</summary>
public static class RecordCharts
{
    /// <summary>Errors of a probe with tolerance and drift.</summary>
    public static ChartModel Of(SystemRecords view, ProbeRecord record, Language language)
    {
        var series = new List<ChartSeries>
        {
            Points(RecordTexts.AsFound.In(language), "circle", false, false, record.Points.Select(point => Estimated(view, point.At, point.Visit, point.Facts.ErrorFound, point.TolerancePercent, language))),
            Points(RecordTexts.AfterCleaning.In(language), "diamond", true, false, record.Points.Select(point => Estimated(view, point.At, point.Visit, point.Facts.ErrorCleaned, point.TolerancePercent, language))),
            Points(RecordTexts.AsLeft.In(language), "square", true, true, record.Points.Select(point => point.Facts.Restarts
                ? Estimated(view, point.At, point.Visit, point.Facts.ErrorLeft, point.TolerancePercent, language)
                : Gap(view, point.At))),
        };
        series.AddRange(record.Lines.Select(line => Points(
            RecordTexts.Drift.In(language), "none", true, true, [Plain(view, line.From, line.FromPercent, "%", language), Plain(view, line.To, line.ToPercent, "%", language)])));
        if (record.Lines is [.., { Low: { } low, High: { } high } running])
        {
            series.Add(Points(RecordTexts.DriftEnds.In(language), "hexagon", true, true, [Plain(view, running.To, low, "%", language), Plain(view, running.To, high, "%", language)]));
        }

        var tolerances = record.Points.Where(point => point.TolerancePercent is not null).ToList();
        var bands = tolerances.Select((point, place) => new ChartBand(
            Ms(view.Wall(point.At)), place + 1 < tolerances.Count ? Ms(view.Wall(tolerances[place + 1].At)) : Ms(view.To), -point.TolerancePercent!.Value, point.TolerancePercent.Value));
        var model = Model(view, language, new ChartPanel("error", RecordTexts.Error.In(language), "%", [.. bands], [], series));

        // The running line reaches to the next visit, which lies ahead.
        return record.Lines.Count > 0 ? model with { To = Math.Max(model.To, Ms(view.Wall(record.Lines[^1].To).AddDays(1))) } : model;
    }

    /// <summary>Water a day and total against dial.</summary>
    public static ChartModel Of(SystemRecords view, MeterRecord record, Language language) => Model(
        view,
        language,
        new ChartPanel(
            "per-day",
            RecordTexts.PerDay.In(language),
            Shown.Unit("L/d", language),
            [],
            [],
            [Points(record.Meter.Code, "circle", false, false, record.Points.Select(point => Estimated(view, point.At, point.Visit, point.PerDay, null, language)))]),
        new ChartPanel(
            "apart",
            RecordTexts.Apart.In(language),
            "%",
            [new ChartBand(Ms(view.From), Ms(view.To), -record.AllowedPercent, record.AllowedPercent)],
            [],
            [Points(record.Meter.Code, "diamond", false, false, record.Points.Select(point => Estimated(view, point.At, point.Visit, point.TotalAgainstDial, record.AllowedPercent, language)))]));

    /// <summary>Output of a pump with its plate.</summary>
    public static ChartModel Of(SystemRecords view, PumpRecord record, Language language) => Model(
        view,
        language,
        new ChartPanel(
            "output",
            RecordTexts.Output.In(language),
            "mL/h",
            [],
            record.PlateMillilitresPerHour is { } plate ? [new ChartLine(Ms(view.From), Ms(view.To), plate, RecordTexts.Plate.In(language))] : [],
            [
                Points(RecordTexts.ByDrum.In(language), "circle", false, false, record.Points.Where(point => point.MillilitresPerHour is not null)
                    .Select(point => Estimated(view, point.At, point.Visit, Computed<Estimate>.Of(point.MillilitresPerHour!), null, language))),
                Points(RecordTexts.ByColumn.In(language), "diamond", true, false, record.Points.Where(point => point.ColumnMillilitresPerHour is not null)
                    .Select(point => Estimated(view, point.At, point.Visit, Computed<Estimate>.Of(point.ColumnMillilitresPerHour!), null, language))),
            ]));

    private static ChartModel Model(SystemRecords view, Language language, params IReadOnlyList<ChartPanel> panels) =>
        new(LanguageCodes.Of(language), Ms(view.From), Ms(view.To), panels, [], new Dictionary<string, string>(StringComparer.Ordinal));

    private static ChartSeries Points(string name, string symbol, bool isHollow, bool isDashed, IEnumerable<ChartPoint> points) =>
        new(name, symbol, isHollow, isDashed, [.. points]);

    private static ChartPoint Estimated(SystemRecords view, DateTime at, Guid visit, Computed<Estimate> estimate, double? limit, Language language) => estimate.HasValue
        ? new ChartPoint(Ms(view.Wall(at)), estimate.Value.Value, null, limit is { } most && Math.Abs(estimate.Value.Value) > most, visit.ToString(), Shown.Estimated(estimate.Value, language)) { Low = estimate.Value.Low, High = estimate.Value.High }
        : Gap(view, at);

    // A line does not run across what is not known.
    private static ChartPoint Gap(SystemRecords view, DateTime at) => new(Ms(view.Wall(at)), null, null, false, null, null);

    private static ChartPoint Plain(SystemRecords view, DateTime at, double value, string unit, Language language) =>
        new(Ms(view.Wall(at)), value, null, false, null, Shown.PlainWithUnit(value, unit, language));

    // The wall clock's own time line: drawn as if it were UTC, so that no zone of a browser moves a mark.
    private static double Ms(DateTime wall) => (DateTime.SpecifyKind(wall, DateTimeKind.Utc) - DateTime.UnixEpoch).TotalMilliseconds;

    private static double Ms(DateOnly day) => Ms(day.ToDateTime(TimeOnly.MinValue));
}
