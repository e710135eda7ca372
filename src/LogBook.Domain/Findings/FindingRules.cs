namespace LogBook.Domain.Findings;

/// <summary>The rules, in the order of the exchange format.</summary>
public static class FindingRules
{
    /// <summary>Rules for open recirculating systems.</summary>
    public static IReadOnlyList<IFindingRule> All { get; } =
    [
        new ProbeReadsOff(),
        new ProbeDrifting(),
        new ProbeFouled(),
        new ConductivityOut(),
        new CyclesLow(),
        new CyclesHigh(),
        new CyclesDisagree(),
        new Depositing(),
        new WaterLoss(),
        new BleedNotFlowing(),
        new BleedNotClosing(),
        new MeterStopped(),
        new PulsesLost(),
        new MeterBackwards(),
        new FeedLow(),
        new FeedHigh(),
        new OverfedThenEmpty(),
        new PumpOutput(),
        new WrongProduct(),
        new StockUnexplained(),
        new DoseMissed(),
        new BiocideLapse(),
        new LabelExceeded(),
        new MixingHazard(),
        new ResidualLow(),
        new ResidualHigh(),
        new RunsOut(),
        new DosePlanClash(),
        new DoseUntreated(),
        new HoldTooLong(),
        new MicrobiologyHigh(),
        new ClockDue(),
        new MakeUpChanged(),
        new Scaling(),
        new Corrosive(),
        new SwitchNotAutomatic(),
        new SettingsChanged(),
        new SettingsLost(),
        new ControllerClock(),
        new AlarmStanding(),
        new RangeOut(),
        new RestartUnproved(),
        new NotMeasured(),
        new SeenAgain(),
        new ValueSuspect(),
    ];

    /// <summary>Rules for systems that are only recorded: tests and dates, no balance.</summary>
    public static IReadOnlyList<IFindingRule> ForRecordsOnly { get; } = [new MicrobiologyHigh(), new ClockDue(), new RangeOut(), new ValueSuspect()];
}
