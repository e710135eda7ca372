using System.Globalization;
using CsCheck;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Exchange;

/// <summary>
/// Random documents that agree with themselves: several sites and systems, drums of every shape, feeds of every mode, visits
/// with every kind of entry. Invented codes and words only.
/// </summary>
internal static class Documents
{
    private static readonly string[] Words = ["Quern", "Ibben \"stoke\"", "Hobble\\shaw", "torre ñandú", "água", "a\tb", "€ 5", "😀", "line\nbreak", "x"];
    private static readonly string[] Points = ["make-up", "tower", "bleed", "softened", "raw", "P-1"];
    private static readonly string[] Offsets = ["Z", "+00:00", "+01:00", "-03:00", "+05:30"];

    private static readonly Gen<string> Word = OneOfConst(Words);
    private static readonly Gen<string?> SomeWord = Maybe(Word);
    private static readonly Gen<double> Amount = Gen.OneOf(
        Gen.Int[0, 20000].Select(i => i / 10.0), Gen.Int[0, 5000].Select(i => (double)i), Gen.Double[0, 1e6], Gen.Double[0, 1e-5], Gen.Const(1e21));

    private static readonly Gen<double> Positive = Gen.OneOf(Gen.Int[1, 20000].Select(i => i / 10.0), Gen.Double[1e-7, 1e6]);
    private static readonly Gen<double> Signed = Gen.OneOf(Gen.Int[-1000, 20000].Select(i => i / 10.0), Gen.Double[-1e3, 1e6]);
    private static readonly Gen<double?> SomeAmount = MaybeValue(Amount);
    private static readonly Gen<double?> SomePositive = MaybeValue(Positive);
    private static readonly Gen<double?> SomeSigned = MaybeValue(Signed);
    private static readonly Gen<double?> SomePercent = MaybeValue(Gen.Int[0, 1000].Select(i => i / 10.0));
    private static readonly Gen<bool?> SomeFlag = MaybeValue(Gen.Bool);
    private static readonly Gen<DateOnly> Day = Gen.Int[0, 4000].Select(i => new DateOnly(2020, 1, 1).AddDays(i));
    private static readonly Gen<DateOnly?> SomeDay = MaybeValue(Day);
    private static readonly Gen<Guid> Identity = Gen.Guid;

