using LogBook.Bank.Firms;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Faults;

/// <summary>Every fault of the bank. What counts as found, as a consequence and as wrong follows the findings' contract ("false alarm to avoid", "one cause, one headline") and the stories of trade guide 6.3.</summary>
internal static partial class FaultCatalogue
{
    private static readonly string[] WaterKinds = [FindingKinds.WaterLoss, FindingKinds.BleedNotClosing];
    private static readonly string[] ConductivityKinds = [FindingKinds.ConductivityOut, FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree];

    public static IReadOnlyList<FaultSpec> All { get; } =
    [
        .. ProbeAndWater,
        .. MetersAndPumps,
        .. ControllerAndDoses,
        .. PeopleAndClocks,
        .. ChemistryAndHands,
    ];

    /// <summary>Kinds of the format that name the cause of no fault here, and why.</summary>
    public static IReadOnlyDictionary<string, string> NotPlanted { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [FindingKinds.ConductivityOut] = Consequence,
        [FindingKinds.CyclesLow] = Consequence,
        [FindingKinds.CyclesHigh] = Consequence,
        [FindingKinds.CyclesDisagree] = Consequence,
        [FindingKinds.FeedLow] = Consequence,
        [FindingKinds.FeedHigh] = Consequence,
        [FindingKinds.ResidualHigh] = Consequence,
        [FindingKinds.Scaling] = "by the contract \"watch\" until the water itself lags, which is the fault of scale that deposits",
        [FindingKinds.AlarmStanding] = "repeats what the controller shows; its causes are planted",
        [FindingKinds.SummaryUndelivered] = "known to the outgoing mail alone: no plant and no record of a visit holds it",
    };

    private const string Consequence = "no cause of its own: planted causes lead to it, and the noise-free plant tells whether it was true";

    /// <summary>First planned visit on or after a day; the day itself when there is none.</summary>
    private static DateOnly VisitFrom(BankSystem system, DateOnly day) => system.Days.FirstOrDefault(d => d >= day) is var found && found != default ? found : day;

    /// <summary>Day of repair: after six visits and at least 75 days.</summary>
    private static DateOnly RepairOf(BankSystem system, DateOnly onset) => VisitFrom(system, onset.AddDays(Math.Max(75, 6 * system.EveryDays)));

    private static ScenarioEntry Entry(DateOnly on, ScenarioAct act, double value, string? part = null, DateOnly? until = null) =>
        new() { On = on.ToDateTime(new TimeOnly(3, 0)), Act = act, Value = value, Part = part, Until = until?.ToDateTime(new TimeOnly(3, 0)) };

    private static TechnicianAct Act(DateOnly on, TechnicianActKind kind, string? part = null, double value = 0, string? text = null, DateOnly? until = null) =>
        new() { On = on, Act = kind, Part = part, Value = value, Text = text, Until = until };

    /// <summary>Whether a visit is the first after a day (which itself does not count).</summary>
    private static bool IsAfter(Runs.Course course, int i, DateOnly onset) => course.DayOf(i) > onset;

    private static Visit With(Visit visit, Func<VisitedSystem, VisitedSystem> change) => visit with { Systems = [change(visit.Systems[0])] };

    private static Programme Nudged(BankSystem system, SplitMix draw, out bool touchesWater)
    {
        var programme = system.Programme;
        var up = draw.Chance(0.5) ? 1 : -1;
        touchesWater = draw.Chance(0.6);
        if (touchesWater)
        {
            return programme with { SetPointUsPerCm = Math.Round(programme.SetPointUsPerCm!.Value * (1 + (up * draw.Between(0.06, 0.16)))) };
        }

        var feed = programme.Feeds[0];
        var factor = 1 + (up * draw.Between(0.2, 0.5));
        var changed = feed.Mode switch
        {
            FeedMode.ByMakeUpVolume => feed with { RunSeconds = Math.Round(feed.RunSeconds!.Value * factor, 1) },
            FeedMode.AlongsideBleed => feed with { LongestFeedMin = Math.Round(feed.LongestFeedMin!.Value * factor) },
            _ => feed with { SharePercent = Math.Round(feed.SharePercent!.Value * factor, 1) },
        };
        return programme with { Feeds = [changed, .. programme.Feeds.Skip(1)] };
    }

    private static Programme Defaults(Programme programme) => programme with
    {
        SetPointUsPerCm = 1500 > 1.1 * programme.SetPointUsPerCm || 1500 < 0.9 * programme.SetPointUsPerCm ? 1500 : 1000,
        DifferentialUsPerCm = 50,
        HighAlarmUsPerCm = 3000,
        LowAlarmUsPerCm = 100,
        LongestBleedMin = 0,
        Feeds =
        [
            .. programme.Feeds.Select(feed => feed.Mode == FeedMode.DosePlan
                ? feed with { Weeks = [], Days = [], Starts = [], RunMinutes = null, HoldBleedShutMin = null, BleedDownFirst = null }
                : feed.Output == "out-1" ? feed with { Mode = FeedMode.FixedShare, CycleMin = 60, SharePercent = 5, EveryL = null, RunSeconds = null, LongestFeedMin = null } : feed),
        ],
    };
}
