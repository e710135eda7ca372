using LogBook.Bank.Firms;
using LogBook.Domain.Findings;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;

namespace LogBook.Bank.Faults;

/// <content>Probe, losses, bleed valve, make-up.</content>
internal static partial class FaultCatalogue
{
    private static IEnumerable<FaultSpec> ProbeAndWater =>
    [
        new("probe fouls", new Traits(), Fouls),
        new("probe calibrated dirty", new Traits { LongestInterval = 21 }, CalibratedDirty),
        new("probe offset", new Traits(), Offset),
        new("ORP probe coats", new Traits { Orp = true }, OrpCoats),
        new("leak grows", new Traits { MakeUpMeter = true, RoundTheClock = true }, LeakGrows),
        new("overflow", new Traits(), Overflow),
        new("bleed valve passes", new Traits(), Passes),
        new("bleed valve blocked", new Traits(), Blocked),
        new("make-up changes", new Traits { MakeUpTested = true }, MakeUpChanges),
        new("softener fails", new Traits { Softened = true, MakeUpTested = true }, SoftenerFails),
        new("scale deposits", new Traits { MakeUpTested = true }, Deposits),
    ];

    private static Fault Fouls(BankSystem system, SplitMix draw, DateOnly onset)
    {
        // -0.4 to -1.3 % a week, left alone by a person who trusts the display; then cleaned.
        var cleaned = RepairOf(system, onset.AddDays(60));
        return Probe("probe fouls", system, onset, cleaned, Entry(onset, ScenarioAct.ProbeFouling, -draw.Between(0.5, 1.3)), Act(onset, TechnicianActKind.LeaveProbe, until: cleaned.AddDays(-1)), Act(cleaned, TechnicianActKind.CleanProbe));
    }

    private static Fault CalibratedDirty(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var (first, second, cleaned) = (VisitFrom(system, onset.AddDays(50)), VisitFrom(system, onset.AddDays(110)), VisitFrom(system, onset.AddDays(170)));
        return Probe("probe calibrated dirty", system, onset, cleaned, Entry(onset, ScenarioAct.ProbeFouling, -draw.Between(0.7, 1.4)), Act(onset, TechnicianActKind.LeaveProbe, until: cleaned.AddDays(-1)), Act(first, TechnicianActKind.CalibrateDirty), Act(second, TechnicianActKind.CalibrateDirty), Act(cleaned, TechnicianActKind.CleanProbe)) with
        {
            IsKnowableAt = (course, i) => ProbeShows(course, i) || course.DayOf(i) >= second,
        };
    }

    private static Fault Probe(string name, BankSystem system, DateOnly onset, DateOnly cleaned, ScenarioEntry entry, params TechnicianAct[] acts) => new()
    {
        Name = name,
        Onset = onset,
        Repaired = cleaned,
        FoundBy = [FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.ProbeDrifting],
        Explains = [.. ConductivityKinds, FindingKinds.AlarmStanding, FindingKinds.Depositing, FindingKinds.Scaling, FindingKinds.ResidualHigh, FindingKinds.ResidualLow],
        Forbidden = [.. WaterKinds, FindingKinds.BleedNotFlowing, FindingKinds.MakeUpChanged, FindingKinds.InstrumentShift, FindingKinds.MeterStopped, FindingKinds.SettingsChanged, FindingKinds.PumpOutput],
        Story = [entry, Entry(cleaned.AddDays(1), ScenarioAct.ProbeFouling, 0)],
        Acts = acts,
        IsKnowableAt = ProbeShows,
    };

    private static bool ProbeShows(Runs.Course course, int i) => Math.Abs(course.Truths[i].ProbeFactor - 1) > 3 * Statistics3u.ProbeError;

    private static Fault Offset(BankSystem system, SplitMix draw, DateOnly onset) => new()
    {
        Name = "probe offset",
        Onset = onset,
        Repaired = VisitFrom(system, onset.AddDays(2 * system.EveryDays)),
        FoundBy = [FindingKinds.ProbeReadsOff],
        Explains = [.. ConductivityKinds, FindingKinds.ProbeDrifting, FindingKinds.AlarmStanding, FindingKinds.ResidualHigh, FindingKinds.ResidualLow],
        Forbidden = [.. WaterKinds, FindingKinds.ProbeFouled, FindingKinds.BleedNotFlowing, FindingKinds.MakeUpChanged, FindingKinds.InstrumentShift],
        Story = [Entry(onset, ScenarioAct.ProbeOffset, 1 + (draw.OneOf(-1, 1) * draw.Between(0.08, 0.16)))],
        IsKnowableAt = ProbeShows,
    };

