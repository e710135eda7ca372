namespace LogBook.Domain.Findings;

/// <summary>Codes of the kinds of finding; the list is part of the exchange format.</summary>
public static class FindingKinds
{
    /// <summary>As-found probe differs from the reference beyond tolerance and uncertainty.</summary>
    public const string ProbeReadsOff = "probe-reads-off";

    /// <summary>Drift will pass the tolerance before the next visit.</summary>
    public const string ProbeDrifting = "probe-drifting";

    /// <summary>Error mostly vanishes after cleaning, or was calibrated away while dirty.</summary>
    public const string ProbeFouled = "probe-fouled";

    /// <summary>True conductivity outside its range.</summary>
    public const string ConductivityOut = "conductivity-out";

    /// <summary>Cycles below the target's band by the best agreeing routes.</summary>
    public const string CyclesLow = "cycles-low";

    /// <summary>Cycles above the target's band by the best agreeing routes.</summary>
    public const string CyclesHigh = "cycles-high";

    /// <summary>Routes to cycles differ beyond their uncertainty.</summary>
    public const string CyclesDisagree = "cycles-disagree";

    /// <summary>Calcium, alkalinity or silica lags the conservative ion.</summary>
    public const string Depositing = "depositing";

    /// <summary>Liquid leaves by another way than the bleed.</summary>
    public const string WaterLoss = "water-loss";

    /// <summary>Bleed hours and balance disagree with the valve: nothing flows.</summary>
    public const string BleedNotFlowing = "bleed-not-flowing";

    /// <summary>Bleed hours and balance disagree with the valve: it passes while shut.</summary>
    public const string BleedNotClosing = "bleed-not-closing";

    /// <summary>Register frozen.</summary>
    public const string MeterStopped = "meter-stopped";

    /// <summary>Dial and total part.</summary>
    public const string PulsesLost = "pulses-lost";

    /// <summary>Count fell with no rollover, reset or replacement.</summary>
    public const string MeterBackwards = "meter-backwards";

    /// <summary>Less product used than expected for the water actually used.</summary>
    public const string FeedLow = "feed-low";

    /// <summary>More product used than expected for the water actually used.</summary>
    public const string FeedHigh = "feed-high";

    /// <summary>Hours, drum and residual tell an overfeed followed by an empty drum.</summary>
    public const string OverfedThenEmpty = "overfed-then-empty";

    /// <summary>Drum drop per hour run differs from rating or drawdown.</summary>
    public const string PumpOutput = "pump-output";

    /// <summary>Residual below its range.</summary>
    public const string ResidualLow = "residual-low";

    /// <summary>Residual above its range.</summary>
    public const string ResidualHigh = "residual-high";

    /// <summary>Product found, lot or residual contradicts the drum's product.</summary>
    public const string WrongProduct = "wrong-product";

    /// <summary>Drum empties before the next visit.</summary>
    public const string RunsOut = "runs-out";

    /// <summary>Level rose without a delivery, or fell without hours.</summary>
    public const string StockUnexplained = "stock-unexplained";

    /// <summary>Calendar dose did not run.</summary>
    public const string DoseMissed = "dose-missed";

    /// <summary>Doses or holds collide.</summary>
    public const string DosePlanClash = "dose-plan-clash";

    /// <summary>Dose ran without flow or at the wrong hour.</summary>
    public const string DoseUntreated = "dose-untreated";

    /// <summary>Bleed held shut long enough to pass the high alarm.</summary>
    public const string HoldTooLong = "hold-too-long";

    /// <summary>Result in an action band of the rule in force, or outside its range.</summary>
    public const string MicrobiologyHigh = "microbiology-high";

    /// <summary>A visit, rule, contract or task interval is overdue.</summary>
    public const string ClockDue = "clock-due";

    /// <summary>Make-up chemistry shifted.</summary>
    public const string MakeUpChanged = "make-up-changed";

    /// <summary>Scaling index outside its band.</summary>
    public const string Scaling = "scaling";

    /// <summary>Index or coupon outside its band.</summary>
    public const string Corrosive = "corrosive";

    /// <summary>An output left forced on or off.</summary>
    public const string SwitchNotAutomatic = "switch-not-automatic";

    /// <summary>As found differs from last as left.</summary>
    public const string SettingsChanged = "settings-changed";

    /// <summary>Many settings changed at once, towards defaults.</summary>
    public const string SettingsLost = "settings-lost";

    /// <summary>Controller clock or programme week wrong.</summary>
    public const string ControllerClock = "controller-clock";

    /// <summary>Alarm present at the visit.</summary>
    public const string AlarmStanding = "alarm-standing";

    /// <summary>One hand meter shows the same offset on several sites.</summary>
    public const string InstrumentShift = "instrument-shift";

    /// <summary>One reagent lot shows the same offset on several sites.</summary>
    public const string LotShift = "lot-shift";

    /// <summary>Readings that look copied or impossible; supervisor only.</summary>
    public const string SecondLook = "second-look";

    /// <summary>Out by ten, wrong unit or impossible rate, asked again at entry.</summary>
    public const string ValueSuspect = "value-suspect";

    /// <summary>Visit summary bounced or not accepted in time.</summary>
    public const string SummaryUndelivered = "summary-undelivered";

    /// <summary>Any other ranged test outside its range.</summary>
    public const string RangeOut = "range-out";

    /// <summary>In use without any working biocide.</summary>
    public const string BiocideLapse = "biocide-lapse";

    /// <summary>Running again after a stop without record of disinfection or sample.</summary>
    public const string RestartUnproved = "restart-unproved";

    /// <summary>Dose, weekly total or gap beyond the product's label.</summary>
    public const string LabelExceeded = "label-exceeded";

    /// <summary>Products that must never meet stand or feed where they can.</summary>
    public const string MixingHazard = "mixing-hazard";

    /// <summary>A programme test or the reference missed repeatedly, or hand meter unproved.</summary>
    public const string NotMeasured = "not-measured";

    /// <summary>The same observation again with no action closed.</summary>
    public const string SeenAgain = "seen-again";

    /// <summary>All kinds, in the order of the exchange format.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        ProbeReadsOff,
        ProbeDrifting,
        ProbeFouled,
        ConductivityOut,
        CyclesLow,
        CyclesHigh,
        CyclesDisagree,
        Depositing,
        WaterLoss,
        BleedNotFlowing,
        BleedNotClosing,
        MeterStopped,
        PulsesLost,
        MeterBackwards,
        FeedLow,
        FeedHigh,
        OverfedThenEmpty,
        PumpOutput,
        ResidualLow,
        ResidualHigh,
        WrongProduct,
        RunsOut,
        StockUnexplained,
        DoseMissed,
        DosePlanClash,
        DoseUntreated,
        HoldTooLong,
        MicrobiologyHigh,
        ClockDue,
        MakeUpChanged,
        Scaling,
        Corrosive,
        SwitchNotAutomatic,
        SettingsChanged,
        SettingsLost,
        ControllerClock,
        AlarmStanding,
        InstrumentShift,
        LotShift,
        SecondLook,
        ValueSuspect,
        SummaryUndelivered,
        RangeOut,
        BiocideLapse,
        RestartUnproved,
        LabelExceeded,
        MixingHazard,
        NotMeasured,
        SeenAgain,
    ];
}
