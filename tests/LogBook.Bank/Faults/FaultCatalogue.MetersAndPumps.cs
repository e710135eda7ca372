using LogBook.Bank.Firms;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;

namespace LogBook.Bank.Faults;

/// <content>Registers, pumps, drums, products.</content>
internal static partial class FaultCatalogue
{
    private static readonly string[] Underfed = [FindingKinds.FeedLow, FindingKinds.ResidualLow];

    private static IEnumerable<FaultSpec> MetersAndPumps =>
    [
        new("meter stuck", new Traits { MakeUpMeter = true }, MeterStuck),
        new("pulses lost", new Traits { MakeUpMeter = true, Pulses = true }, PulsesLost),
        new("register exchanged untold", new Traits { MakeUpMeter = true }, RegisterFell),
        new("pump wears", new Traits { Gauges = true, RoundTheClock = true }, PumpWears),
        new("pump air-locked", new Traits { Gauges = true, RoundTheClock = true }, AirLock),
        new("biocide pump air-locked", new Traits { Gauges = true, RoundTheClock = true }, BiocideAirLock),
        new("left forced on, then empty", new Traits { Gauges = true }, ForcedOn),
        new("forced off", new Traits(), ForcedOff),
        new("wrong product", new Traits(), WrongProduct),
        new("biocide drum runs empty", new Traits { Gauges = true }, BiocideEmpty),
        new("drum loses product", new Traits { Gauges = true }, Spill),
    ];

    private static Fault MeterStuck(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var repaired = RepairOf(system, onset);
        return new Fault
        {
            Name = "meter stuck",
            Onset = onset,
            Repaired = repaired,
            FoundBy = [FindingKinds.MeterStopped],
            Explains = [.. Underfed, FindingKinds.PulsesLost, FindingKinds.FeedHigh],
            Forbidden = [.. WaterKinds, FindingKinds.WrongProduct, FindingKinds.PumpOutput, FindingKinds.ProbeFouled, FindingKinds.CyclesLow, FindingKinds.BleedNotFlowing],
            Story = [Entry(onset, ScenarioAct.Dial, 0), Entry(onset, ScenarioAct.Pulses, 0)],
            Acts = [Act(repaired, TechnicianActKind.RenewMeter, "W1", Math.Round(draw.Between(0, 40)))],
            IsKnowableAt = (course, i) => course.Twin[i].DialL > course.Twin[i - 1].DialL + 500
                && course.Truths[i].DialL - course.Truths[i - 1].DialL < 0.04 * (course.Twin[i].DialL - course.Twin[i - 1].DialL),
        };
    }

    private static Fault PulsesLost(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var share = draw.Chance(0.4) ? 0 : draw.Between(0.1, 0.93);
        var repaired = RepairOf(system, onset);
        return new Fault
        {
            Name = "pulses lost",
            Onset = onset,
            Repaired = repaired,
            FoundBy = [FindingKinds.PulsesLost],
            Explains = [.. Underfed, FindingKinds.MeterStopped, FindingKinds.FeedHigh],
            Forbidden = [.. WaterKinds, FindingKinds.WrongProduct, FindingKinds.PumpOutput, FindingKinds.ProbeFouled, FindingKinds.CyclesLow],
            Story = [Entry(onset, ScenarioAct.Pulses, share), Entry(repaired, ScenarioAct.Pulses, 1)],
            IsKnowableAt = (course, i) =>
            {
                var (dial, total) = (course.Truths[i].DialL - course.Truths[i - 1].DialL, course.Truths[i].CountedL - course.Truths[i - 1].CountedL);
                var pulse = course.System.Full.Meters[0].LitresPerPulse!.Value;
                return dial > 55 * pulse && dial - total > Math.Max(0.035 * dial, 3 * pulse);
            },
        };
    }

    private static Fault RegisterFell(BankSystem system, SplitMix draw, DateOnly onset)
    {
        double? offset = null;
        var start = Math.Round(draw.Between(5, 60));
        return new Fault
        {
            Name = "register exchanged untold",
            Onset = onset,
            FoundBy = [FindingKinds.MeterBackwards],
            Explains = [FindingKinds.PulsesLost],
            Forbidden = [.. WaterKinds, FindingKinds.MeterStopped],
            Paper = (visit, day) => day < onset ? visit : With(visit, record => record with
            {
                Meters = [.. record.Meters.Select(m => m with { Dial = start + m.Dial - (offset ??= m.Dial) })],
            }),
            IsKnowableAt = (_, _) => true,
        };
    }

