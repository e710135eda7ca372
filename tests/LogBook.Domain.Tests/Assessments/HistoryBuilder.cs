using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Assessments;

/// <summary>
/// Visits to one tower in steady running: make-up 19.4 m³ a day, 4.5 cycles, bleed 4.3 h a day at 1,000 L/h, inhibitor 100 mg/L.
/// A test changes only what it is about.
/// </summary>
internal sealed class HistoryBuilder
{
    public static readonly DateTime Start = new(2025, 1, 6, 9, 0, 0, DateTimeKind.Utc);

    private readonly List<Visit> _visits = [];
    private double _day;
    private double _dial = 10_000;
    private double _total = 10_000;
    private double _bleedHours = 100;
    private double _inhibitorHours = 20;
    private double _stock = 55;

    public double MakeUpPerDayL { get; set; } = 19_400;

    public double DialShare { get; set; } = 1;

    public double TotalShare { get; set; } = 1;

    public double BleedHoursPerDay { get; set; } = 4.3;

    // 100 mg/L × 19,400 L / 4.5 cycles / 1.12 kg/L = 0.3849 L a day.
    public double InhibitorPerDayL { get; set; } = 100 * 19_400 / 4.5 / 1e6 / 1.12;

    public double Cycles { get; set; } = 4.5;

    public double Chloride { get; set; } = 103.5;

    public double Inhibitor { get; set; } = 100;

    public bool IsInstrumentProved { get; set; } = true;

    public double? VisitEveryDays { get; set; } = 28;

    public double RefillAtL { get; set; } = 30;

    public IReadOnlyList<Rule> Rules { get; set; } = [];

    public Func<Programme, Programme> Programme { get; set; } = programme => programme;

    public Func<WaterSystem, WaterSystem> System { get; set; } = system => system;

    public IReadOnlyList<Programme> LaterProgrammes { get; set; } = [];

    public IReadOnlyList<Notification> Notifications { get; set; } = [];

    public IReadOnlyList<Visit> Visits => _visits;

    public Guid IdOf(int index) => _visits[index].Id;

    /// <summary>Conductivity of the tower water at these cycles: 300 µS/cm make-up, C (1 − 0.025 (C − 1)).</summary>
    public static double ConductivityAt(double cycles) => 300 * cycles * (1 - (0.025 * (cycles - 1)));