    private static Fault OrpCoats(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var cleaned = RepairOf(system, onset.AddDays(20));
        return new Fault
        {
            Name = "ORP probe coats",
            Onset = onset,
            Repaired = cleaned,
            FoundBy = [FindingKinds.ProbeFouled, FindingKinds.ResidualLow, FindingKinds.BiocideLapse],
            Explains = [FindingKinds.FeedLow, FindingKinds.MicrobiologyHigh, FindingKinds.CyclesDisagree],
            Forbidden = [FindingKinds.PumpOutput, FindingKinds.WrongProduct, FindingKinds.ResidualHigh],
            Story = [Entry(onset, ScenarioAct.OrpCoating, draw.Between(130, 230), until: onset.AddDays(40))],
            Acts = [Act(cleaned, TechnicianActKind.CleanOrp)],
            IsKnowableAt = (course, i) => course.Truths[i].Halogen < 0.15 * (1 - (3 * Statistics3u.Residual)) && course.Twin[i].Halogen > 0.15,
        };
    }

    private static Fault Leak(string name, BankSystem system, DateOnly onset, DateOnly repaired, params ScenarioEntry[] story) => new()
    {
        Name = name,
        Onset = onset,
        Repaired = repaired,
        FoundBy = WaterKinds,
        Explains = [.. ConductivityKinds, FindingKinds.ResidualLow, FindingKinds.FeedHigh, FindingKinds.FeedLow, FindingKinds.RunsOut, FindingKinds.AlarmStanding, FindingKinds.MicrobiologyHigh],
        Forbidden = [FindingKinds.MakeUpChanged, FindingKinds.MeterStopped, FindingKinds.PulsesLost, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.PumpOutput, FindingKinds.WrongProduct, FindingKinds.BleedNotFlowing],
        Story = story,
        Acts = [Act(repaired, TechnicianActKind.StopLeak, text: "leak stopped"), Act(repaired, TechnicianActKind.RenewValve, "purge")],
        IsKnowableAt = (course, i) => LossShows(course, i) || ConductivityFell(course, i),
    };

    /// <summary>Water lost beside the open bleed, beyond a quarter of the normal loss and 3u; only where make-up is metered.</summary>
    private static bool LossShows(Runs.Course course, int i)
    {
        if (!course.System.Habits.MakeUpMeter || i < 1)
        {
            return false;
        }

        var valve = course.System.Model.BleedLPerH;
        double Beside(IReadOnlyList<Runs.Truth> t) => t[i].BledL + t[i].LostL - t[i - 1].BledL - t[i - 1].LostL - (valve * (t[i].HoursRun["purge"] - t[i - 1].HoursRun["purge"]));
        var normal = course.TwinLoss(i - 1, i);
        var share = normal > 0 ? (Beside(course.Truths) - Beside(course.Twin)) / normal : 0;
        return share > Math.Max(0.25, 3 * Statistics3u.Loss);
    }

    private static bool ConductivityFell(Runs.Course course, int i) => course.Truths[i].Conductivity < 0.84 * course.Twin[i].Conductivity;

    private static Fault LeakGrows(BankSystem system, SplitMix draw, DateOnly onset) => Leak(
        "leak grows", system, onset, RepairOf(system, onset.AddDays(75)), Entry(onset, ScenarioAct.Leak, system.LossLPerDay / 24 * draw.Between(0.4, 1.2), until: onset.AddDays(70)));

    private static Fault Overflow(BankSystem system, SplitMix draw, DateOnly onset) => Leak(
        "overflow", system, onset, RepairOf(system, onset), Entry(onset, ScenarioAct.Leak, system.LossLPerDay / 24 * draw.Between(0.5, 2.2)));