    private static Fault PumpWears(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var repaired = RepairOf(system, onset.AddDays(100));
        return Pump("pump wears", system, onset, repaired, "T-1", "out-1", FindingKinds.PumpOutput, Entry(onset, ScenarioAct.PumpOutput, draw.Between(0.25, 0.55), "out-1", onset.AddDays(100)));
    }

    private static Fault AirLock(BankSystem system, SplitMix draw, DateOnly onset) => Pump(
        "pump air-locked", system, onset, RepairOf(system, onset), "T-1", "out-1", FindingKinds.PumpOutput, Entry(onset, ScenarioAct.PumpOutput, 0, "out-1"));

    private static Fault BiocideAirLock(BankSystem system, SplitMix draw, DateOnly onset) => Pump(
        "biocide pump air-locked", system, onset, RepairOf(system, onset), "T-2", "out-2", FindingKinds.DoseMissed, Entry(onset, ScenarioAct.PumpOutput, 0, "out-2")) with
    {
        FoundBy = [FindingKinds.PumpOutput, FindingKinds.DoseMissed, FindingKinds.BiocideLapse],
        Explains = [FindingKinds.FeedLow, FindingKinds.MicrobiologyHigh],
    };

    private static Fault Pump(string name, BankSystem system, DateOnly onset, DateOnly repaired, string drum, string output, string _, ScenarioEntry entry) => new()
    {
        Name = name,
        Onset = onset,
        Repaired = repaired,
        FoundBy = [FindingKinds.PumpOutput],
        Explains = Underfed,
        Forbidden = [.. WaterKinds, FindingKinds.SettingsChanged, FindingKinds.WrongProduct, FindingKinds.MeterStopped, FindingKinds.PulsesLost, FindingKinds.StockUnexplained],
        Story = [entry],
        Acts = [Act(repaired, TechnicianActKind.RenewPump, output)],
        IsKnowableAt = (course, i) => Statistics3u.StockShows(
            course, drum, i, onset, (from, to) => (course.Truths[to].HoursRun[output] - course.Truths[from].HoursRun[output]) * system.Full.Pumps.First(p => p.Output == output).RatedLPerH!.Value, 0.25),
    };

    private static Fault ForcedOn(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var left = VisitFrom(system, onset);
        var found = VisitFrom(system, left.AddDays(1));
        return new Fault
        {
            Name = "left forced on, then empty",
            Onset = left,
            Repaired = found.AddDays(1),
            FoundBy = [FindingKinds.OverfedThenEmpty, FindingKinds.SwitchNotAutomatic],
            Explains = [FindingKinds.FeedHigh, FindingKinds.ResidualHigh, FindingKinds.ResidualLow, FindingKinds.RunsOut, FindingKinds.ConductivityOut, FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree, FindingKinds.LabelExceeded, FindingKinds.AlarmStanding],
            Forbidden = [FindingKinds.FeedLow, FindingKinds.WrongProduct, FindingKinds.MakeUpChanged, .. WaterKinds],
            Acts = [Act(left, TechnicianActKind.LeaveForcedOn, "out-1")],
            IsKnowableAt = (course, i) => IsAfter(course, i, left),
        };
    }

    private static Fault ForcedOff(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var output = draw.OneOf("purge", "out-1", "out-2");
        return new Fault
        {
            Name = "forced off",
            Onset = onset,
            Repaired = VisitFrom(system, onset.AddDays(1)).AddDays(1),
            FoundBy = [FindingKinds.SwitchNotAutomatic],
            Explains = [.. Underfed, FindingKinds.DoseMissed, FindingKinds.BiocideLapse, FindingKinds.MicrobiologyHigh, FindingKinds.ConductivityOut, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree, FindingKinds.AlarmStanding, FindingKinds.BleedNotFlowing, FindingKinds.ResidualHigh, FindingKinds.Scaling, FindingKinds.Depositing],
            Forbidden = [FindingKinds.PumpOutput, FindingKinds.WrongProduct, FindingKinds.MakeUpChanged, FindingKinds.MeterStopped, .. WaterKinds],
            Story = [Entry(onset, ScenarioAct.ForceOff, 0, output)],
            IsKnowableAt = (course, i) => IsAfter(course, i, onset),
        };
    }

