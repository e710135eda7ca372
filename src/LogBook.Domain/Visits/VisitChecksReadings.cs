using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Visits;

/// <summary>Doubts about test results and probe checks. None of them blocks.</summary>
internal sealed class VisitChecksReadings(VisitContext context, IssueList issues)
{
    /// <summary>Values looked back on (findings.md: five times the median of the last six).</summary>
    private const int LookBack = 6;

    /// <summary>With fewer earlier values there is no usual yet.</summary>
    private const int Fewest = 3;

    private const double Times = 5;

    /// <summary>Values this near to a factor are taken for a slip of unit or point.</summary>
    private const double SlipTolerance = 0.1;

    /// <summary>Display and reading are the same number entered twice: more than this apart, one of them was misread.</summary>
    private const double TwiceTolerance = 0.02;

    private static readonly double[] SlipFactors = [10, 100, 1000, ExactFactors.LitresPerUsGallon, ExactFactors.LitresPerImperialGallon];

    /// <summary>Tests whose part cannot exceed the whole, at the same sample point.</summary>
    private static readonly (string Part, string Whole)[] Parts =
    [
        (TestCodes.PAlkalinity, TestCodes.Alkalinity),
        (TestCodes.FreeHalogen, TestCodes.TotalHalogen),
        (TestCodes.Calcium, TestCodes.TotalHardness),
        (TestCodes.Magnesium, TestCodes.TotalHardness),
    ];

    /// <summary>Checks the readings of a visit.</summary>
    public void Check(Visit draft)
    {
        for (var i = 0; i < draft.Systems.Count; i++)
        {
            var record = draft.Systems[i];
            for (var j = 0; j < record.Readings.Count; j++)
            {
                if (record.Readings[j].Confirmed != true)
                {
                    CheckReading(draft, record, record.Readings[j], $"systems[{i}].readings[{j}]");
                }
            }

            for (var j = 0; j < record.Probes.Count; j++)
            {
                CheckProbe(record, record.Probes[j], $"systems[{i}].probes[{j}]");
            }
        }
    }

    private void CheckReading(Visit draft, VisitedSystem record, Reading reading, string path)
    {
        if (TestCatalogue.Find(reading.Test, context.Firm) is not { } test || VisitContext.ValueOf(reading, context.Firm) is not { } value)
        {
            return;
        }

        var field = reading.Value is null ? path + ".drops" : path + ".value";
        var unit = test.Units[0];
        if (value < test.Lowest || value > test.Highest)
        {
            issues.Ask(field, VisitChecksTexts.BeyondLimits, test.Name, Shown(value), unit, Limits(test));
            return;
        }

        if (Whole(record, reading, value) is { } whole)
        {
            issues.Ask(field, VisitChecksTexts.PartAboveWhole, test.Name, Shown(value), unit, whole.Name, Shown(whole.Value));
            return;
        }

        var last = context.Last(draft, record.System, reading, LookBack);
        if (last.Count < Fewest || record.Events.Any(e => e.Type is EventType.Drained or EventType.Refilled or EventType.Cleaned or EventType.Disinfected))
        {
            return;
        }

        var median = Median(last);
        if (IsFar(test, value, median))
        {
            if (Slip(test, value, median) is { } slip)
            {
                issues.Ask(field, VisitChecksTexts.Slip, test.Name, Shown(value), unit, Shown(median), slip);
            }
            else
            {
                issues.Ask(field, VisitChecksTexts.FarFromUsual, test.Name, Shown(value), unit, Shown(median));
            }
        }
    }

    private string Limits(TestInfo test) => test.Highest is { } highest ? $"{Shown(test.Lowest ?? 0)} … {Shown(highest)}" : $"≥ {Shown(test.Lowest ?? 0)}";