    public HistoryBuilder Visit(double day, Func<VisitedSystem, VisitedSystem>? change = null, Func<Visit, Visit>? changeVisit = null)
    {
        var elapsed = day - _day;
        _day = day;
        _dial = (_dial + (elapsed * MakeUpPerDayL * DialShare)) % 1e7;
        _total += elapsed * MakeUpPerDayL * TotalShare;
        _bleedHours += elapsed * BleedHoursPerDay;
        _inhibitorHours += elapsed * 0.3;
        _stock -= elapsed * InhibitorPerDayL;
        var added = _stock < RefillAtL ? 25.0 : 0;
        var arrived = Start.AddDays(day);
        var conductivity = ConductivityAt(Cycles);
        var record = new VisitedSystem
        {
            System = "CT-1",
            Running = true,
            InUse = true,
            Readings =
            [
                Tower(TestCodes.Conductivity, conductivity, "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" },
                MakeUp(TestCodes.Conductivity, 300, "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" },
                Tower(TestCodes.Chloride, Chloride, "mg/L"),
                MakeUp(TestCodes.Chloride, 23, "mg/L"),
                Tower(TestCodes.Inhibitor, Inhibitor, "mg/L"),
            ],
            Probes = [Probe(conductivity, conductivity)],
            Meters = [new MeterReading { Meter = "MU", Dial = Math.Round(_dial), Total = Math.Round(_total) }],
            HoursRun = [new HoursReading { Output = "bleed", Hours = Math.Round(_bleedHours, 1) }, new HoursReading { Output = "inhibitor", Hours = Math.Round(_inhibitorHours, 1) }],
            Drums = [new DrumReading { Drum = "D-INH", Level = _stock / 60 * 62, Unit = "cm", AddedL = added }],
            Switches = [new SwitchReading { Output = "bleed", Found = SwitchPosition.Automatic, Left = SwitchPosition.Automatic }],
            Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1232), Left = SettingValue.Of(1232), Step = 1 }],
        };
        _stock += added;
        var visit = new Visit
        {
            // The version-7 layout is not looked at; a fixed number keeps tests the same each time.
            Id = new Guid(_visits.Count + 1, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1),
            Site = "YAF-1",
            Technician = "RYA",
            Arrived = Moment.OfUtc(arrived),
            Left = Moment.OfUtc(arrived.AddHours(1)),
            Systems = [change is null ? record : change(record)],
        };
        _visits.Add(changeVisit is null ? visit : changeVisit(visit));
        return this;
    }

    public HistoryBuilder Every(double days, int count)
    {
        for (var i = 0; i < count; i++)
        {
            Visit(_visits.Count == 0 ? 0 : _day + days);
        }

        return this;
    }

    public SystemHistory Build(IEnumerable<Visit>? visits = null) => SystemHistory.From(new FirmSetUp(Document()), "YAF-1", "CT-1", visits ?? _visits, Notifications);

    public SystemAssessment Assess(DateTime? asOf = null, IEnumerable<Visit>? visits = null) =>
        Assessment.Of(Build(visits), asOf ?? (_visits.Count == 0 ? Start : Start.AddDays(_day).AddHours(2)));

    public static Reading Tower(string test, double value, string unit) => new() { At = SamplePoints.Tower, Test = test, Value = value, Unit = unit };

    public static Reading MakeUp(string test, double value, string unit) => new() { At = SamplePoints.MakeUp, Test = test, Value = value, Unit = unit };

    public static ProbeReading Probe(double asFound, double reference, double? asLeft = null) => new()
    {
        Probe = "C1",
        SettledMin = 11,
        AsFound = asFound,
        Reference = reference,
        Instrument = "HM-1",
        AsLeft = asLeft,
        Unit = "uS/cm",
    };

    public ExchangeDocument Document() => new()
    {
        Format = "logbook-exchange",
        Version = 1,
        Products =
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100, Residual = new ProductResidual { Test = "inhibitor", MgPerLPerMgProduct = 1 } },
            new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, Oxidising = false, DensityKgPerL = 1.05, DoseMgPerL = 100 },
            new Product { Code = "N-20", Name = "Biocide N-20", Kind = ProductKind.Biocide, Oxidising = false, LabelContactHours = 20 },
            new Product { Code = "A-38", Name = "Acid A-38", Kind = ProductKind.Acid },
            new Product { Code = "H-12", Name = "Biocide H-12", Kind = ProductKind.Biocide, Oxidising = true },
        ],
        Instruments =
        [
            new Instrument
            {
                Code = "HM-1",
                Kind = InstrumentKind.ConductivityMeter,
                Checks = IsInstrumentProved
                    ? [.. Enumerable.Range(0, 60).Select(i => new InstrumentCheck { At = Moment.OfUtc(Start.AddDays((14 * i) - 1)), Standard = 1413, Read = 1410, Unit = "uS/cm" })]
                    : [],
            },
        ],
        Rules = Rules,
        Sites = [new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London", VisitEveryDays = VisitEveryDays }],
        Systems =
        [
            System(new WaterSystem
            {
                Site = "YAF-1",
                Code = "CT-1",
                Name = "Cooling tower 1",
                Kind = SystemKind.OpenRecirculating,
                VolumeL = 10_000,
                BleedValveLPerH = 1_000,
                Rules = [.. Rules.Select(rule => rule.Code).Distinct()],
                Probes = [new Probe { Code = "C1", Of = ProbeKind.Conductivity }],
                Outputs = [new Output { Code = "bleed", Drives = OutputDrives.Bleed }, new Output { Code = "inhibitor", Drives = OutputDrives.Feed }],
                Meters = [new Meter { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 7, LitresPerPulse = 10, MaxLPerH = 4_000 }],
                Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62, UnusableL = 2 }],
                Pumps = [new Pump { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = 1.283 }],
                Programmes =
                [
                    Programme(new Programme
                    {
                        From = new DateOnly(2024, 12, 2),
                        TargetCycles = 4.5,
                        SetPointUsPerCm = 1232,
                        DifferentialUsPerCm = 25,
                        HighAlarmUsPerCm = 1478,
                        Ranges = [new TestRange { At = SamplePoints.Tower, Test = "inhibitor", Low = 80, High = 120, Unit = "mg/L" }],
                        Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByMakeUpVolume, EveryL = 1_000, RunSeconds = 55.6, TargetMgPerL = 100 }],
                    }),
                    .. LaterProgrammes,
                ],
            }),
        ],
    };
}

internal static class AssessmentExtensions
{
    public static Finding? Open(this SystemAssessment assessment, string kind) =>
        assessment.Findings.Select(finding => finding.In(Language.English)).SingleOrDefault(finding => finding.Kind == kind && finding.State == FindingState.Open);

    public static IReadOnlyList<Finding> All(this SystemAssessment assessment, string kind) =>
        [.. assessment.Findings.Select(finding => finding.In(Language.English)).Where(finding => finding.Kind == kind)];

    public static Figure? Figure(this SystemAssessment assessment, string code, Guid visit) =>
        assessment.Figures.SingleOrDefault(figure => figure.Code == code && figure.VisitId == visit);
}