    private static Fault WrongProduct(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var swapped = VisitFrom(system, onset);
        var corrected = VisitFrom(system, swapped.AddDays(Math.Max(45, 4 * system.EveryDays)));
        var drum = system.Full.Drums[0];
        return new Fault
        {
            Name = "wrong product",
            Onset = swapped,
            Repaired = corrected.AddDays(1),
            FoundBy = [FindingKinds.WrongProduct],
            Explains = [FindingKinds.ResidualLow, FindingKinds.LabelExceeded, FindingKinds.MixingHazard, FindingKinds.MicrobiologyHigh, FindingKinds.StockUnexplained, FindingKinds.DosePlanClash],
            Forbidden = [FindingKinds.PumpOutput, FindingKinds.FeedLow, FindingKinds.MeterStopped, FindingKinds.PulsesLost, .. WaterKinds],
            Acts =
            [
                Act(swapped, TechnicianActKind.SwapDrum, "T-1", 0.85 * drum.CapacityL!.Value, system.Full.Drums[1].Product),
                Act(corrected, TechnicianActKind.CorrectDrum, "T-1"),
            ],
            IsKnowableAt = (course, i) => course.DayOf(i) > swapped && course.Truths[i].Inhibitor < 0.25 * course.Twin[i].Inhibitor
                && (course.DayOf(i).DayNumber - swapped.DayNumber) * 24 > 3 * course.System.HalfLifeHours,
        };
    }

    private static Fault BiocideEmpty(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var filled = VisitFrom(system, onset.AddDays(Math.Max(150, 6 * system.EveryDays)));
        var drum = system.Full.Drums[1];
        return new Fault
        {
            Name = "biocide drum runs empty",
            Onset = onset,
            Repaired = filled,
            FoundBy = [FindingKinds.RunsOut, FindingKinds.BiocideLapse, FindingKinds.DoseMissed],
            Explains = [FindingKinds.MicrobiologyHigh, FindingKinds.PumpOutput, FindingKinds.FeedLow],
            Forbidden = [FindingKinds.WrongProduct, FindingKinds.StockUnexplained, FindingKinds.ControllerClock, .. WaterKinds],
            Acts = [Act(onset, TechnicianActKind.LeaveDrum, drum.Code, until: filled.AddDays(-1))],
            IsKnowableAt = (course, i) => course.Truths[i].DrumL[drum.Code] - drum.UnusableL!.Value < 1.05 * system.EveryDays * system.DesignLPerDay[drum.Code],
        };
    }

    private static Fault Spill(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var drum = system.Full.Drums[draw.NextBelow(2)];
        var day = VisitFrom(system, onset);
        var litres = draw.Between(0.15, 0.4) * drum.CapacityL!.Value;
        var done = false;
        var taken = 0.0;
        return new Fault
        {
            Name = "drum loses product",
            Onset = day.AddDays(-1),
            Repaired = day.AddDays(2),
            FoundBy = [FindingKinds.StockUnexplained],
            Explains = [FindingKinds.FeedHigh, FindingKinds.RunsOut, FindingKinds.PumpOutput],
            Forbidden = [FindingKinds.WrongProduct, FindingKinds.ControllerClock, FindingKinds.FeedLow, .. WaterKinds],
            BeforeVisit = (plant, today) =>
            {
                if (today >= day && !done)
                {
                    done = true;
                    var before = plant.DrumL(drum.Code);
                    plant.AddToDrum(drum.Code, -litres);
                    taken = before - plant.DrumL(drum.Code);
                }
            },
            IsKnowableAt = (course, i) => course.DayOf(i) >= day && taken > 3 * 1.414 * Statistics3u.Level * drum.CapacityL!.Value,
        };
    }
}
