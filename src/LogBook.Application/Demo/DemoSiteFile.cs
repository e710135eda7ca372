using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;

namespace LogBook.Application.Demo;

/// <summary>A site with its plant and its story, as a file of db/demo/sites tells it.</summary>
internal sealed record DemoSiteFile
{
    public required string Code { get; init; }

    public required string Name { get; init; }

    public required Customer Customer { get; init; }

    public required UnitSystem Units { get; init; }

    /// <summary>Technician of the round.</summary>
    public required string Technician { get; init; }

    /// <summary>Who signs for the customer.</summary>
    public required string Signs { get; init; }

    public required VisitPlan Visits { get; init; }

    public Operation? Operation { get; init; }

    public required PlantLines Plant { get; init; }

    public required InhibitorLines Inhibitor { get; init; }

    public required DoseLines Biocide { get; init; }

    public HalogenLines? Halogen { get; init; }

    public AcidLines? Acid { get; init; }

    /// <summary>A second biocide that site staff pour in by hand.</summary>
    public PouredLines? Poured { get; init; }

    public IReadOnlyList<ProgrammeChange> Programmes { get; init; } = [];

    public IReadOnlyList<ScenarioEntry> Story { get; init; } = [];

    public IReadOnlyList<TechnicianAct> Acts { get; init; } = [];

    public IReadOnlyList<RecordOnlySystem> RecordOnly { get; init; } = [];

    public IReadOnlyList<AnswerLine> Answers { get; init; } = [];

    internal sealed record VisitPlan
    {
        public required DateOnly First { get; init; }

        public required double EveryDays { get; init; }

        /// <summary>Local wall time of arrival, HH:MM.</summary>
        public required string At { get; init; }

        /// <summary>Fixed weekdays instead of a fixed interval.</summary>
        public IReadOnlyList<Weekday> Days { get; init; } = [];
    }

    internal sealed record PlantLines
    {
        public required double VolumeM3 { get; init; }

        public required double HeatKw { get; init; }

        public required double BleedM3PerH { get; init; }

        public required double Cycles { get; init; }

        /// <summary>Unscaled: cycles x make-up conductivity.</summary>
        public required double SetPointUsPerCm { get; init; }

        public required MakeUpWater MakeUp { get; init; }

        public IReadOnlyList<Metal> Metals { get; init; } = [];

        /// <summary>Load factor of each month, January first.</summary>
        public required IReadOnlyList<double> Months { get; init; }

        /// <summary>Load factor of each hour of the day, mean 1 over 24 h; the usual profile when absent.</summary>
        public IReadOnlyList<double>? Hours { get; init; }

        public bool LeakOnlyWhileRunning { get; init; }

        public double? DepositAboveCalcium { get; init; }

        public double DepositPerHour { get; init; } = 0.03;

        public RenewedMeter? MeterRenewed { get; init; }
    }

    internal sealed record RenewedMeter
    {
        public required DateOnly From { get; init; }

        public required int Digits { get; init; }

        public required double DialMultiplier { get; init; }
    }

    internal sealed record InhibitorLines
    {
        public required string Product { get; init; }

        public required double MgPerL { get; init; }

        public required FeedMode Mode { get; init; }

        public double? EveryL { get; init; }

        public double? RunSeconds { get; init; }

        public double? CycleMin { get; init; }

        public double? SharePercent { get; init; }

        public double? LongestFeedMin { get; init; }

        public required double PumpLPerH { get; init; }

        public required double DrumL { get; init; }
    }

    internal sealed record DoseLines
    {
        public required string Product { get; init; }

        public required double MgPerL { get; init; }

        public required double RunMinutes { get; init; }

        public required double PumpLPerH { get; init; }

        public required double DrumL { get; init; }

        /// <summary>Weeks of the plan, 1 to 4; all when empty.</summary>
        public IReadOnlyList<int> Weeks { get; init; } = [];

        public required IReadOnlyList<Weekday> Days { get; init; }

        public required IReadOnlyList<string> Starts { get; init; }

        public required double HoldBleedShutMin { get; init; }

        /// <summary>Rise during the hold, unscaled; only the longest bleed allowed is worked out from it.</summary>
        public required double HoldRiseUsPerCm { get; init; }
    }

    internal sealed record PouredLines
    {
        public required string Product { get; init; }

        public required double MgPerL { get; init; }

        /// <summary>Litres each time.</summary>
        public required double Litres { get; init; }

        /// <summary>First pouring, local wall time; then every four weeks.</summary>
        public required DateTime First { get; init; }
    }

    /// <summary>The oxidant: by ORP, by dose plan, or from a feeder of solid product.</summary>
    internal sealed record HalogenLines
    {
        public required string Product { get; init; }

        public FeedMode Mode { get; init; } = FeedMode.ByOrp;

        public double? SetPointMv { get; init; }

        public double? DifferentialMv { get; init; }

        public double? PumpLPerH { get; init; }

        public required double DrumL { get; init; }

        public double? TargetMgPerL { get; init; }

        public double? RunMinutes { get; init; }

        public IReadOnlyList<Weekday> Days { get; init; } = [];

        public IReadOnlyList<string> Starts { get; init; } = [];

        /// <summary>What the feeder gives off.</summary>
        public double KgPerDay { get; init; }
    }

    internal sealed record AcidLines
    {
        public required string Product { get; init; }

        public required double SetPointPh { get; init; }

        public required double DifferentialPh { get; init; }

        public required double PumpLPerH { get; init; }

        public required double DrumL { get; init; }
    }

    /// <summary>A later programme that differs from the first in its inhibitor feed.</summary>
    internal sealed record ProgrammeChange
    {
        public required DateOnly From { get; init; }

        public string? Why { get; init; }

        public required ChangedFeed Inhibitor { get; init; }
    }

    internal sealed record ChangedFeed
    {
        public required FeedMode Mode { get; init; }

        public double? EveryL { get; init; }

        public double? RunSeconds { get; init; }

        public double? CycleMin { get; init; }

        public double? SharePercent { get; init; }
    }

    /// <summary>A system that is only tested, with the results it gives.</summary>
    internal sealed record RecordOnlySystem
    {
        public required WaterSystem System { get; init; }

        public required double EveryDays { get; init; }

        public required IReadOnlyList<UsualResult> Readings { get; init; }
    }

    internal sealed record UsualResult
    {
        public required string At { get; init; }

        public required string Test { get; init; }

        public required double Mean { get; init; }

        public required double Deviation { get; init; }

        public required double Step { get; init; }

        public required string Unit { get; init; }
    }
}
