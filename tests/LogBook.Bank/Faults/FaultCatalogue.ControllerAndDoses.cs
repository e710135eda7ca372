using LogBook.Bank.Firms;
using LogBook.Domain.Findings;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;

namespace LogBook.Bank.Faults;

/// <content>Controller settings, clock, dose plan, labels.</content>
internal static partial class FaultCatalogue
{
    private static IEnumerable<FaultSpec> ControllerAndDoses =>
    [
        new("settings reset", new Traits { LongestInterval = 21 }, Reset),
        new("settings nudged", new Traits(), Nudge),
        new("controller clock slips", new Traits(), ClockSlips),
        new("doses at idle hours", new Traits { NightOff = true }, IdleDoses),
        new("dose plan clash", new Traits { DosesClash = true }, (system, _, _) => Planned(system, "dose plan clash", FindingKinds.DosePlanClash, [])),
        new("hold too long", new Traits { HoldTooLong = true }, (system, _, _) => Planned(system, "hold too long", FindingKinds.HoldTooLong, [FindingKinds.ConductivityOut, FindingKinds.CyclesHigh, FindingKinds.AlarmStanding])),
        new("label exceeded", new Traits { OverLabel = true }, (system, _, _) => Planned(system, "label exceeded", FindingKinds.LabelExceeded, [FindingKinds.DosePlanClash])),
    ];

    private static Fault Reset(BankSystem system, SplitMix draw, DateOnly onset) => Controller(
        "settings reset",
        system,
        onset,
        [FindingKinds.SettingsLost],
        [FindingKinds.SettingsChanged, .. ConductivityKinds, .. Underfed, FindingKinds.FeedHigh, FindingKinds.ResidualHigh, FindingKinds.DoseMissed, FindingKinds.BiocideLapse, FindingKinds.MicrobiologyHigh, FindingKinds.AlarmStanding, FindingKinds.RunsOut, FindingKinds.Scaling],
        [FindingKinds.MakeUpChanged, .. WaterKinds, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.PumpOutput, FindingKinds.WrongProduct],
        new ScenarioEntry { On = onset.ToDateTime(new TimeOnly(3, 0)), Act = ScenarioAct.SettingsReset, Settings = Defaults(system.Programme) });

    private static Fault Nudge(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var settings = Nudged(system, draw, out var water);
        return Controller(
            "settings nudged",
            system,
            onset,
            [FindingKinds.SettingsChanged],
            water ? [.. ConductivityKinds, FindingKinds.ResidualLow, FindingKinds.ResidualHigh, FindingKinds.AlarmStanding] : [.. Underfed, FindingKinds.FeedHigh, FindingKinds.ResidualHigh],
            [FindingKinds.SettingsLost, .. WaterKinds, FindingKinds.MakeUpChanged, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.PumpOutput, FindingKinds.WrongProduct],
            new ScenarioEntry { On = onset.ToDateTime(new TimeOnly(3, 0)), Act = ScenarioAct.SettingsReset, Settings = settings });
    }

    private static Fault ClockSlips(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var minutes = draw.Chance(0.3) ? 0 : draw.OneOf(-1, 1) * Math.Round(draw.Between(95, 900));
        var week = minutes == 0 || draw.Chance(0.3);
        return Controller(
            "controller clock slips",
            system,
            onset,
            [FindingKinds.ControllerClock],
            [FindingKinds.DoseMissed, FindingKinds.DoseUntreated, FindingKinds.DosePlanClash, FindingKinds.ConductivityOut],
            [FindingKinds.SettingsLost, FindingKinds.PumpOutput, .. WaterKinds],
            week ? [Entry(onset, ScenarioAct.WeekOff, 1), .. minutes == 0 ? Array.Empty<ScenarioEntry>() : [Entry(onset, ScenarioAct.ClockOff, minutes)]] : [Entry(onset, ScenarioAct.ClockOff, minutes)]);
    }

    private static Fault IdleDoses(BankSystem system, SplitMix draw, DateOnly onset) => Controller(
        "doses at idle hours",
        system,
        onset,
        [FindingKinds.DoseUntreated, FindingKinds.ControllerClock],
        [FindingKinds.DoseMissed, FindingKinds.BiocideLapse, FindingKinds.MicrobiologyHigh, FindingKinds.DosePlanClash],
        [FindingKinds.SettingsLost, FindingKinds.PumpOutput, FindingKinds.WrongProduct, .. WaterKinds],
        Entry(onset, ScenarioAct.ClockOff, -660),
        Entry(onset, ScenarioAct.FlowBridged, 1));

    /// <summary>What the person in the room reads at the next visit and puts right there.</summary>
    private static Fault Controller(string name, BankSystem system, DateOnly onset, string[] foundBy, string[] explains, string[] forbidden, params ScenarioEntry[] story) => new()
    {
        Name = name,
        Onset = onset,
        Repaired = VisitFrom(system, onset.AddDays(1)).AddDays(1),
        FoundBy = foundBy,
        Explains = explains,
        Forbidden = forbidden,
        Story = story,
        IsKnowableAt = (course, i) => IsAfter(course, i, onset),
    };

    /// <summary>A mistake in the programme itself: there from the first day.</summary>
    private static Fault Planned(BankSystem system, string name, string kind, string[] explains) => new()
    {
        Name = name,
        Onset = system.Days[0].AddDays(-1),
        FoundBy = [kind],
        Explains = explains,
        Forbidden = [FindingKinds.SettingsLost, FindingKinds.SettingsChanged, FindingKinds.PumpOutput, FindingKinds.ControllerClock, .. WaterKinds],
        KnowableOn = course => course.DayOf(Math.Min(1, course.Count - 1)),
    };
}