    private static readonly Gen<Moment> Time =
        from seconds in Gen.Int[0, 200_000_000]
        from fraction in OneOfConst("", ".5", ".120", ".1234567")
        from offset in OneOfConst(Offsets)
        select Parse(new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddSeconds(seconds).ToString("yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture) + fraction + offset);

    private static readonly Gen<Moment?> SomeTime = MaybeValue(Time);
    private static readonly Gen<string> ClockTime = from h in Gen.Int[0, 23] from m in Gen.Int[0, 59] select string.Create(CultureInfo.InvariantCulture, $"{h:00}:{m:00}");

    private static readonly Gen<SettingValue> Setting = Gen.OneOf(
        Signed.Select(SettingValue.Of), Word.Select(SettingValue.Of), Gen.Const(SettingValue.None), Gen.Const(SettingValue.Of("mon,tue")));

    private static readonly Gen<TestDefinition> Test =
        from name in Word from basis in SomeWord from unit in OneOfConst("ug/L", "mg/L") from step in SomePositive
        select new TestDefinition { Code = "tracer", Name = name, Basis = basis, Unit = unit, Step = step };

    private static readonly Gen<Contact> Contact =
        from name in Word from language in MaybeValue(Gen.Enum<Language>()) from gets in SomeFlag
        select new Contact { Name = name, Email = "office@quernwath.example", Language = language, GetsSummaries = gets };

    private static readonly Gen<InstrumentCheck> InstrumentCheck =
        from at in Time from standard in Amount from read in Amount from lot in SomeWord
        select new InstrumentCheck { At = at, Standard = standard, Read = read, Unit = "uS/cm", StandardLot = lot };

    private static readonly Gen<Drum> AnyDrum =
        from shape in Gen.Enum<DrumShape>()
        from a in Positive from b in Positive from c in Positive
        from spare in SomeAmount from delivery in SomeAmount from day in SomeDay
        select (shape switch
        {
            DrumShape.VerticalCylinder => Drum(shape) with { CapacityL = a, HeightCm = b },
            DrumShape.HorizontalCylinder => Drum(shape) with { LengthCm = a, DiameterCm = b },
            DrumShape.Rectangular => Drum(shape) with { LengthCm = a, WidthCm = b, HeightCm = c },
            DrumShape.ByWeight => Drum(shape) with { TareKg = a, CapacityL = b },
            _ => Drum(shape) with { Points = [[0, 0], [a, b], [a * 2, b * 3]] },
        }) with { SpareL = spare, DeliveryDays = delivery, From = day };

    private static readonly Gen<Feed> AnyFeed =
        from mode in Gen.Enum<FeedMode>()
        from a in Positive from b in Amount from share in Gen.Int[0, 100] from signed in Signed from target in SomeAmount
        from direction in Gen.Enum<FeedDirection>() from weeks in Gen.Int[1, 4].Array[1, 4] from days in Gen.Enum<Weekday>().Array[1, 3] from starts in ClockTime.Array[1, 3]
        from meanwhile in MaybeValue(Gen.Enum<InhibitorMeanwhile>()) from hold in SomeAmount from down in SomeAmount
        select (mode switch
        {
            FeedMode.ByMakeUpVolume => Feed(mode) with { EveryL = a, RunSeconds = b },
            FeedMode.AlongsideBleed => Feed(mode) with { LongestFeedMin = b },
            FeedMode.FixedShare => Feed(mode) with { CycleMin = a, SharePercent = share },
            FeedMode.ShareOfLastBleed => Feed(mode) with { SharePercent = share, LongestFeedMin = b },
            FeedMode.DosePlan => Feed(mode) with
            {
                Weeks = weeks,
                Days = days,
                Starts = starts,
                RunMinutes = b,
                HoldBleedShutMin = hold,
                InhibitorMeanwhile = meanwhile,
                BleedDownFirst = down is null ? null : new BleedDown { Minutes = down, ToUsPerCm = hold },
                WaitsFor = ["feed-2"],
            },
            FeedMode.ByOrp => Measured(mode, UnitCodes.Millivolt, signed, b, direction),
            FeedMode.ByPh => Measured(mode, UnitCodes.Ph, signed, b, direction),
            FeedMode.ByResidual => Measured(mode, UnitCodes.MgPerL, signed, b, direction),
            _ => Feed(mode),
        }) with { TargetMgPerL = target };

    private static readonly Gen<Programme> Programme =
        from cycles in MaybeValue(Gen.Double[1, 12]) from setPoint in SomePositive from differential in SomeAmount from acts in MaybeValue(Gen.Enum<BleedActs>())
        from longest in SomeAmount from low in Amount from feeds in AnyFeed.Array[0, 4] from chloride in SomeAmount from why in SomeWord
        select new Programme
        {
            From = new DateOnly(2020, 1, 6),
            TargetCycles = cycles,
            SetPointUsPerCm = setPoint,
            DifferentialUsPerCm = differential,
            BleedActs = acts,
            LongestBleedMin = longest,
            MaRange = setPoint is null ? null : new MaRange { At4Ma = 0, At20Ma = 2500, Unit = UnitCodes.MicrosiemensPerCm },
            WeekOneFrom = differential is null ? null : new DateOnly(2020, 1, 13),
            Ranges =
            [
                new TestRange { At = "tower", Test = "inhibitor", Low = low, High = low * 2, Unit = "mg/L" },
                new TestRange { At = "P-1", Test = "tracer", High = low, Unit = "ug/L", Basis = why },
            ],
            Feeds = feeds,
            MakeUp = chloride is null ? null : new MakeUpWater { ChlorideMgPerL = chloride, PH = 7.7 },
            Why = why,
        };

    private static readonly Gen<Reading> Reading =
        from at in OneOfConst(Points)
        from test in OneOfConst<TestInfo>([.. TestCatalogue.All])
        from unit in Gen.Int[0, 10]
        from kind in Gen.Int[0, 4]
        from value in Amount from drops in Gen.Int[0, 60] from perDrop in Positive from source in MaybeValue(Gen.Enum<ReadingSource>())
        from phase in MaybeValue(Gen.Enum<ReadingPhase>()) from word in SomeWord from confirmed in SomeFlag from taken in SomeTime from first in SomeSigned
        let blank = new Reading
        {
            At = at,
            Test = test.Code,
            Unit = test.Units[unit % test.Units.Count],
            Source = source,
            Phase = phase,
            Instrument = word is null ? null : "hm-1",
            Lot = word,
            Confirmed = confirmed,
            TakenAt = taken,
            ResultAt = taken,
            ReceivedAt = taken,
            FirstValue = first,
            Dilution = first is null ? null : new Dilution { Sample = 10, Total = 50 },
            Incubation = word is null ? null : new Incubation { DegC = 30, Hours = 48 },
            Lab = word,
        }
        select kind switch
        {
            0 => blank with { Value = value },
            1 => blank with { Drops = drops, PerDrop = perDrop },
            2 => blank with { Value = value, Qualifier = confirmed == true ? "<" : ">" },
            3 => blank with { NotQuantifiable = true },
            _ => blank with { NotTaken = "kit empty" },
        };

    private static readonly Gen<VisitedSystem> Record =
        from readings in Reading.Array[0, 6]
        from asFound in Amount from reference in SomeAmount from cleaned in SomeAmount from calibrated in SomeFlag
        from dial in MaybeValue(Gen.Int[0, 999999].Select(i => i / 2.0)) from total in SomeAmount from replaced in SomeFlag from replacedOn in SomeDay
        from level in Gen.Int[0, 100] from added in MaybeValue(Gen.Double[0, 1e-9]) from word in SomeWord from hours in Amount from percent in SomePercent
        from switches in MaybeValue(Gen.Enum<SwitchPosition>()) from settings in Setting.Array[0, 4] from found in Gen.Bool from week in MaybeValue(Gen.Int[1, 4])
        from type in Gen.Enum<EventType>() from time in SomeTime from severity in MaybeValue(Gen.Enum<Severity>()) from id in MaybeValue(Identity) from state in MaybeValue(Gen.Enum<ActionState>())
        from clock in SomeSigned from running in SomeFlag from due in SomeDay
        select new VisitedSystem
        {
            System = "CT-1",
            Running = running,
            ClockOffByMin = clock,
            ProgrammeWeek = week,
            Readings = readings,
            Probes =
            [
                new ProbeReading
                {
                    Probe = found ? "C1" : null,
                    AsFound = asFound,
                    Reference = reference,
                    AfterCleaning = cleaned,
                    Calibrated = calibrated,
                    Calibration = calibrated == true ? new ProbeCalibration { Against = CalibrationAgainst.Standard, StandardValue = 1413, FactorAfter = 1.02, Reason = word } : null,
                    Unit = UnitCodes.MicrosiemensPerCm,
                },
            ],
            Meters = [new MeterReading { Meter = "mu", Dial = dial, Total = total, Replaced = replaced, ReplacedOn = replacedOn, FirstDial = reference, FirstTotal = total }],
            Drums = [new DrumReading { Drum = "D-1", Level = level, Unit = "%", AddedL = added, FirstLevel = reference, Lot = word, ProductFound = word is null ? null : "P-40" }],
            HoursRun = [new HoursReading { Output = "bleed", Hours = hours, Reset = calibrated, Before = reference, FirstHours = reference }],
            Pumps = [new PumpReading { Pump = "PU-1", StrokeFound = percent, SpeedLeft = percent }],
            Drawdowns = [new Drawdown { Pump = "PU-1", Millilitres = hours, Seconds = 60 }],
            BleedTest = found ? new BleedTest { Litres = hours, Seconds = 73 } : null,
            Switches = [new SwitchReading { Output = "bleed", Found = switches, Left = switches, Reason = word }],
            Settings = [.. settings.Select((s, i) => new SettingReading { Name = $"feed-1/{i}", Found = s, Left = found ? s : null, NotRead = calibrated, Step = 0.1 })],
            MaOutput = found ? new MaReading { Found = 12.1, Unit = "mA" } : null,
            Additions = [new Addition { Product = "P-40", Amount = hours, Unit = "L", To = word, At = time }],
            Events = [new VisitEvent { Type = type, At = time, Litres = reference, Note = word }],
            Alarms = [new AlarmReading { Text = word ?? "no flow", Output = found ? "bleed" : null, Standing = found }],
            Observations = [new Observation { About = "basin", Text = word ?? "light algae", Severity = severity }],
            Actions = [new VisitAction { Id = id, Text = word ?? "clean basin", Due = due, State = state }],
        };

    private static readonly Gen<Visit> Visit =
        from id in Identity from site in OneOfConst("S-1", "s-2", "S-3") from kind in MaybeValue(Gen.Enum<VisitKind>())
        from arrived in Time from left in Gen.Bool from record in Record from amended in Gen.Bool from word in SomeWord from time in SomeTime from photo in Identity
        from state in MaybeValue(Gen.Enum<RecommendationState>()) from signer in Gen.Enum<SignedBy>()
        select new Visit
        {
            Id = id,
            Site = site,
            Technician = "RYA",
            Also = amended ? ["pum"] : [],
            Kind = kind,
            Reason = "because",
            Arrived = arrived,
            Left = left ? arrived : null,
            EnteredAt = time,
            Version = amended ? 2 : null,
            Amends = amended ? 1 : null,
            AmendedBy = amended ? "RYA" : null,
            AmendedAt = amended ? arrived : null,
            Systems = [record],
            Photos = [new Photo { Id = photo, Of = "CT-1/meters/MU", TakenAt = time }],
            Recommendations = [new Recommendation { Text = word ?? "fit a valve", State = state }],
            Signatures = [new Signature { By = signer, AbsentReason = word }],
            Samples = left ? [new Sample { Bottle = word, Point = "tower", TemperatureCel = 21.5, System = "ct-1" }] : [],
            Notes = word,
        };

    private static readonly Gen<Finding> Finding =
        from severity in Gen.Enum<Severity>() from state in Gen.Enum<FindingState>() from day in Day from word in SomeWord from value in SomeSigned
        select new Finding
        {
            Site = word is null ? null : "S-1",
            System = word is null ? null : "CT-1",
            About = new About { Probe = "C1" },
            Kind = "probe-reads-off",
            Severity = severity,
            FirstSeen = day,
            LastSeen = day,
            State = state,
            Text = word ?? "text",
            Evidence = [new Evidence { What = "w", Value = value, Unit = "%" }],
            LookAtNext = word is null ? [] : [word],
        };

    /// <summary>Documents with set-up, visits and findings in no particular order.</summary>
    public static Gen<ExchangeDocument> Any { get; } =
        from tests in Test from contacts in Contact.Array[0, 2] from checks in InstrumentCheck.Array[0, 2] from name in Word from word in SomeWord
        from density in SomePositive from dose in SomeAmount from role in Gen.Enum<PersonRole>() from day in SomeDay
        from drums in AnyDrum.Array[1, 6] from programme in Programme from volume in SomePositive from metals in Gen.Enum<Metal>().Array[0, 3] from kind in Gen.Enum<SystemKind>()
        from hours in ClockTime from visits in Visit.Array[0, 5] from findings in Finding.Array[0, 3] from units in MaybeValue(Gen.Enum<UnitSystem>()) from measures in Gen.Enum<MeterMeasures>()
        from reversed in Gen.Bool
        let sites = new[] { "S-2", "S-1", "S-3" }
        select new ExchangeDocument
        {
            Format = ExchangeReader.Format,
            Version = ExchangeReader.Version,
            Tests = [tests],
            Customers = [new Customer { Code = "quern", Name = name, Contacts = contacts }, new Customer { Code = "Hob", Name = name }],
            People =
            [
                new Person { Code = "RYA", Name = name, Role = role, Certificates = [new Certificate { Name = "c", Expires = day }] },
                new Person { Code = "PUM", Name = name, Role = PersonRole.Technician, Email = "p.umber@quernwath.example" },
            ],
            Products =
            [
                new Product { Code = "P-40", Name = name, Kind = ProductKind.Inhibitor, DensityKgPerL = density, DoseMgPerL = dose, Residual = new ProductResidual { Test = "inhibitor", MgPerLPerMgProduct = 1 } },
                new Product { Code = "N-15", Name = name, Kind = ProductKind.Biocide, Oxidising = false, NeverWith = ["biocide:oxidising", "p-40"] },
            ],
            Instruments = [new Instrument { Code = "HM-1", Kind = InstrumentKind.ConductivityMeter, Serial = word, Checks = checks }],
            Lots = [new ReagentLot { Code = "IN-2", Test = "inhibitor", Step = density, Expires = day }, new ReagentLot { Code = "IN-1", Test = "tracer" }],
            Rules =
            [
                new Rule
                {
                    Code = "OXT", Name = name, From = new DateOnly(2024, 7, 1), Test = "legionella", EveryDays = 90, RetestDays = [3, 7],
                    Bands = [new RuleBand { From = 20, Unit = UnitCodes.CfuPerMl, Severity = Severity.Plan, Says = word }],
                },
                new Rule { Code = "oxt", Name = name, From = new DateOnly(2020, 7, 1), To = new DateOnly(2024, 6, 30), OnEvent = "started", WithinDays = 14 },
            ],
            Sites = [.. sites.Select(s => new Site { Code = s, Customer = "QUERN", Name = name, TimeZone = "Europe/London", Units = units, AssignedTo = word is null ? null : "rya" })],
            Systems = [.. (reversed ? sites.Reverse() : sites).Select(s => System(s, drums, programme) with
            {
                Name = name,
                Kind = kind,
                VolumeL = volume,
                Metals = metals,
                Operation = word is null ? null : new Operation
                {
                    Week = [new OperatingHours { Days = [Weekday.Monday], From = hours, To = "24:00" }],
                    Seasons = [new Season { From = "02-29", To = "12-31" }],
                    Stops = [new Stop { From = new DateOnly(2025, 1, 1), To = new DateOnly(2025, 1, 1), Reason = word }],
                },
                Meters = [new Meter { Code = "MU", Measures = measures, Unit = UnitCodes.CubicMetre, Digits = 7, Serves = ["ct-1"], LitresPerPulse = density, From = day }],
            })],
            Visits = [.. visits.DistinctBy(v => v.Id)],
            Findings = findings,
        };

    private static Moment Parse(string text) => Moment.TryParse(text, out var moment) ? moment : throw new InvalidOperationException(text);

    private static Gen<T> OneOfConst<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : class => Gen.OneOf(gen.Select(v => (T?)v), Gen.Const((T?)null));

    private static Gen<T?> MaybeValue<T>(Gen<T> gen)
        where T : struct => Gen.OneOf(gen.Select(v => (T?)v), Gen.Const((T?)null));

    private static Drum Drum(DrumShape shape) => new() { Code = "D", Product = "p-40", Shape = shape };

    private static Feed Feed(FeedMode mode) => new() { Drum = "D-1", Output = "feed-1", Mode = mode };

    private static Feed Measured(FeedMode mode, string unit, double setPoint, double amount, FeedDirection direction) =>
        Feed(mode) with { SetPoint = setPoint, Differential = amount, Unit = unit, Direction = direction, LongestFeedMin = amount };

    private static WaterSystem System(string site, Drum[] drums, Programme programme) => new()
    {
        Site = site,
        Code = "CT-1",
        Name = "",
        Kind = SystemKind.OpenRecirculating,
        Rules = ["OXT"],
        SamplePoints = ["P-1"],
        Probes = [new Probe { Code = "P1", Of = ProbeKind.Ph }, new Probe { Code = "C1", Of = ProbeKind.Conductivity }],
        Outputs = [new Output { Code = "feed-2", Drives = OutputDrives.Feed }, new Output { Code = "bleed", Drives = OutputDrives.Bleed }, new Output { Code = "FEED-1", Drives = OutputDrives.Feed }],
        // The first drum is the one that visits read, in percent.
        Drums = [.. drums.Select((d, i) => d with { Code = $"D-{i + 1}", CapacityL = d.CapacityL ?? 60 })],
        Pumps = [new Pump { Code = "PU-1", Drum = "d-1", Output = "feed-1", RatedLPerH = 1.5 }],
        Programmes = [programme with { From = new DateOnly(2024, 1, 1) }, programme],
    };
}
