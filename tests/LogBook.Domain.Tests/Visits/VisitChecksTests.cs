using System.Diagnostics;
using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Tests.Exchange;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits;

public sealed class VisitChecksTests
{
    private static readonly DateTimeOffset First = new(2025, 1, 6, 9, 0, 0, TimeSpan.Zero);

    /// <summary>One visit a week; week 0 is the first.</summary>
    private static Visit At(int week, VisitedSystem record) => new()
    {
        Id = Guid.CreateVersion7(First.AddDays(7 * week)),
        Site = "YAF-1",
        Technician = "RYA",
        Arrived = Moment.Of(First.AddDays(7 * week)),
        Systems = [record],
    };

    private static VisitedSystem Record() => new() { System = "CT-1" };

    private static Reading Value(string test, double value, string unit, string at = "tower") => new() { At = at, Test = test, Value = value, Unit = unit, Source = ReadingSource.Kit };

    private static VisitedSystem With(Reading reading) => Record() with { Readings = [reading] };

    private static IReadOnlyList<Issue> Check(Visit draft, params Visit[] previous) => VisitChecks.Check(draft, new VisitContext(Examples.Firm(), previous));

    private static Visit[] Weekly(int count, Func<int, VisitedSystem> record) => [.. Enumerable.Range(0, count).Select(i => At(i, record(i)))];

