using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>
/// The numbers of a visit as the form has them typed: a probe's display and reference once, though the record says them
/// twice. Settings are left out: those that stand as they were left are taken over by one tap, not typed.
/// </summary>
internal static class TypedFields
{
    private static readonly string[] Depths = [UnitCodes.Centimetre, UnitCodes.Inch, UnitCodes.Percent, UnitCodes.Litre, UnitCodes.UsGallon, UnitCodes.ImperialGallon];
    private static readonly string[] Volumes = [UnitCodes.Litre, UnitCodes.UsGallon, UnitCodes.ImperialGallon];

    public static IReadOnlyList<TypedField> Of(Visit visit, FirmSetUp firm)
    {
        var record = visit.Systems[0];
        Visit With(VisitedSystem changed) => visit with { Systems = [changed, .. visit.Systems.Skip(1)] };
        return
        [
            .. Readings(record, firm, With),
            .. Probes(record, With),
            .. Stock(record, With),
            .. Pumps(record, With),
        ];
    }

    private static IEnumerable<TypedField> Readings(VisitedSystem record, FirmSetUp firm, Func<VisitedSystem, Visit> with)
    {
        for (var i = 0; i < record.Readings.Count; i++)
        {
            var (at, reading) = (i, record.Readings[i]);
            var test = TestCatalogue.Find(reading.Test, firm)!;
            if (IsOfProbe(reading) && record.Probes.Count > 0)
            {
                continue;
            }

            Visit Put(Reading changed) => with(record with { Readings = Replaced(record.Readings, at, changed) });
            if (reading.Drops is { } drops)
            {
                yield return new($"readings {reading.Test}", drops, null, [], (value, _) => Put(reading with { Drops = value }));
            }
            else if (reading.Value is { } typed)
            {
                yield return new($"readings {reading.Test}", typed, reading.Unit, test.Units, (value, unit) => Put(reading with { Value = value, Unit = unit! }));
            }
        }
    }

    private static IEnumerable<TypedField> Probes(VisitedSystem record, Func<VisitedSystem, Visit> with)
    {
        string[] conductivity = [UnitCodes.MicrosiemensPerCm, UnitCodes.MillisiemensPerCm];
        for (var i = 0; i < record.Probes.Count; i++)
        {
            var (at, probe) = (i, record.Probes[i]);
            var test = probe.Of switch
            {
                ProbeKind.Ph => TestCodes.Ph,
                ProbeKind.Orp => TestCodes.Orp,
                _ => TestCodes.Conductivity,
            };
            IReadOnlyList<string> units = test == TestCodes.Conductivity ? conductivity : [probe.Unit];

            // The form repeats the display and the reference among the readings.
            Visit Put(ProbeReading changed, ReadingSource? source, double value, string? unit) => with(record with
            {
                Probes = Replaced(record.Probes, at, changed),
                Readings = [.. record.Readings.Select(r => r.At == SamplePoints.Tower && r.Test == test && r.Source == source && r.Source is not null ? r with { Value = value, Unit = unit! } : r)],
            });
            yield return new($"probes {test} as found", probe.AsFound, probe.Unit, units, (value, unit) => Put(probe with { AsFound = value, Unit = unit! }, ReadingSource.Controller, value, unit));
            if (probe.Reference is { } reference)
            {
                yield return new($"probes {test} reference", reference, null, [], (value, _) => Put(probe with { Reference = value }, ReadingSource.Reference, value, probe.Unit));
            }

            if (probe.AfterCleaning is { } cleaned)
            {
                yield return new($"probes {test} after cleaning", cleaned, null, [], (value, _) => Put(probe with { AfterCleaning = value }, null, 0, null));
            }

            if (probe.AsLeft is { } left && probe.Calibrated == true)
            {
                yield return new($"probes {test} as left", left, null, [], (value, _) => Put(probe with { AsLeft = value }, null, 0, null));
            }
        }
    }

    private static IEnumerable<TypedField> Stock(VisitedSystem record, Func<VisitedSystem, Visit> with)
    {
        for (var i = 0; i < record.Meters.Count; i++)
        {
            var (at, meter) = (i, record.Meters[i]);
            Visit Put(MeterReading changed) => with(record with { Meters = Replaced(record.Meters, at, changed) });
            if (meter.Dial is { } dial)
            {
                yield return new("meters dial", dial, null, [], (value, _) => Put(meter with { Dial = value }));
            }

            if (meter.Total is { } total)
            {
                yield return new("meters total", total, null, [], (value, _) => Put(meter with { Total = value }));
            }
        }

        for (var i = 0; i < record.Drums.Count; i++)
        {
            var (at, drum) = (i, record.Drums[i]);
            Visit Put(DrumReading changed) => with(record with { Drums = Replaced(record.Drums, at, changed) });
            if (drum.Level is { } level && drum.Unit is { } levelUnit)
            {
                yield return new("drums level", level, levelUnit, Depths, (value, unit) => Put(drum with { Level = value, Unit = unit }));
            }

            if (drum.AddedL is > 0 and { } added)
            {
                yield return new("drums added", added, UnitCodes.Litre, Volumes, (value, unit) => Put(drum with { AddedL = Units.Convert(value, unit!, UnitCodes.Litre).Value }));
            }
        }

        for (var i = 0; i < record.HoursRun.Count; i++)
        {
            var (at, hours) = (i, record.HoursRun[i]);
            yield return new("hours", hours.Hours, null, [], (value, _) => with(record with { HoursRun = Replaced(record.HoursRun, at, hours with { Hours = value }) }));
        }
    }

    private static IEnumerable<TypedField> Pumps(VisitedSystem record, Func<VisitedSystem, Visit> with)
    {
        for (var i = 0; i < record.Pumps.Count; i++)
        {
            var (at, pump) = (i, record.Pumps[i]);
            Visit Put(PumpReading changed) => with(record with { Pumps = Replaced(record.Pumps, at, changed) });
            if (pump.StrokeFound is { } stroke)
            {
                yield return new("pumps stroke", stroke, null, [], (value, _) => Put(pump with { StrokeFound = value }));
            }

            if (pump.SpeedFound is { } speed)
            {
                yield return new("pumps speed", speed, null, [], (value, _) => Put(pump with { SpeedFound = value }));
            }
        }

        for (var i = 0; i < record.Drawdowns.Count; i++)
        {
            var (at, drawdown) = (i, record.Drawdowns[i]);
            yield return new("drawdown mL", drawdown.Millilitres, null, [], (value, _) => with(record with { Drawdowns = Replaced(record.Drawdowns, at, drawdown with { Millilitres = value }) }));
        }
    }

    private static bool IsOfProbe(Reading reading) => reading.At == SamplePoints.Tower && reading.Source is ReadingSource.Controller or ReadingSource.Reference
        && reading.Test is TestCodes.Conductivity or TestCodes.Ph or TestCodes.Orp;

    private static List<T> Replaced<T>(IReadOnlyList<T> list, int at, T item) => [.. list.Select((old, i) => i == at ? item : old)];
}
