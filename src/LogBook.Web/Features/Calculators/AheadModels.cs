using LogBook.Application.Calculators;
using LogBook.Domain.Languages;
using LogBook.Domain.Simulation;
using LogBook.Web.Features.History;

namespace LogBook.Web.Features.Calculators;

/// <summary>From a look-ahead to what the chart draws.</summary>
public static class AheadModels
{
    /// <summary>The chart's model: conductivity and products, doses and faults; what if beside today.</summary>
    public static ChartModel Of(AheadRun today, AheadRun? change, TimeZoneInfo zone, Language language)
    {
        var result = today.Result!;
        var (from, to) = (Ms(result.Hours[0].Utc, zone), Ms(result.Hours[^1].Utc, zone));
        var panels = new List<ChartPanel>
        {
            new(
                "conductivity",
                CalcTexts.Conductivity.In(language),
                Shown.Unit("uS/cm", language),
                [],
                [
                    .. today.Programme.SetPointUsPerCm is { } set ? [new ChartLine(from, to, set, HistoryPageTexts.SetPoint.In(language))] : Array.Empty<ChartLine>(),
                    .. result.HighAlarmUsPerCm is > 0 and var alarm ? [new ChartLine(from, to, alarm, CalcTexts.HighAlarm.In(language))] : Array.Empty<ChartLine>(),
                ],
                Series(today, change, zone, language, hour => hour.UsPerCm, "uS/cm")),
        };
        for (var i = 0; i < result.Products.Count; i++)
        {
            var place = i;
            panels.Add(new ChartPanel(result.Products[i], result.Products[i], Shown.Unit("mg/L", language), [], [], Series(today, change, zone, language, hour => hour.MgPerL[place], "mg/L")));
        }

        var lanes = new List<ChartLane> { Doses("doses", today, zone, language, CalcTexts.Today) };
        if (change?.Result is not null)
        {
            lanes.Add(Doses("doses-if", change, zone, language, CalcTexts.WhatIf));
        }

        if (today.Faults.Count > 0)
        {
            lanes.Add(new ChartLane("faults", CalcTexts.Faults.In(language), [.. today.Faults.Select(fault => new ChartMark(Ms(fault.At, zone), "up", false, null, fault.Says.In(language)))]));
        }

        return new ChartModel(Components.LanguageCodes.Of(language), from, to, panels, lanes, new Dictionary<string, string>(StringComparer.Ordinal));
    }

    private static ChartLane Doses(string kind, AheadRun run, TimeZoneInfo zone, Language language, Text name) => new(
        kind,
        CalcTexts.DosesOf.In(language, name.In(language)),
        [.. run.Result!.Doses.Where(dose => dose.Started is not null).Select(dose => new ChartMark(Ms(dose.Started!.Value, zone), "down", kind != "doses", null, dose.Product ?? dose.Output))]);

    private static List<ChartSeries> Series(AheadRun today, AheadRun? change, TimeZoneInfo zone, Language language, Func<LookAheadHour, double> of, string unit)
    {
        ChartSeries One(AheadRun run, Text name, bool dashed) => new(
            name.In(language),
            "none",
            dashed,
            dashed,
            [.. run.Result!.Hours.Select(hour => new ChartPoint(Ms(hour.Utc, zone), Math.Round(of(hour), 1), null, false, null, $"{name.In(language)}: {Shown.PlainWithUnit(Math.Round(of(hour), 1), unit, language)}"))]);
        var list = new List<ChartSeries> { One(today, CalcTexts.Today, false) };
        if (change?.Result is { } result && result.Products.SequenceEqual(today.Result!.Products))
        {
            list.Add(One(change, CalcTexts.WhatIf, true));
        }

        return list;
    }

    // The wall clock's own time line, as in the site history: no zone of a browser moves a mark.
    private static double Ms(DateTime utc, TimeZoneInfo zone) =>
        (DateTime.SpecifyKind(TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), zone), DateTimeKind.Utc) - DateTime.UnixEpoch).TotalMilliseconds;
}