    private static void AsksOnly(string path, IReadOnlyList<Issue> issues)
    {
        var issue = Assert.Single(issues);
        Assert.Equal((path, VisitChecks.ValueSuspect, false), (issue.Path, issue.Code, issue.Blocks));
        Assert.StartsWith("Please read again: ", issue.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ExampleOfTheFormat_HasNoIssue() =>
        Assert.Empty(VisitChecks.Check(Examples.Document("visit").Visits[0], new VisitContext(Examples.Firm(), [])));

    [Fact]
    public void Check_EmptyDraft_AsksForWhatIsRequired()
    {
        var draft = new Visit { Id = Guid.CreateVersion7(), Site = "YAF-1", Technician = "", Arrived = default, Systems = [Record() with { Readings = [Value("pH", double.NaN, null!)] }] };

        var issues = Check(draft);

        Assert.Equal(
            ["arrived required", "systems[0].readings[0].unit required", "systems[0].readings[0].value wrong-kind", "technician required"],
            issues.Select(i => $"{i.Path} {i.Code}").Order(StringComparer.Ordinal));
        Assert.All(issues, i => Assert.True(i.Blocks));
    }

    [Theory]
    [InlineData("chloride", "mg/L", 100, 1010, true)]
    [InlineData("chloride", "mg/L", 100, 160, true)]
    [InlineData("chloride", "mg/L", 100, 150, false)]
    [InlineData("chloride", "mg/L", 100, 10.1, true)]
    [InlineData("inhibitor", "mg/L", 95, 0, true)]
    [InlineData("conductivity", "uS/cm", 1350, 135, true)]
    [InlineData("conductivity", "mS/cm", 1.35, 13.5, true)]
    [InlineData("conductivity", "uS/cm", 1350, 1800, true)]
    [InlineData("conductivity", "uS/cm", 1350, 1650, false)]
    [InlineData("pH", "[pH]", 8.3, 6.5, true)]
    [InlineData("pH", "[pH]", 8.3, 8.0, false)]
    [InlineData("temperature", "Cel", 27, 80.6, true)]
    [InlineData("free-halogen", "mg/L", 0.05, 0.2, false)]
    [InlineData("dip-slide", "[CFU]/mL", 1000, 5000, false)]
    [InlineData("dip-slide", "[CFU]/mL", 1000, 100000, true)]
    [InlineData("colony-count", "[CFU]/mL", 2000, 7000, false)]
    [InlineData("colony-count", "[CFU]/mL", 2000, 20000, true)]
    public void Check_ValueAgainstTheLastSix_IsAskedAgainWhenFar(string test, string unit, double usual, double value, bool isAsked)
    {
        var previous = Weekly(6, i => With(Value(test, usual * (1 + (0.01 * i)), unit)));

        var issues = Check(At(6, With(Value(test, value, unit))), previous);

        if (isAsked)
        {
            AsksOnly("systems[0].readings[0].value", issues);
        }
        else
        {
            Assert.Empty(issues);
        }
    }

    [Theory]
    [InlineData("chloride", "mg/L", 100, 1000, "(× 10)")]
    [InlineData("chloride", "mg/L", 100, 10, "(÷ 10)")]
    [InlineData("conductivity", "uS/cm", 1350, 1.35, "(÷ 1,000)")]
    [InlineData("temperature", "Cel", 27, 80.6, "((°F − 32) / 1.8)")]
    public void Check_SlipOfUnitOrPoint_IsNamed(string test, string unit, double usual, double value, string slip)
    {
        var previous = Weekly(6, _ => With(Value(test, usual, unit)));

        Assert.EndsWith(slip, Assert.Single(Check(At(6, With(Value(test, value, unit))), previous)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OtherPointOrSourceOrSystem_IsNotComparedWith()
    {
        var previous = Weekly(6, _ => With(Value("chloride", 100, "mg/L")));

        Assert.Empty(Check(At(6, With(Value("chloride", 20, "mg/L", "make-up"))), previous));
        Assert.Empty(Check(At(6, With(Value("chloride", 20, "mg/L") with { Source = ReadingSource.Lab })), previous));
    }

    [Fact]
    public void Check_ConfirmedOrAfterACleaningOrFirstVisit_IsNotAskedAgain()
    {
        var previous = Weekly(6, _ => With(Value("chloride", 100, "mg/L")));
        var far = Value("chloride", 10, "mg/L");

        Assert.Empty(Check(At(6, With(far with { Confirmed = true, FirstValue = 10 })), previous));
        Assert.Empty(Check(At(6, With(far) with { Events = [new VisitEvent { Type = EventType.Drained }] }), previous));
        Assert.Empty(Check(At(6, With(far)), previous[..2]));
    }

    [Theory]
    [InlineData("pH", 83, "[pH]")]
    [InlineData("temperature", 120, "Cel")]
    [InlineData("conductivity", 99, "mS/cm")]
    public void Check_BeyondPhysicalLimits_IsAskedAgain(string test, double value, string unit) =>
        AsksOnly("systems[0].readings[0].value", Check(At(0, With(Value(test, value, unit)))));

    [Fact]
    public void Check_PartAboveTheWhole_IsAskedAgain() => AsksOnly(
        "systems[0].readings[0].value",
        Check(At(0, Record() with { Readings = [Value("free-halogen", 0.9, "mg/L"), Value("total-halogen", 0.4, "mg/L")] })));

    [Fact]
    public void Check_ProbeThatSaysOtherwiseThanTheReading_IsAskedAgain()
    {
        var record = With(Value("conductivity", 1260, "uS/cm") with { Source = ReadingSource.Controller }) with
        {
            Probes = [new ProbeReading { AsFound = 1.62, Unit = "mS/cm" }],
        };

        AsksOnly("systems[0].probes[0].asFound", Check(At(0, record)));
    }

    private static VisitedSystem Dial(double dial, double? total = null) => Record() with { Meters = [new MeterReading { Meter = "MU", Dial = dial, Total = total }] };

    [Fact]
    public void Check_DialLowerThanLastTime_IsAskedAgainUnlessReplaced()
    {
        var previous = Weekly(4, i => Dial(50_000 + (i * 100_000)));
        var lower = Dial(90_000);

        AsksOnly("systems[0].meters[0].dial", Check(At(4, lower), previous));
        Assert.Empty(Check(At(4, lower with { Meters = [lower.Meters[0] with { Replaced = true }] }), previous));
    }

    [Fact]
    public void Check_DialLowerThanLastTime_IsToldInTheReadersLanguage_DigitByDigit()
    {
        var context = new VisitContext(Examples.Firm(), Weekly(4, i => Dial(50_003 + (i * 100_000))), Language.Spanish);

        Assert.Equal(
            "Lea de nuevo, por favor: contador 90\u00a0021 es menor que 350\u00a0003 la última vez, y no consta ni reinicio ni cambio",
            Assert.Single(VisitChecks.Check(At(4, Dial(90_021)), context)).Message);
    }

    [Fact]
    public void Check_DialThatRolledOver_IsNotAskedAgain()
    {
        var previous = Weekly(4, i => Dial(9_650_000 + (i * 100_000)));

        Assert.Empty(Check(At(4, Dial(50_000)), previous));
    }

    [Fact]
    public void Check_TotalLowerThanLastTime_IsAskedAgainUnlessReset()
    {
        var previous = Weekly(4, i => Dial(50_000 + (i * 100_000), 50_000 + (i * 100_000)));
        var lower = Dial(450_000, 3_000);

        AsksOnly("systems[0].meters[0].total", Check(At(4, lower), previous));
        Assert.Empty(Check(At(4, lower with { Meters = [lower.Meters[0] with { Reset = true }] }), previous));
    }

    [Fact]
    public void Check_FlowAboveThreeTimesTheUsual_IsAskedAgain()
    {
        var previous = Weekly(4, i => Dial(50_000 + (i * 100_000)));

        AsksOnly("systems[0].meters[0].dial", Check(At(4, Dial(350_000 + 310_000)), previous));
        Assert.Empty(Check(At(4, Dial(350_000 + 290_000)), previous));
    }

    [Fact]
    public void Check_FlowBeyondThePipe_IsAskedAgain()
    {
        var setUp = Examples.Document("set-up");
        var system = setUp.Systems[0];
        var firm = new FirmSetUp(setUp with { Systems = [system with { Meters = [system.Meters[0] with { MaxLPerH = 1000 }] }] });
        var context = new VisitContext(firm, [At(0, Dial(1000))]);

        AsksOnly("systems[0].meters[0].dial", VisitChecks.Check(At(1, Dial(1000 + (168 * 1001))), context));
        Assert.Empty(VisitChecks.Check(At(1, Dial(1000 + (168 * 999))), context));
    }

    private static VisitedSystem Hours(double hours, bool? reset = null) => Record() with { HoursRun = [new HoursReading { Output = "bleed", Hours = hours, Reset = reset }] };

    [Fact]
    public void Check_HoursLowerOrMoreThanPassed_AreAskedAgain()
    {
        var previous = Weekly(1, _ => Hours(500));

        AsksOnly("systems[0].hoursRun[0].hours", Check(At(1, Hours(20)), previous));
        AsksOnly("systems[0].hoursRun[0].hours", Check(At(1, Hours(680)), previous));
        Assert.Empty(Check(At(1, Hours(668)), previous));
        Assert.Empty(Check(At(1, Hours(20, reset: true)), previous));
    }

    private static VisitedSystem Level(double level, string unit, double? added = null) => Record() with { Drums = [new DrumReading { Drum = "D-INH", Level = level, Unit = unit, AddedL = added }] };

    [Fact]
    public void Check_DrumThatRoseWithoutDelivery_IsAskedAgain()
    {
        // The drum holds 60 L over 62 cm: 31 cm are 30 L.
        AsksOnly("systems[0].drums[0].level", Check(At(1, Level(41, "cm")), At(0, Level(31, "cm"))));
        AsksOnly("systems[0].drums[0].level", Check(At(1, Level(40, "L")), At(0, Level(31, "cm"))));
        Assert.Empty(Check(At(1, Level(41, "cm")), At(0, Level(31, "cm", added: 25))));
        Assert.Empty(Check(At(1, Level(31.5, "cm")), At(0, Level(31, "cm"))));
    }

    [Fact]
    public void Check_MuchMoreUsedThanUsual_IsAskedAgain()
    {
        // 60 L over 62 cm: a centimetre is nearly a litre; five a week are usual.
        var previous = Weekly(5, i => Level(60 - (5 * i), "cm"));

        AsksOnly("systems[0].drums[0].level", Check(At(5, Level(22, "cm")), previous));
        Assert.Empty(Check(At(5, Level(30, "cm")), previous));
    }

    [Fact]
    public void Check_DeliveryUnlikeTheOthers_IsAskedAgain()
    {
        var previous = Weekly(3, _ => Level(20, "cm", added: 25));

        AsksOnly("systems[0].drums[0].addedL", Check(At(3, Level(20, "cm", added: 2.5)), previous));
        Assert.Empty(Check(At(3, Level(20, "cm", added: 20)), previous));
        Assert.Empty(Check(At(3, Level(20, "cm", added: 2.5)), Weekly(3, _ => Level(20, "cm"))));
    }

    [Fact]
    public void Check_HoursFarAboveTheUsual_AreAskedAgain()
    {
        var previous = Weekly(5, i => Hours(100 + (20 * i)));

        AsksOnly("systems[0].hoursRun[0].hours", Check(At(5, Hours(240)), previous));
        Assert.Empty(Check(At(5, Hours(220)), previous));
    }

    [Fact]
    public void Check_RegistersThatPartForTheFirstTime_AreAskedAgainOnce()
    {
        var together = Weekly(4, i => Dial(50_000 + (i * 100_000), 20_000 + (i * 100_000)));
        var parted = At(4, Dial(450_000, 370_000));

        AsksOnly("systems[0].meters[0].total", Check(parted, together));
        Assert.Empty(Check(At(4, Dial(450_000, 415_000)), together));
        Assert.Empty(Check(At(5, Dial(550_000, 420_000)), [.. together, parted]));
    }

    [Fact]
    public void Check_PumpFoundOtherwiseThanLeft_IsAskedAgain()
    {
        static VisitedSystem Pump(double found, double? left = null) => Record() with { Pumps = [new PumpReading { Pump = "P-INH", StrokeFound = found, StrokeLeft = left }] };

        AsksOnly("systems[0].pumps[0].strokeFound", Check(At(1, Pump(16)), At(0, Pump(60))));
        Assert.Empty(Check(At(1, Pump(62)), At(0, Pump(60))));
        Assert.Empty(Check(At(1, Pump(30)), At(0, Pump(60, left: 30))));
    }

    [Fact]
    public void Check_DrawdownFarFromTheLast_IsAskedAgain()
    {
        static VisitedSystem Drawn(double millilitres) => Record() with { Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = millilitres, Seconds = 60 }] };

        AsksOnly("systems[0].drawdowns[0].millilitres", Check(At(1, Drawn(2.5)), At(0, Drawn(25))));
        Assert.Empty(Check(At(1, Drawn(20)), At(0, Drawn(25))));
    }

    [Fact]
    public void Check_DisplayAfterCleaningFarFromBoth_IsAskedAgain()
    {
        static VisitedSystem Probe(double after) => Record() with { Probes = [new ProbeReading { AsFound = 1260, Reference = 1361, AfterCleaning = after, Unit = "uS/cm" }] };

        AsksOnly("systems[0].probes[0].afterCleaning", Check(At(0, Probe(134))));
        Assert.Empty(Check(At(0, Probe(1342))));
    }

    [Fact]
    public void Check_LimitOfAMethodThatChanged_IsAskedAgain()
    {
        var previous = Weekly(2, _ => With(Value("dip-slide", 1000, "[CFU]/mL") with { Qualifier = "<" }));

        AsksOnly("systems[0].readings[0].value", Check(At(2, With(Value("dip-slide", 10000, "[CFU]/mL") with { Qualifier = "<" })), previous));
        Assert.Empty(Check(At(2, With(Value("dip-slide", 1000, "[CFU]/mL") with { Qualifier = "<" })), previous));
    }

    [Fact]
    public void Check_LevelThatChangedForGood_IsAskedAboutOnce()
    {
        var previous = Weekly(6, _ => With(Value("calcium", 30, "mg/L")));
        var changed = At(6, With(Value("calcium", 190, "mg/L")));

        AsksOnly("systems[0].readings[0].value", Check(changed, previous));
        Assert.Empty(Check(At(7, With(Value("calcium", 200, "mg/L"))), [.. previous, changed]));
    }

    [Fact]
    public void Check_LevelThatBlocks_IsNotAlsoAskedAgain()
    {
        var issue = Assert.Single(Check(At(1, Level(80, "cm")), At(0, Level(31, "cm"))));

        Assert.Equal(("systems[0].drums[0].level", "beyond-capacity", true), (issue.Path, issue.Code, issue.Blocks));
    }

    [Theory]
    [InlineData(Language.English, "Please read again: Chloride 1,010\u00a0mg/L, usual here is 100.5; the unit or the point may have slipped (× 10)")]
    [InlineData(Language.Spanish, "Lea de nuevo, por favor: Cloruro 1\u00a0010\u00a0mg/L, lo habitual aquí es 100,5; puede haber un error de unidad o de coma (× 10)")]
    [InlineData(Language.Portuguese, "Leia novamente, por favor: Cloreto 1.010\u00a0mg/L, o habitual aqui é 100,5; pode haver erro de unidade ou de vírgula (× 10)")]
    public void Check_EachLanguage_HasItsWordsAndNumbers(Language language, string message)
    {
        var previous = Weekly(6, _ => With(Value("chloride", 100.5, "mg/L")));

        var issues = VisitChecks.Check(At(6, With(Value("chloride", 1010, "mg/L"))), new VisitContext(Examples.Firm(), previous, language));

        Assert.Equal(message, Assert.Single(issues).Message);
    }

    [Theory]
    [InlineData(Language.English, "2025-07-01T15:30:00Z", "left: 1 Jul 2025 16:30 is before arrived 1 Jul 2025 17:05, expected is not before")]
    [InlineData(Language.Spanish, "2025-07-01T17:50:00+02:00", "al irse: 01/07/2025 16:50 es anterior a llegada 01/07/2025 17:05, se espera que no lo sea")]
    [InlineData(Language.Portuguese, "2025-07-01T17:05:00+01:00", "ao sair: 01/07/2025 17:05:00 é anterior a chegada 01/07/2025 17:05:30, esperado que não seja")]
    public void Check_LeftBeforeArrived_TellsBothByTheClockOfTheSite(Language language, string left, string message)
    {
        Assert.True(Moment.TryParse("2025-07-01T17:05:30+01:00", out var start));
        Assert.True(Moment.TryParse(left, out var end));
        var draft = At(0, Record()) with { Arrived = start, Left = end };

        var issue = Assert.Single(VisitChecks.Check(draft, new VisitContext(Examples.Firm(), [], language)));

        Assert.Equal(("left", "left-before-arrived", message), (issue.Path, issue.Code, issue.Message));
    }

    [Theory]
    [InlineData("conductivity", 1200, 4000, "uS/cm", "Please read again: Conductivity 4,000\u00a0µS/cm, usual here is 1,200")]
    [InlineData("pH", 8, 11.5, "[pH]", "Please read again: pH 11.5, usual here is 8")]
    public void Check_UnitsAreWordedForPeople(string test, double usual, double value, string unit, string message)
    {
        var issue = Assert.Single(Check(At(6, With(Value(test, value, unit))), Weekly(6, _ => With(Value(test, usual, unit)))));

        Assert.Equal(message, issue.Message);
    }

    [Theory]
    [InlineData(5, 1)]
    [InlineData(12, 0)]
    public void Check_ThresholdOfDoubtfulResults_BoundsWhatIsUsual(double suspectTimes, int asked)
    {
        // Values that scatter by half a power of ten and more: seven times the median is beyond the default, not beyond twelve times.
        double[] rough = [10, 60, 12, 100, 20, 80];
        var firm = new Domain.History.FirmSetUp(Examples.Firm().Document) { Engine = Domain.Assessments.EngineSettings.Of([new Domain.Assessments.EngineSettingChange("thresholds:suspectTimes", suspectTimes)]) };
        var previous = Weekly(6, i => With(Value("chloride", rough[i], "mg/L")));

        Assert.Equal(asked, VisitChecks.Check(At(6, With(Value("chloride", 410, "mg/L"))), new VisitContext(firm, previous)).Count);
    }

    [Fact]
    public void CheckField_OneField_TellsOnlyOfItAndAsTheWholeCheckDoes()
    {
        var draft = Examples.Document("visit").Visits[0];
        var record = draft.Systems[0];
        draft = draft with
        {
            Systems =
            [
                record with
                {
                    Readings = [record.Readings[0], record.Readings[1] with { Unit = "mg/L" }, .. record.Readings.Skip(2)],
                    HoursRun = [record.HoursRun[0] with { Hours = -1 }],
                },
            ],
        };
        var context = new VisitContext(Examples.Firm(), []);
        var all = VisitChecks.Check(draft, context);

        Assert.Equal(2, all.Count);
        foreach (var path in new[] { "systems[0].readings[1].unit", "systems[0].hoursRun[0].hours" })
        {
            Assert.Equal(all.Where(i => i.Path == path), VisitChecks.CheckField(draft, context, path));
        }

        Assert.Empty(VisitChecks.CheckField(draft, context, "systems[0].readings[1].value"));
        Assert.Empty(VisitChecks.CheckField(draft, context, "left"));
    }

    [Fact]
    public void CheckField_TwoHundredEarlierVisits_TakesLessThanFiftyMilliseconds()
    {
        var example = Examples.Document("visit").Visits[0];
        var previous = Enumerable.Range(1, 200).Select(i => example with
        {
            Id = Guid.CreateVersion7(new DateTimeOffset(example.Arrived.Utc.AddDays(-i))),
            Arrived = Moment.OfUtc(example.Arrived.Utc.AddDays(-i)),
        });
        var context = new VisitContext(Examples.Firm(), [.. previous]);
        VisitChecks.CheckField(example, context, "systems[0].readings[3].drops");

        var times = new List<double>();
        for (var i = 0; i < 20; i++)
        {
            var start = Stopwatch.GetTimestamp();
            VisitChecks.CheckField(example, context, string.Create(CultureInfo.InvariantCulture, $"systems[0].readings[{i % 6}].value"));
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        // The median, because the machine may be busy with something else once.
        Assert.InRange(times.Order().ElementAt(10), 0, 50);
    }
}
