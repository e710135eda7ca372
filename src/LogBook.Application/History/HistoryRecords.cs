using LogBook.Domain.Drums;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Meters;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>Drum levels, hours run and the dials of meters as panels on the same time axis as the readings.</summary>
/// <remarks>Where a register was renewed or hours were set to zero no line leads from the old run to the new one.</remarks>
public static class HistoryRecords
{
    /// <summary>Begin of the key of a panel; no sample point is called so.</summary>
    public const string Prefix = "records.";

    private const string Levels = Prefix + "levels";
    private const string Hours = Prefix + "hours";
    private const string Dial = Prefix + "dial.";

    private static readonly Text LevelsTitle = new("Drum levels as found", "Niveles de bidones al llegar", "Níveis das bombonas como encontrados");
    private static readonly Text HoursTitle = new("Hours run", "Horas de marcha", "Horas de funcionamento");
    private static readonly Text DialTitle = new("Water meter {0}", "Contador de agua {0}", "Hidrômetro {0}");
    private static readonly Text DialName = new("dial", "esfera", "mostrador");
    private static readonly Text TotalName = new("controller's total", "total del controlador", "total do controlador");

    /// <summary>Keys of the panels that the records of a period fill.</summary>
    public static IReadOnlyList<string> KeysOf(IReadOnlyList<SystemVisit> visits) =>
    [
        .. visits.Any(visit => visit.Record.Drums.Any(drum => drum.Level is not null)) ? [Levels] : Array.Empty<string>(),
        .. visits.Any(visit => visit.Record.HoursRun.Count > 0) ? [Hours] : Array.Empty<string>(),
        .. visits.SelectMany(visit => visit.Record.Meters).Where(meter => meter.Dial is not null || meter.Total is not null)
            .Select(meter => Dial + meter.Meter).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Title of a panel; null for a key of readings or figures.</summary>
    public static Text? TitleOf(string key) => key switch
    {
        _ when Same(key, Levels) => LevelsTitle,
        _ when Same(key, Hours) => HoursTitle,
        _ when key.StartsWith(Dial, StringComparison.OrdinalIgnoreCase) => With(DialTitle, key[Dial.Length..]),
        _ => null,
    };

    /// <summary>One panel; null for a key of readings or figures.</summary>
    /// <param name="history">Set-up, products of its drums, zone and the visits of the period.</param>
    /// <param name="key">Which panel.</param>
    public static HistoryPanel? PanelOf(SystemHistory history, string key) => key switch
    {
        _ when Same(key, Levels) => PanelOf(history, key, "L", LevelsOf),
        _ when Same(key, Hours) => PanelOf(history, key, "h", HoursOf),
        _ when key.StartsWith(Dial, StringComparison.OrdinalIgnoreCase) => DialPanelOf(history, key),
        _ => null,
    };

    private static HistoryPanel PanelOf(SystemHistory history, string key, string unit, Func<SystemHistory, SystemVisit, IEnumerable<Record>> read)
    {
        var records = history.Visits.SelectMany(visit => read(history, visit)).ToList();
        var moments = history.Visits.Select(visit => HistoryBuilder.Wall(history, visit.At)).ToList();
        var series = records.Where(record => record.Value is not null).GroupBy(record => (record.Source, Name: record.Name.En), (_, group) => SeriesOf([.. group], moments)).ToList();
        return new HistoryPanel(key, "", "", unit, series, [], [], records.Count(record => record.Value is null)) { Title = TitleOf(key) };
    }

    private static HistoryPanel DialPanelOf(SystemHistory history, string key)
    {
        var code = key[Dial.Length..];
        var unit = history.Visits.Count == 0 ? null : PartsOnDay.MeterOn(history.System, code, history.DayOf(history.Visits[^1].At))?.Unit;
        return PanelOf(history, key, unit ?? "1", (_, visit) => DialsOf(history, visit, code, unit ?? "1"));
    }

    // The controller's total is drawn as what the controller shows, apart from the dial that people read.
    private static IEnumerable<Record> DialsOf(SystemHistory history, SystemVisit visit, string code, string unit)
    {
        foreach (var reading in visit.Record.Meters.Where(reading => Same(reading.Meter, code)))
        {
            var meter = PartsOnDay.MeterOn(history.System, code, history.DayOf(visit.At));
            var at = HistoryBuilder.Wall(history, visit.At);
            if (reading.Dial is { } dial)
            {
                yield return new Record(at, visit.Visit.Id, DialName, null, meter is null ? null : Known(RegisterCount.OfDial(meter, dial, unit))) { Begins = reading.Replaced == true };
            }

            if (reading.Total is { } total)
            {
                yield return new Record(at, visit.Visit.Id, TotalName, ReadingSource.Controller, meter is null ? null : Known(RegisterCount.OfTotal(meter, total, unit)))
                {
                    Begins = reading.Reset == true,
                    Ends = reading.After is not null,
                };
            }
        }
    }

    private static IEnumerable<Record> LevelsOf(SystemHistory history, SystemVisit visit)
    {
        foreach (var reading in visit.Record.Drums)
        {
            if (reading.Level is not { } level)
            {
                continue;
            }

            var drum = PartsOnDay.DrumOn(history.System, reading.Drum, history.DayOf(visit.At));
            var litres = drum is null ? default : DrumVolume.FromLevel(drum, level, reading.Unit, history.Firm.Products.GetValueOrDefault(drum.Product));
            var estimate = litres.HasValue ? litres.Value : null;
            yield return new Record(HistoryBuilder.Wall(history, visit.At), visit.Visit.Id, Plain(reading.Drum), null, estimate?.Value) { Estimate = estimate };
        }
    }

    private static IEnumerable<Record> HoursOf(SystemHistory history, SystemVisit visit) => visit.Record.HoursRun.Select(reading =>
        new Record(HistoryBuilder.Wall(history, visit.At), visit.Visit.Id, Plain(reading.Output), null, reading.Hours) { Begins = reading.Reset == true, Ends = reading.After is not null });

    private static HistorySeries SeriesOf(IReadOnlyList<Record> records, IReadOnlyList<DateTime> visits)
    {
        var ordered = records.OrderBy(record => record.At).ToList();
        var series = HistoryBuilder.WithGaps(
            ordered[0].Source,
            ordered.Select(record => new HistoryPoint(record.At, record.Visit, record.Value, null, record.Source, RangeStanding.NoRange) { Low = record.Estimate?.Low, High = record.Estimate?.High }),
            visits);
        var runs = Enumerable.Range(1, ordered.Count - 1).Where(i => ordered[i].Begins || ordered[i - 1].Ends);
        return series with { Gaps = series.Gaps.Union(runs).ToHashSet(), Name = ordered[0].Name };
    }

    private static double? Known(Domain.Outcomes.Computed<double> count) => count.HasValue ? count.Value : null;

    private static Text With(Text text, string code) => new(
        string.Format(System.Globalization.CultureInfo.InvariantCulture, text.En, code),
        string.Format(System.Globalization.CultureInfo.InvariantCulture, text.Es, code),
        string.Format(System.Globalization.CultureInfo.InvariantCulture, text.Pt, code));

    private static Text Plain(string text) => new(text, text, text);

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private sealed record Record(DateTime At, Guid Visit, Text Name, ReadingSource? Source, double? Value)
    {
        public Estimate? Estimate { get; init; }

        // A new run begins with this one: renewed, or set to zero since the last visit.
        public bool Begins { get; init; }

        // Set to zero at this visit: the next one belongs to another run.
        public bool Ends { get; init; }
    }
}
