using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>Puts readings, ranges and events of a system on one time axis. Reads records only: no database, no clock.</summary>
public static class HistoryBuilder
{
    /// <summary>Name of a panel in the address.</summary>
    public static string KeyOf(string at, string test) => $"{at}.{test}";

    /// <summary>All that was read in the period, most read first, tower water before the rest.</summary>
    public static IReadOnlyList<string> KeysOf(IReadOnlyList<SystemVisit> visits) =>
    [
        .. visits
            .SelectMany(visit => visit.Record.Readings.Where(r => r.NotTaken is null).Select(r => (At: r.At.ToLowerInvariant(), r.Test)))
            .GroupBy(pair => KeyOf(pair.At, pair.Test), StringComparer.OrdinalIgnoreCase)
            .OrderBy(group => group.First().At == SamplePoints.Tower ? 0 : 1)
            .ThenByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => group.Key),
    ];

    /// <summary>What is shown when the address does not say: conductivity of the tower, then what the programme has ranges for.</summary>
    public static IReadOnlyList<string> UsualKeys(IReadOnlyList<string> all, Programme? programme)
    {
        var wanted = new List<string> { KeyOf(SamplePoints.Tower, TestCodes.Conductivity) };
        wanted.AddRange(programme?.Ranges.Select(range => KeyOf(range.At, range.Test)) ?? []);
        var shown = wanted.Where(key => all.Contains(key, StringComparer.OrdinalIgnoreCase)).Distinct(StringComparer.OrdinalIgnoreCase).Take(5).ToList();
        return shown.Count > 0 ? shown : [.. all.Take(3)];
    }

    /// <summary>One panel.</summary>
    /// <param name="history">Programmes, zone and the visits of the period.</param>
    /// <param name="key">Which readings.</param>
    /// <param name="from">First day of the period.</param>
    /// <param name="to">Day after its last.</param>
    /// <param name="inUnit">Unit to draw in; the range's, else the usual one, when null.</param>
    public static HistoryPanel PanelOf(SystemHistory history, string key, DateOnly from, DateOnly to, string? inUnit = null)
    {
        var dot = key.IndexOf('.', StringComparison.Ordinal);
        var (at, test) = dot < 0 ? (key, key) : (key[..dot], key[(dot + 1)..]);
        var readings = history.Visits
            .SelectMany(visit => visit.Record.Readings
                .Where(r => r.NotTaken is null && Same(r.At, at) && Same(r.Test, test))
                .Select(r => (visit, reading: r)))
            .ToList();
        var ranges = Spans(history, from, to)
            .Select(span => (span.From, span.To, range: RangeJudgement.RangeOf(span.Programme, at, test)))
            .ToList();
        var unit = inUnit ?? ranges.LastOrDefault(span => span.range is not null).range?.Unit
            ?? readings.GroupBy(pair => pair.reading.Unit).OrderByDescending(group => group.Count()).FirstOrDefault()?.Key
            ?? "1";
        var shown = readings.Where(pair => pair.reading.Unit == unit || Units.SameDimension(pair.reading.Unit, unit)).ToList();
        var series = shown
            .GroupBy(pair => pair.reading.Source ?? ReadingSource.Kit)
            .OrderBy(group => group.Key == ReadingSource.Controller ? 1 : 0).ThenBy(group => group.Key)
            .Select(group => SeriesOf(history, group.Key, group.Select(pair => PointOf(history, pair.visit, pair.reading, unit)), history.Visits))
            .ToList();
        return new HistoryPanel(
            key,
            at,
            test,
            unit,
            series,
            [.. ranges.Where(span => span.range is not null).Select(span => BandOf(span.From, span.To, span.range!, unit)).OfType<HistoryBand>()],
            SetPointsOf(history, at, test, unit, from, to),
            readings.Count - shown.Count);
    }

    /// <summary>Number of a reading in its own unit; null where it was not quantifiable.</summary>
    public static double? ValueOf(Reading reading) => reading.NotQuantifiable == true ? null : RangeJudgement.NumberOf(reading);

    /// <summary>Number of a reading in another unit, on the fixed basis of its test; null where the two cannot be put into each other.</summary>
    public static double? ValueIn(Reading reading, string unit)
    {
        if (ValueOf(reading) is not { } value)
        {
            return null;
        }

        var inUnit = reading.Unit == unit ? Computed<double>.Of(value) : Units.Convert(value, reading.Unit, unit);
        return reading.Basis is { } basis && Bases.OfTest(reading.Test) is { } usual && basis != usual
            ? inUnit.Then(number => BasisConversion.Convert(number, basis, usual)) is { HasValue: true } converted ? converted.Value : null
            : inUnit.HasValue ? inUnit.Value : null;
    }

    /// <summary>Events of the period as marks, in order of time.</summary>
    public static IReadOnlyList<HistoryMark> MarksOf(SystemHistory history, IEnumerable<Finding> findings, DateOnly from, DateOnly to)
    {
        var marks = new List<HistoryMark>();
        marks.AddRange(history.Programmes
            .Where(programme => programme.From > from && programme.From < to)
            .Select(programme => new HistoryMark(HistoryMarkKind.Settings, programme.From.ToDateTime(TimeOnly.MinValue), null, new Said(HistoryTexts.ProgrammeBegins))));
        var left = new Dictionary<string, SettingValue>(StringComparer.Ordinal);
        foreach (var visit in history.Visits)
        {
            marks.AddRange(HistoryMarks.Settings(history, visit, left));
            marks.AddRange(HistoryMarks.Stock(history, visit));
            marks.AddRange(HistoryMarks.Events(history, visit));
            marks.AddRange(HistoryMarks.Probes(history, visit));
            marks.AddRange(HistoryMarks.Results(history, visit));
            marks.AddRange(HistoryMarks.Photos(history, visit));
        }

        marks.AddRange(findings
            .Where(finding => finding.FirstSeen >= from && finding.FirstSeen < to)
            .Select(finding => new HistoryMark(
                HistoryMarkKind.Finding,
                finding.FirstSeen.ToDateTime(new TimeOnly(12, 0)),
                finding.FirstVisit,
                new Said(FindingTexts.NameOf(finding.Kind)),
                finding.Severity)));
        return [.. marks.OrderBy(mark => mark.At).ThenBy(mark => mark.Kind)];
    }

    /// <summary>Wall time at the site.</summary>
    internal static DateTime Wall(SystemHistory history, DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, history.Zone);

    private static HistorySeries SeriesOf(SystemHistory history, ReadingSource source, IEnumerable<HistoryPoint> points, IReadOnlyList<SystemVisit> visits) =>
        WithGaps(source, points, [.. visits.Select(visit => Wall(history, visit.At))]);

    /// <summary>A series in order of time, with its gaps by the usual distance of the visits.</summary>
    internal static HistorySeries WithGaps(ReadingSource? source, IEnumerable<HistoryPoint> points, IReadOnlyList<DateTime> visits)
    {
        var ordered = points.OrderBy(point => point.At).ToList();
        var usual = SeriesGaps.UsualInterval(visits);
        var gaps = Enumerable.Range(1, Math.Max(0, ordered.Count - 1)).Where(i => SeriesGaps.IsGap(ordered[i - 1].At, ordered[i].At, usual)).ToHashSet();
        return new HistorySeries(source, ordered, gaps);
    }

    private static HistoryPoint PointOf(SystemHistory history, SystemVisit visit, Reading reading, string unit)
    {
        var at = reading.TakenAt?.Utc ?? visit.At;
        var range = RangeJudgement.RangeOf(history.ProgrammeOn(history.DayOf(at)), reading.At, reading.Test);
        return new HistoryPoint(Wall(history, at), visit.Visit.Id, ValueIn(reading, unit), reading.Qualifier, reading.Source, RangeJudgement.Of(reading, range));
    }

    // A range stands in its own unit and basis; it is drawn in that of the panel, as the readings are.
    private static HistoryBand? BandOf(DateOnly from, DateOnly to, TestRange range, string unit)
    {
        double? In(double? limit) => limit is null ? null : ValueIn(new Reading { At = range.At, Test = range.Test, Value = limit, Unit = range.Unit, Basis = range.Basis }, unit);
        var (low, high) = (In(range.Low), In(range.High));
        return (low is null) == (range.Low is null) && (high is null) == (range.High is null) ? new HistoryBand(from, to, low, high) : null;
    }

    private static IReadOnlyList<HistoryBand> SetPointsOf(SystemHistory history, string at, string test, string unit, DateOnly from, DateOnly to) =>
        Same(at, SamplePoints.Tower) && Same(test, TestCodes.Conductivity)
            ? [.. Spans(history, from, to)
                .Where(span => span.Programme.SetPointUsPerCm is not null)
                .Select(span => (span.From, span.To, At: Units.Convert(span.Programme.SetPointUsPerCm!.Value, UnitCodes.MicrosiemensPerCm, unit)))
                .Where(span => span.At.HasValue)
                .Select(span => new HistoryBand(span.From, span.To, span.At.Value, span.At.Value))]
            : [];

    private static IEnumerable<(DateOnly From, DateOnly To, Programme Programme)> Spans(SystemHistory history, DateOnly from, DateOnly to)
    {
        for (var i = 0; i < history.Programmes.Count; i++)
        {
            var begins = history.Programmes[i].From > from ? history.Programmes[i].From : from;
            var ends = i + 1 < history.Programmes.Count && history.Programmes[i + 1].From < to ? history.Programmes[i + 1].From : to;
            if (begins < ends)
            {
                yield return (begins, ends, history.Programmes[i]);
            }
        }
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
