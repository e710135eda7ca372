using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Scoring;

/// <summary>
/// The baseline: a careful spreadsheet with fixed limits on the same records. Probe more than 5 % off the hand meter, conductivity
/// and inhibitor outside their range, dip slide from 1e4, product used over four weeks more than 25 % off the calendar, meter standing. Every mark
/// counts as "plan" and lasts until a visit without it.
/// </summary>
internal static class Spreadsheet
{
    public static IReadOnlyList<Flag> Of(Course course)
    {
        var flags = new List<Flag>();
        var open = new Dictionary<(string Kind, string About), int>();
        var levels = new Dictionary<string, List<(DateOnly Day, double Used)>>(StringComparer.Ordinal);
        var left = new Dictionary<string, double>(StringComparer.Ordinal);
        double? dial = null;
        for (var i = 0; i < course.Count; i++)
        {
            var day = course.DayOf(i);
            foreach (var (kind, about, marked) in Marks(course.System, course.Visits[i].Systems[0], day, levels, left, ref dial))
            {
                if (marked && !open.ContainsKey((kind, about)))
                {
                    open[(kind, about)] = flags.Count;
                    flags.Add(new Flag(kind, about, day, day, null, Severity.Plan, "outside its fixed limit"));
                }
                else if (!marked && open.Remove((kind, about), out var at))
                {
                    flags[at] = flags[at] with { Closed = day };
                }
            }
        }

        return flags;
    }

    private static List<(string Kind, string About, bool Marked)> Marks(BankSystem system, VisitedSystem record, DateOnly day, Dictionary<string, List<(DateOnly Day, double Used)>> levels, Dictionary<string, double> left, ref double? dial)
    {
        var marks = new List<(string, string, bool)>();
        foreach (var probe in record.Probes.Where(p => p is { Of: Domain.Sites.ProbeKind.Conductivity, Reference: > 0 }))
        {
            marks.Add((FindingKinds.ProbeReadsOff, "", Math.Abs((probe.AsFound / probe.Reference!.Value) - 1) > 0.05));
        }

        var setPoint = system.Programme.SetPointUsPerCm!.Value;
        if (Value(record, TestCodes.Conductivity, "uS/cm") is { } conductivity)
        {
            var range = Truth.RangeOf(system, TestCodes.Conductivity);
            marks.Add((FindingKinds.ConductivityOut, "", conductivity > (range?.High ?? (1.1 * setPoint)) || conductivity < (range?.Low ?? (0.85 * setPoint))));
        }

        if (Value(record, TestCodes.Inhibitor, "mg/L") is { } inhibitor && Truth.RangeOf(system, TestCodes.Inhibitor) is { } limits)
        {
            marks.Add((FindingKinds.ResidualLow, "", inhibitor < limits.Low));
            marks.Add((FindingKinds.ResidualHigh, "", inhibitor > limits.High));
        }

        foreach (var count in record.Readings.Where(r => r.Test is TestCodes.DipSlide or TestCodes.Legionella && r.Qualifier != "<" && r.Value is not null))
        {
            marks.Add((FindingKinds.MicrobiologyHigh, count.Test, count.Value >= (count.Test == TestCodes.DipSlide ? 1e4 : 20)));
        }

        foreach (var drum in record.Drums.Where(d => d.Level is not null))
        {
            var on = system.Full.Drums.First(d => d.Code == drum.Drum);
            double Litres(double level) => drum.Unit switch
            {
                "%" => level / 100 * on.CapacityL!.Value,
                "L" => level,
                "[in_i]" => level * 2.54 / on.HeightCm!.Value * on.CapacityL!.Value,
                _ => level / on.HeightCm!.Value * on.CapacityL!.Value,
            };
            var found = Litres(drum.Level!.Value);
            if (!levels.TryGetValue(drum.Drum, out var used))
            {
                levels[drum.Drum] = used = [];
            }

            used.Add((day, left.TryGetValue(drum.Drum, out var before) ? before - found : 0));
            if (used.FindLastIndex(u => day.DayNumber - u.Day.DayNumber >= 28) is >= 0 and var from)
            {
                var ratio = used.Skip(from + 1).Sum(u => u.Used) / ((day.DayNumber - used[from].Day.DayNumber) * system.DesignLPerDay[drum.Drum]);
                marks.Add((FindingKinds.FeedLow, drum.Drum, ratio < 0.75));
                marks.Add((FindingKinds.FeedHigh, drum.Drum, ratio > 1.25));
            }

            left[drum.Drum] = drum.Left is { } after ? Litres(after) : found + (drum.AddedL ?? 0) - (drum.RemovedL ?? 0);
        }

        if (record.Meters is [{ Dial: { } now }, ..])
        {
            if (dial is { } before)
            {
                marks.Add((FindingKinds.MeterStopped, "", now == before));
                marks.Add((FindingKinds.MeterBackwards, "", now < before));
            }

            dial = now;
        }

        return marks;
    }

    private static double? Value(VisitedSystem record, string test, string unit)
    {
        var reading = record.Readings.FirstOrDefault(r => r.Test == test && r.At == SamplePoints.Tower && r.Source != ReadingSource.Controller && r.Value is not null);
        return reading is not null && Units.Convert(reading.Value!.Value, reading.Unit, unit) is { HasValue: true } converted ? converted.Value : null;
    }
}