    private static Fault Passes(BankSystem system, SplitMix draw, DateOnly onset) => Leak(
        "bleed valve passes", system, onset, RepairOf(system, onset), Entry(onset, ScenarioAct.BleedPasses, Math.Min(system.Model.BleedLPerH, system.LossLPerDay / 24 * draw.Between(0.5, 3))));

    private static Fault Blocked(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var repaired = RepairOf(system, onset);
        return new Fault
        {
            Name = "bleed valve blocked",
            Onset = onset,
            Repaired = repaired,
            FoundBy = [FindingKinds.BleedNotFlowing],
            Explains = [FindingKinds.ConductivityOut, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree, FindingKinds.AlarmStanding, FindingKinds.Depositing, FindingKinds.Scaling, FindingKinds.FeedHigh, FindingKinds.ResidualHigh, FindingKinds.RunsOut],
            Forbidden = [.. WaterKinds, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.MakeUpChanged, FindingKinds.MeterStopped, FindingKinds.PumpOutput],
            Story = [Entry(onset, ScenarioAct.BleedValve, draw.Chance(0.5) ? 0.02 : draw.Between(0.03, 0.12))],
            Acts = [Act(repaired, TechnicianActKind.RenewValve, "purge")],
            IsKnowableAt = (course, i) => course.Truths[i].Conductivity > 1.1 * course.Twin[i].Conductivity,
        };
    }

    private static Fault MakeUpChanges(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var factor = draw.Chance(0.5) ? draw.Between(1.3, 1.7) : draw.Between(0.55, 0.75);
        return new Fault
        {
            Name = "make-up changes",
            Onset = onset,
            FoundBy = [FindingKinds.MakeUpChanged],
            Explains = [FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree, FindingKinds.ConductivityOut, FindingKinds.FeedLow, FindingKinds.FeedHigh, FindingKinds.ResidualLow, FindingKinds.ResidualHigh, FindingKinds.AlarmStanding, FindingKinds.RunsOut, FindingKinds.Scaling],
            Forbidden = [.. WaterKinds, FindingKinds.BleedNotFlowing, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.Depositing, FindingKinds.MeterStopped, FindingKinds.PumpOutput, FindingKinds.InstrumentShift],
            Story = [Entry(onset, ScenarioAct.MakeUpStrength, factor)],
            IsKnowableAt = (course, i) => Math.Abs((course.Truths[i].MakeUpConductivity / course.Twin[i].MakeUpConductivity) - 1) > Math.Max(0.15, 3 * Statistics3u.MakeUp),
        };
    }

    private static Fault SoftenerFails(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var repaired = RepairOf(system, onset);
        var raw = system.RawCalcium * draw.Between(0.4, 1);
        return new Fault
        {
            Name = "softener fails",
            Onset = onset,
            Repaired = repaired,
            FoundBy = [FindingKinds.MakeUpChanged],
            Explains = [FindingKinds.Depositing, FindingKinds.Scaling, FindingKinds.CyclesDisagree],
            Forbidden = [.. WaterKinds, FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff],
            Story = [Entry(onset, ScenarioAct.MakeUpCalcium, raw), Entry(repaired, ScenarioAct.MakeUpCalcium, system.Model.MakeUp.CalciumMgPerLAsCaCO3!.Value)],
            IsKnowableAt = (course, i) => course.Truths[i].MakeUpCalcium - course.Twin[i].MakeUpCalcium > 15,
        };
    }

    private static Fault Deposits(BankSystem system, SplitMix draw, DateOnly onset) => new()
    {
        Name = "scale deposits",
        Onset = onset,
        FoundBy = [FindingKinds.Depositing],
        Explains = [FindingKinds.Scaling, FindingKinds.CyclesDisagree, FindingKinds.RangeOut],
        Forbidden = [.. WaterKinds, FindingKinds.MakeUpChanged, FindingKinds.CyclesLow, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff],
        Story = [Entry(onset, ScenarioAct.DepositAbove, draw.Between(0.3, 0.55) * system.Programme.TargetCycles!.Value * system.RawCalcium)],
        IsKnowableAt = (course, i) => course.System.Habits.Calcium
            && 1 - (course.Truths[i].Calcium / course.Truths[i].CalciumKept) > Math.Max(0.2, 3 * Statistics3u.CalciumRatio),
    };
}