    /// <summary>How far is far: a factor for what is counted from zero, a difference where zero means nothing.</summary>
    private static bool IsFar(TestInfo test, double value, double median) => test.Code switch
    {
        TestCodes.Ph => Math.Abs(value - median) > 1.5,
        TestCodes.Temperature or TestCodes.Approach => Math.Abs(value - median) > 15,
        TestCodes.Orp => Math.Abs(value - median) > 400,

        // Counts of colonies move by powers of ten, and load between nothing and all: far is usual there.
        TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella or TestCodes.Load => false,
        _ => (value > Times * median || value < median / Times) && Math.Abs(value - median) > Times * (test.Step ?? 0),
    };

    private string? Slip(TestInfo test, double value, double median)
    {
        if (test.Units[0] == UnitCodes.Celsius)
        {
            // A value read in degrees Fahrenheit and entered as Celsius.
            return Math.Abs(((value - 32) / 1.8) - median) < 3 ? "(°F − 32) / 1.8" : null;
        }

        foreach (var factor in SlipFactors)
        {
            if (IsNear(value, median * factor))
            {
                return "× " + Shown(factor);
            }

            if (IsNear(value, median / factor))
            {
                return "÷ " + Shown(factor);
            }
        }

        return null;
    }

    private static bool IsNear(double a, double b) => b > 0 && Math.Abs(a - b) <= SlipTolerance * b;

    private (Text Name, double Value)? Whole(VisitedSystem record, Reading reading, double value)
    {
        foreach (var (part, whole) in Parts)
        {
            if (!part.Equals(reading.Test, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            foreach (var other in record.Readings)
            {
                // Two kits, two steps: a tenth more is no doubt.
                if (whole.Equals(other.Test, StringComparison.OrdinalIgnoreCase) && other.At.Equals(reading.At, StringComparison.OrdinalIgnoreCase)
                    && other.Phase == reading.Phase && VisitContext.ValueOf(other, context.Firm) is { } all
                    && value > (all * 1.1) + (TestCatalogue.Find(whole)!.Step ?? 0))
                {
                    return (TestCatalogue.Find(whole)!.Name, all);
                }
            }
        }

        return null;
    }

    private void CheckProbe(VisitedSystem record, ProbeReading probe, string path)
    {
        if ((probe.Of ?? Sites.ProbeKind.Conductivity) != Sites.ProbeKind.Conductivity)
        {
            return;
        }

        Same(record, probe.AsFound, probe.Unit, ReadingSource.Controller, path + ".asFound");
        if (probe.Reference is { } reference)
        {
            Same(record, reference, probe.Unit, ReadingSource.Reference, path + ".reference");
        }
    }

    private void Same(VisitedSystem record, double value, string unit, ReadingSource source, string path)
    {
        var twins = record.Readings.Where(r => r.Source == source && (r.Phase is null or ReadingPhase.Found)
            && r.Test.Equals(TestCodes.Conductivity, StringComparison.OrdinalIgnoreCase) && r.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase)).ToList();
        if (twins.Count != 1 || VisitContext.ValueOf(twins[0], context.Firm) is not { } twin
            || Units.Convert(value, unit, UnitCodes.MicrosiemensPerCm) is not { HasValue: true } converted)
        {
            return;
        }

        if (Math.Abs(converted.Value - twin) > TwiceTolerance * Math.Max(Math.Abs(twin), Math.Abs(converted.Value)))
        {
            issues.Ask(path, VisitChecksTexts.SaidTwice, IssueList.Leaf(path), Shown(converted.Value), UnitCodes.MicrosiemensPerCm, Shown(twin));
        }
    }

    /// <summary>Median; of an even number of values the mean of the middle two.</summary>
    internal static double Median(IReadOnlyList<double> values)
    {
        var sorted = values.Order().ToList();
        var middle = sorted.Count / 2;
        return sorted.Count % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /// <summary>Four figures are enough to see what is wrong.</summary>
    private string Shown(double value) => VisitChecksTexts.Number(value, context.Language);
}
