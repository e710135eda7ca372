using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Visits;

/// <summary>Doubts about test results and probe checks. None of them blocks.</summary>
internal sealed class VisitChecksReadings(VisitContext context, IssueList issues)
{
    /// <summary>Counts come seldom, and only values beyond all of them are asked about.</summary>
    private const int FewestCounts = 2;

    /// <summary>The limit of a method or a laboratory stays what it is; one that is this many times another is asked about.</summary>
    private const double TimesLimit = 2;

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
        if (TestCatalogue.Find(reading.Test, context.Firm) is not { } test || VisitContext.LimitOf(reading, context.Firm) is not { } value)
        {
            return;
        }

        if (reading.Qualifier is { } sign)
        {
            CheckLimit(draft, record, reading, test, sign, value, path + ".value");
            return;
        }

        var field = reading.Value is null ? path + ".drops" : path + ".value";
        var amount = Shown(value, test.Units[0]);
        if (ReadingDoubts.IsBeyond(test, value))
        {
            issues.Ask(field, VisitChecksTexts.BeyondLimits, test.Name, amount, Limits(test));
            return;
        }

        if (Whole(record, reading, value) is { } whole)
        {
            issues.Ask(field, VisitChecksTexts.PartAboveWhole, test.Name, amount, whole.Name, Shown(whole.Value));
            return;
        }

        var isCount = test.Code is TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella;
        var last = isCount
            ? [.. context.LastWithLimits(draft, record.System, reading, ReadingDoubts.LookBack).Select(p => p.Value)]
            : context.Last(draft, record.System, reading, ReadingDoubts.LookBack);
        if (last.Count < (isCount ? FewestCounts : ReadingDoubts.Fewest) || record.Events.Any(e => e.Type is EventType.Drained or EventType.Refilled or EventType.Cleaned or EventType.Disinfected))
        {
            return;
        }

        var median = Median(last);
        if (UsualBand.IsFar(test, value, last, Math.Max(test.Step ?? 0, reading.PerDrop ?? 0), context.Firm.Engine.For(draft.Site, record.System).Thresholds.SuspectTimes.Value))
        {
            if (Slip(test, value, median) is { } slip)
            {
                issues.Ask(field, VisitChecksTexts.Slip, test.Name, amount, Shown(median), slip);
            }
            else
            {
                issues.Ask(field, VisitChecksTexts.FarFromUsual, test.Name, amount, Shown(median));
            }
        }
    }

    private void CheckLimit(Visit draft, VisitedSystem record, Reading reading, TestInfo test, string sign, double value, string path)
    {
        var limits = context.LastWithLimits(draft, record.System, reading, ReadingDoubts.LookBack).Where(p => p.Qualifier == sign).Select(p => p.Value).ToList();
        if (limits.Count > 0 && limits.TrueForAll(limit => value > TimesLimit * limit || value < limit / TimesLimit))
        {
            issues.Ask(path, VisitChecksTexts.FarFromUsual, test.Name, sign + " " + Shown(value, test.Units[0]), sign + " " + Shown(limits[^1]));
        }
    }

    private string Limits(TestInfo test) => test.Highest is { } highest ? $"{Shown(test.Lowest ?? 0)} … {Shown(highest)}" : $"≥ {Shown(test.Lowest ?? 0)}";

    private string? Slip(TestInfo test, double value, double median)
    {
        if (test.Units[0] == UnitCodes.Celsius)
        {
            // A value read in degrees Fahrenheit and entered as Celsius.
            return Math.Abs(((value - 32) / 1.8) - median) < 3 ? "(°F − 32) / 1.8" : null;
        }

        return ReadingDoubts.SlipOf(value, median) is { } slip ? (slip.IsTimes ? "× " : "÷ ") + Shown(slip.Factor) : null;
    }

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
        foreach (var (field, here, among) in ProbeTwin.Differing(record, probe, context.Firm))
        {
            issues.Ask($"{path}.{field}", VisitChecksTexts.SaidTwice, VisitFieldTexts.NameOf(field), Shown(here, UnitCodes.MicrosiemensPerCm), Shown(among));
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

    // The name of the test says already that it is a pH.
    private string Shown(double value, string unit) => unit == UnitCodes.Ph || Languages.Shown.Unit(unit, context.Language) is not { Length: > 0 } shown
        ? Shown(value)
        : Shown(value) + "\u00a0" + shown;
}
