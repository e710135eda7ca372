using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Web.Tests.Entry;

/// <summary>A small part of the invented firm: one site with a cooling tower and a closed loop, and one earlier visit.</summary>
internal static class EntryFirm
{
    public static Site Site { get; } = new()
    {
        Code = "YAF-1",
        Customer = "YAF",
        Name = "Yaffleford College",
        TimeZone = "Europe/London",
        VisitEveryDays = 28,
    };

    public static WaterSystem Tower { get; } = new()
    {
        Site = "YAF-1",
        Code = "CT-1",
        Name = "Cooling tower 1",
        Kind = SystemKind.OpenRecirculating,
        VolumeL = 10000,
        Probes = [new Probe { Code = "C1", Of = ProbeKind.Conductivity }],
        Outputs = [new Output { Code = "bleed", Drives = OutputDrives.Bleed }, new Output { Code = "inhibitor", Drives = OutputDrives.Feed }],
        Meters = [new Meter { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 7 }],
        Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }],
        Pumps = [new Pump { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = 1.5 }],
        Programmes =
        [
            new Programme
            {
                From = new DateOnly(2025, 1, 6),
                TargetCycles = 4.5,
                SetPointUsPerCm = 1350,
                DifferentialUsPerCm = 27,
                LongestBleedMin = 140,
                Ranges =
                [
                    new TestRange { At = "tower", Test = "inhibitor", Low = 80, High = 120, Unit = "mg/L" },
                    new TestRange { At = "tower", Test = "pH", Low = 7.5, High = 9, Unit = "[pH]" },
                ],
                Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByMakeUpVolume, EveryL = 1000, RunSeconds = 47.6 }],
            },
        ],
    };

    public static WaterSystem Loop { get; } = new()
    {
        Site = "YAF-1",
        Code = "CL-1",
        Name = "Closed loop",
        Kind = SystemKind.ClosedLoop,
        Meters = [new Meter { Code = "TOP-UP", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 6 }],
        Programmes = [new Programme { From = new DateOnly(2025, 1, 6), Ranges = [new TestRange { At = "loop", Test = "pH", Low = 9, High = 10.5, Unit = "[pH]" }] }],
        SamplePoints = ["loop"],
    };

    public static Visit Earlier { get; } = new()
    {
        Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a11"),
        Site = "YAF-1",
        Technician = "RYA",
        Kind = VisitKind.Routine,
        Arrived = At("2025-03-03T09:05:00+00:00"),
        Left = At("2025-03-03T10:10:00.250+00:00"),
        EnteredAt = At("2025-03-03T09:58:00+00:00"),
        Systems =
        [
            new VisitedSystem
            {
                System = "CT-1",
                Running = true,
                InUse = true,
                ClockOffByMin = -2,
                ProgrammeWeek = 1,
                Readings =
                [
                    new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Controller, Value = 1260, Unit = "uS/cm" },
                    new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Instrument = "HM-1", Value = 1361, Unit = "uS/cm" },
                    new Reading { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Instrument = "HM-1", Value = 301, Unit = "uS/cm" },
                    new Reading { At = "tower", Test = "chloride", Drops = 21, PerDrop = 5, Unit = "mg/L", Lot = "CL-2291", Dilution = new Dilution { Sample = 10, Total = 25 } },
                    new Reading { At = "tower", Test = "inhibitor", Value = 95, Unit = "mg/L", Lot = "IN-0412", FirstValue = 950, Confirmed = true },
                    new Reading { At = "tower", Test = "inhibitor", Value = 96.125, Unit = "mg/L", Phase = ReadingPhase.Again },
                    new Reading { At = "tower", Test = "iron", Value = 1.234, Unit = "mg/L", Method = "photometer" },
                    new Reading { At = "tower", Test = "silica", Unit = "mg/L", NotTaken = "no reagent" },
                    new Reading { At = "tower", Test = "legionella", Source = ReadingSource.Lab, Unit = "[CFU]/L", NotQuantifiable = true, Lab = "Umberscombe Water Laboratory", Incubation = new Incubation { DegC = 36, Hours = 240 }, ReceivedAt = At("2025-03-13T11:00:00+00:00") },
                    new Reading { At = "tower", Test = "dip-slide", Value = 1000, Unit = "[CFU]/mL", Qualifier = "<", TakenAt = At("2025-03-03T09:40:00+00:00"), ResultAt = At("2025-03-05T08:00:00+00:00") },
                ],
                Probes =
                [
                    new ProbeReading
                    {
                        Probe = "C1", Of = ProbeKind.Conductivity, SettledMin = 11, AsFound = 1260, Reference = 1361, Instrument = "HM-1", AfterCleaning = 1342, AsLeft = 1342,
                        Calibrated = true, Unit = "uS/cm", Calibration = new ProbeCalibration { Against = CalibrationAgainst.Standard, StandardValue = 1413, StandardLot = "KCL-77", FactorBefore = 1, FactorAfter = 1.025, Reason = "off after cleaning" },
                    },
                ],
                Meters = [new MeterReading { Meter = "MU", Dial = 48211, Total = 48210, Replaced = false, Reset = false, FirstDial = 84211, FirstTotal = 48210 }],
                Drums = [new DrumReading { Drum = "D-INH", Level = 41.5, Unit = "cm", AddedL = 0, RemovedL = 0, Swapped = false, SpareL = 25, ProductFound = "P-40", FirstLevel = 14.5 }],
                HoursRun = [new HoursReading { Output = "bleed", Hours = 118.4, Reset = false, FirstHours = 1184 }],
                Pumps = [new PumpReading { Pump = "P-INH", StrokeFound = 60, StrokeLeft = 60, SpeedFound = 100, SpeedLeft = 100 }],
                Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 25, Seconds = 60 }],
                BleedTest = new BleedTest { Litres = 20, Seconds = 73 },
                Switches = [new SwitchReading { Output = "bleed", Found = SwitchPosition.Automatic, Left = SwitchPosition.ForcedOff, Reason = "valve seat renewed tomorrow" }],
                Settings =
                [
                    new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1350), Left = SettingValue.Of(1350) },
                    new SettingReading { Name = "biocide-1/weeks", Found = SettingValue.Of("1,2,3,4"), Step = 1 },
                    new SettingReading { Name = "lowAlarmUsPerCm", Found = SettingValue.None },
                    new SettingReading { Name = "longestBleedMin", NotRead = true },
                ],
                MaOutput = new MaReading { Found = 12.1, Unit = "mA" },
                Additions = [new Addition { Product = "P-40", Amount = 0.5, Unit = "L", To = "basin", At = At("2025-03-03T09:50:00+00:00"), Reason = "first fill" }],
                Events = [new VisitEvent { Type = EventType.ProbeCleaned, Of = "C1", At = At("2025-03-03T09:30:12+00:00"), By = "RYA" }],
                Alarms = [new AlarmReading { Text = "no flow", Standing = false }],
                Observations = [new Observation { About = "basin", Text = "light algae", Severity = Severity.Watch }],
                Actions = [new VisitAction { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a12"), For = "basin", Text = "clean basin at shutdown", Owner = "customer", Due = new DateOnly(2025, 4, 1), State = ActionState.Open }],
            },
        ],
        Photos = [new Photo { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a13"), Of = "CT-1/meters/MU" }],
        Recommendations = [new Recommendation { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a14"), Text = "renew the strainer", Consequence = "pump runs dry", State = RecommendationState.Asked }],
        Signatures = [new Signature { By = SignedBy.Technician, Name = "R. Yaffle" }, new Signature { By = SignedBy.Customer, AbsentReason = "office closed" }],
        Samples = [new Sample { Bottle = "B-7", Point = "tower", System = "CT-1", TemperatureCel = 24.5, TakenAt = At("2025-03-03T09:45:00+00:00") }],
        Cleaning = "strainer",
        Notes = "pump room tidy",
    };

    /// <summary>Three visits before, so that there is a usual value.</summary>
    public static IReadOnlyList<Visit> ThreeVisits { get; } =
    [
        Earlier with { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2b01"), Arrived = At("2025-01-06T09:05:00+00:00") },
        Earlier with { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2b02"), Arrived = At("2025-02-03T09:05:00+00:00") },
        Earlier,
    ];

    public static FirmSetUp Firm { get; } = Of(Tower, Loop);

    public static FirmSetUp TowerOnly { get; } = Of(Tower);

    public static Moment At(string text) => Moment.TryParse(text, out var moment) ? moment : throw new FormatException(text);

    public static FirmSetUp With(params WaterSystem[] systems) => Of(systems);

    public static FirmSetUp Selling(IReadOnlyList<Product> products, params WaterSystem[] systems) => new(Document(systems) with { Products = products });

    private static FirmSetUp Of(params WaterSystem[] systems) => new(Document(systems));

    private static ExchangeDocument Document(params WaterSystem[] systems) => new()
    {
        Format = "logbook-exchange",
        Version = 1,
        Customers = [new Customer { Code = "YAF", Name = "Yaffleford College" }],
        People = [new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician }, new Person { Code = "IWE", Name = "I. Wendle", Role = PersonRole.Supervisor }],
        Products = [new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor }],
        Instruments = [new Instrument { Code = "HM-1", Kind = InstrumentKind.ConductivityMeter }],
        Lots = [new ReagentLot { Code = "IN-0412", Test = "inhibitor", Step = 5 }],
        Sites = [Site],
        Systems = systems,
    };
}
