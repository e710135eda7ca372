using LogBook.Bank.Faults;
using LogBook.Bank.Runs;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;

namespace LogBook.Bank.Scoring;

/// <summary>Whether a flag was right.</summary>
internal enum Standing
{
    /// <summary>A fault explains it, or the noise-free plant was where it says.</summary>
    Right,

    /// <summary>Nothing explains it.</summary>
    False,

    /// <summary>A fault is there and this sends somebody the wrong way.</summary>
    Wrong,

    /// <summary>True by the records alone, whatever the plant does: a count in its band, a date passed, a test not made.</summary>
    ByRecord,
}

/// <summary>Judges flags by the truth.</summary>
internal static class Truthful
{
    // After a repair the records still show it for some visits.
    private const int RecoveryDays = 45;

    private static readonly HashSet<string> Records = [FindingKinds.MicrobiologyHigh, FindingKinds.ClockDue, FindingKinds.NotMeasured, FindingKinds.SeenAgain];

    public static Standing Of(Flag flag, Course course)
    {
        var day = flag.Raised ?? flag.Seen;
        var near = course.System.Faults.Where(f => IsNear(f, flag, course)).ToList();
        if (near.Exists(f => f.FoundBy.Contains(flag.Kind) || (f.Explains.Contains(flag.Kind) && !IsForbidden(f, flag, day))))
        {
            return Standing.Right;
        }

        if (IsTrue(flag, course, day))
        {
            return Standing.Right;
        }

        if (near.Exists(f => IsForbidden(f, flag, day)))
        {
            return Standing.Wrong;
        }

        return Records.Contains(flag.Kind) ? Standing.ByRecord : Standing.False;
    }

    private static bool IsForbidden(Fault fault, Flag flag, DateOnly day) => fault.Forbidden.Contains(flag.Kind) && day >= (fault.ForbiddenFrom ?? fault.Onset) && fault.IsActive(day);

    private static bool IsNear(Fault fault, Flag flag, Course course)
    {
        var day = flag.Raised ?? flag.Seen;
        return day >= fault.Onset && (fault.Repaired is not { } end || day <= end.AddDays(RecoveryDays + (2 * course.System.EveryDays)));
    }

    /// <summary>Whether the plant without noise was where the flag says, at the visit it was raised at or the one before.</summary>
    private static bool IsTrue(Flag flag, Course course, DateOnly day)
    {
        var at = course.IndexOn(day);
        return at >= 0 && (IsTrueAt(flag, course, at) || (at > 0 && IsTrueAt(flag, course, at - 1)));
    }

    private static bool IsTrueAt(Flag flag, Course course, int i)
    {
        var (truth, system) = (course.Truths[i], course.System);
        var target = system.Programme.TargetCycles!.Value;
        switch (flag.Kind)
        {
            case FindingKinds.ConductivityOut:
                var range = Truth.RangeOf(system, TestCodes.Conductivity);
                return truth.Conductivity < 1.02 * (range?.Low ?? (0.85 * system.Programme.SetPointUsPerCm)) || truth.Conductivity > 0.98 * (range?.High ?? (1.1 * system.Programme.SetPointUsPerCm));
            case FindingKinds.CyclesLow:
                return truth.Cycles < 0.9 * target;
            case FindingKinds.CyclesHigh:
                return truth.Cycles > 1.1 * target;
            case FindingKinds.ResidualLow when flag.About.Contains(TestCodes.FreeHalogen, StringComparison.Ordinal):
                return truth.Halogen < 1.05 * (Truth.RangeOf(system, TestCodes.FreeHalogen)?.Low ?? 0);
            case FindingKinds.ResidualLow:
                return truth.Inhibitor < 1.03 * Truth.RangeOf(system, TestCodes.Inhibitor)!.Low;
            case FindingKinds.ResidualHigh when flag.About.Contains(TestCodes.FreeHalogen, StringComparison.Ordinal):
                return truth.Halogen > 0.95 * (Truth.RangeOf(system, TestCodes.FreeHalogen)?.High ?? 99);
            case FindingKinds.ResidualHigh:
                return truth.Inhibitor > 0.97 * Truth.RangeOf(system, TestCodes.Inhibitor)!.High;
            case FindingKinds.ProbeReadsOff:
                return Math.Abs(truth.ProbeFactor - 1) > 0.045;
            case FindingKinds.FeedLow or FindingKinds.FeedHigh when flag.About.Contains(system.InhibitorDrum, StringComparison.Ordinal):
                return FedOffTarget(flag, course, i);
            case FindingKinds.RangeOut when flag.About.Contains(TestCodes.Ph, StringComparison.Ordinal):
                return truth.Ph < Truth.RangeOf(system, TestCodes.Ph)!.Low || truth.Ph > Truth.RangeOf(system, TestCodes.Ph)!.High;
            case FindingKinds.MakeUpChanged:
                return Math.Abs((truth.MakeUpConductivity / system.Model.MakeUp.ConductivityUsPerCm!.Value) - 1) > 0.15;
            case FindingKinds.BiocideLapse:
                return NoBiocide(course, i);
            case FindingKinds.RunsOut:
                return RunsShort(flag, course, i);
            default:
                return false;
        }
    }

    /// <summary>Product truly used against what the water truly lost asks for, over about six weeks.</summary>
    private static bool FedOffTarget(Flag flag, Course course, int i)
    {
        var from = i;
        while (from > 0 && course.Truths[i].Hours - course.Truths[from].Hours < 40 * 24)
        {
            from--;
        }

        var system = course.System;
        var density = Firms.BankProducts.DensityOf(system.Full.Drums[0].Product);
        var should = system.InhibitorTarget * course.Loss(from, i) / 1e6 / density;
        var ratio = should > 0 ? course.Used(system.InhibitorDrum, from, i) / should : 1;
        return flag.Kind == FindingKinds.FeedLow ? ratio < 0.8 : ratio > 1.2;
    }

    /// <summary>Whether the plant ran and the drum of every biocide gave up less than half of what it was designed to since the visit before.</summary>
    private static bool NoBiocide(Course course, int i)
    {
        var biocides = course.System.Full.Drums.Where(d => d.Code != course.System.InhibitorDrum).Select(d => d.Code).ToList();
        return i > 0 && course.Truths[i].Running && course.Truths[i - 1].Running && biocides.TrueForAll(drum => course.Used(drum, i - 1, i) < 0.5 * course.System.DesignLPerDay[drum] * (course.DayOf(i).DayNumber - course.DayOf(i - 1).DayNumber));
    }

    /// <summary>Whether what stood in the drum was less than one and a half times what went until the next visit: then one orders.</summary>
    private static bool RunsShort(Flag flag, Course course, int i)
    {
        var drum = course.System.Full.Drums.FirstOrDefault(d => flag.About.Contains(d.Code, StringComparison.Ordinal));
        if (drum is null || i + 1 >= course.Count)
        {
            return true;
        }

        var after = course.Truths[i + 1].DrumL[drum.Code] - (drum.UnusableL ?? 0);
        return after < 0.5 * Math.Max(course.Used(drum.Code, i, i + 1), course.System.DesignLPerDay[drum.Code] * course.System.EveryDays);
    }
}
