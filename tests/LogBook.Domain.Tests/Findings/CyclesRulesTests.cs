using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class CyclesRulesTests
{
    [Fact]
    public void CyclesHigh_TwentyTwoPercentOnTwoVisits_IsWatchThenPlan()
    {
        var builder = new HistoryBuilder().Every(28, 7);
        builder.Cycles = 5.5;
        builder.Chloride = 5.5 * 23;
        var first = builder.Visit(196).Assess().Open(FindingKinds.CyclesHigh);
        var second = builder.Visit(224).Assess().Open(FindingKinds.CyclesHigh);

        // 5.5 / 4.5 − 1 = 22.2 %: above 15 %, below 30 %. Make-up and routes agree, so both routes tell the same.
        Assert.Equal(Severity.Watch, first!.Severity);
        Assert.Equal(22.2, first.Evidence[0].Value!.Value, 0.6);
        Assert.Equal(Severity.Plan, second!.Severity);
        Assert.Equal(new DateOnly(2025, 7, 21), second.FirstSeen);
    }

    [Theory]
    [InlineData(FindingKinds.CyclesHigh, 5.5, 5.5 * 23)]
    [InlineData(FindingKinds.CyclesDisagree, 4.5, 140)]
    public void SecondVisitWithoutMakeUp_IsNoSecondWitness(string kind, double cycles, double chloride)
    {
        var builder = new HistoryBuilder().Every(28, 7);
        (builder.Cycles, builder.Chloride) = (cycles, chloride);
        builder.Visit(196).Visit(210, record => record with { Readings = [.. record.Readings.Where(reading => reading.At != SamplePoints.MakeUp)] });
        var second = builder.Assess().Open(kind);
        var third = builder.Visit(224).Assess().Open(kind);

        Assert.Equal((Severity.Watch, Severity.Plan), (second!.Severity, third!.Severity));
    }

    [Fact]
    public void CyclesLow_FortyPercentOnce_IsPlanAtOnce()
    {
        var builder = new HistoryBuilder().Every(28, 7);
        builder.Cycles = 2.7;
        builder.Chloride = 2.7 * 23;

        Assert.Equal(Severity.Plan, builder.Visit(196).Assess().Open(FindingKinds.CyclesLow)!.Severity);
    }

    [Fact]
    public void TowerAndMakeUpInEachOthersFields_RaiseNothing()
    {
        // 300 for the tower and 1,361 for the make-up: no evaporation thins the water, so neither counts, now or in the make-up mean.
        var builder = new HistoryBuilder().Every(14, 10);
        builder.Visit(140, record => record with
        {
            Readings =
            [
                HistoryBuilder.Tower(TestCodes.Conductivity, 300, "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" },
                HistoryBuilder.MakeUp(TestCodes.Conductivity, HistoryBuilder.ConductivityAt(4.5), "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" },
                .. record.Readings.Where(reading => reading.Test != TestCodes.Conductivity),
            ],
        });
        string[] kinds = [FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.CyclesDisagree, FindingKinds.WaterLoss, FindingKinds.MakeUpChanged, FindingKinds.ConductivityOut, FindingKinds.FeedLow, FindingKinds.FeedHigh];

        Assert.DoesNotContain(builder.Visit(154).Visit(168).Assess().Findings, finding => kinds.Contains(finding.InEnglish.Kind));
    }

    [Fact]
    public void ReferenceMisread_AgainstTheDisplay_IsWatchUntilTheNextVisit()
    {
        // 681 written for 1,361 while the display shows 1,355; no chloride was tested.
        static VisitedSystem Misread(VisitedSystem record) => record with
        {
            Readings =
            [
                HistoryBuilder.Tower(TestCodes.Conductivity, 681, "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" },
                HistoryBuilder.Tower(TestCodes.Conductivity, 1355, "uS/cm") with { Source = ReadingSource.Controller },
                .. record.Readings.Where(r => r.At == SamplePoints.MakeUp),
            ],
            Probes = [],
            Meters = [],
        };
        var builder = new HistoryBuilder().Every(28, 7);
        var once = builder.Visit(196, Misread).Assess();
        var twice = builder.Visit(224, Misread).Assess();

        Assert.Equal(Severity.Watch, once.Open(FindingKinds.ConductivityOut)!.Severity);
        Assert.Equal(Severity.Watch, once.Open(FindingKinds.CyclesLow)!.Severity);
        Assert.Equal(Severity.Plan, twice.Open(FindingKinds.ConductivityOut)!.Severity);
    }

    [Fact]
    public void CyclesLow_ConductivityUnderReads_IsNoFinding()
    {
        // Conductivity tells 4.5 × 0.9125 = 4.11 cycles, 9 % low: the factor 1 − 0.025 (C − 1) takes that away.
        var assessment = new HistoryBuilder().Visit(0, record => record with { Readings = [.. record.Readings.Where(r => r.Test != TestCodes.Chloride)] }).Assess();

        Assert.Empty(assessment.All(FindingKinds.CyclesLow));
        Assert.Equal(4.5, assessment.Figures.Single(f => f.Code == FigureCodes.CyclesByConductivity).Result.Value.Value, 0.001);
    }

    [Fact]
    public void CyclesLow_IdlePlant_IsNotJudged()
    {
        var builder = new HistoryBuilder().Every(28, 7);
        builder.Cycles = 2.7;
        builder.Chloride = 2.7 * 23;
        var assessment = builder.Visit(196, record => record with { Running = false }).Assess();

        Assert.Empty(assessment.All(FindingKinds.CyclesLow));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.CyclesLow && n.Why.Code == "not-enough-running-time");
    }

    [Fact]
    public void CyclesLow_JustRefilled_IsNotJudged()
    {
        var builder = new HistoryBuilder().Every(28, 7);
        builder.Cycles = 1.5;
        builder.Chloride = 1.5 * 23;

        Assert.Empty(builder.Visit(196, record => record with { Events = [new VisitEvent { Type = EventType.Refilled }] }).Assess().All(FindingKinds.CyclesLow));
    }

    [Fact]
    public void ConductivityOut_AboveRangeTwice_IsPlan_AboveAlarm_IsAct()
    {
        var builder = new HistoryBuilder().Every(28, 3);

        // 1.10 × 1232 = 1355; 2u at 1440 is 2 × sqrt(1 + 1 + 2.25) % = 4.1 % or 59: 1440 − 59 is above.
        builder.Visit(84, Tower(1440));
        Assert.Equal(Severity.Watch, builder.Assess().Open(FindingKinds.ConductivityOut)!.Severity);
        builder.Visit(112, Tower(1440));
        Assert.Equal(Severity.Plan, builder.Assess().Open(FindingKinds.ConductivityOut)!.Severity);
        builder.Visit(140, Tower(1500));
        Assert.Equal(Severity.Act, builder.Assess().Open(FindingKinds.ConductivityOut)!.Severity);
    }

    [Fact]
    public void ConductivityOut_DuringAHold_IsNotJudged()
    {
        // Monday 6 January 2025 + 84 days is a Monday: a dose at 07:00 holds the bleed for four hours, the visit is at 08:00 or 09:00 UTC.
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with
            {
                Feeds = [.. programme.Feeds, new Feed { Drum = "D-B1", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [Weekday.Monday], Starts = ["07:00"], RunMinutes = 19, HoldBleedShutMin = 240 }],
            },
        };

        Assert.Empty(builder.Every(28, 3).Visit(84, Tower(1440)).Assess().All(FindingKinds.ConductivityOut));
    }

    [Fact]
    public void CyclesDisagree_OffOwnBaselineTwice_IsPlan()
    {
        var builder = new HistoryBuilder().Every(28, 6);
        builder.Chloride = 140;
        builder.Visit(168);
        var first = builder.Assess().Open(FindingKinds.CyclesDisagree);
        builder.Visit(196);
        var second = builder.Assess().Open(FindingKinds.CyclesDisagree);

        // Own ratio 0.9125; now (1231.9 / 300) / (140 / 23) = 4.106 / 6.087 = 0.675, 26 % below.
        Assert.Equal(0.6746, first!.Evidence[0].Value!.Value, 0.001);
        Assert.Equal(0.9125 * 0.85, first.Evidence[0].LimitLow!.Value, 0.002);
        Assert.Equal(Severity.Watch, first.Severity);
        Assert.Equal(Severity.Plan, second!.Severity);
    }

    [Fact]
    public void CyclesDisagree_UnderReadingBeforeABaseline_IsNone() =>
        Assert.Empty(new HistoryBuilder().Every(28, 2).Assess().All(FindingKinds.CyclesDisagree));

    [Fact]
    public void CyclesDisagree_ChlorideRaisedByBleachBeforeABaseline_IsNotJudged()
    {
        var builder = new HistoryBuilder
        {
            Chloride = 250,
            Programme = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-OX", Mode = FeedMode.ByOrp, SetPoint = 650, Unit = "mV" }] },
            System = system => system with { Drums = [.. system.Drums, new Domain.Sites.Drum { Code = "D-OX", Product = "H-12", Shape = Domain.Sites.DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }] },
        };

        Assert.Empty(builder.Every(28, 2).Assess().All(FindingKinds.CyclesDisagree));
    }

    [Theory]
    [InlineData("H-12", "N-15", true)]
    [InlineData("N-15", "H-12", false)]
    public void CyclesDisagree_DrumThatTookAnotherProduct_CountsByTheOneOfTheDay(string before, string now, bool found)
    {
        // From the day before the first visit on; what the drum held until then adds no chloride any more, or did not yet.
        var drum = new Domain.Sites.Drum { Code = "D-OX", Product = before, Shape = Domain.Sites.DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 };
        var builder = new HistoryBuilder
        {
            Chloride = 250,
            Programme = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-OX", Mode = FeedMode.ByOrp, SetPoint = 650, Unit = "mV" }] },
            System = system => system with { Drums = [.. system.Drums, drum, drum with { Product = now, From = new DateOnly(2025, 1, 5) }] },
        };

        Assert.Equal(found, builder.Every(28, 2).Assess().All(FindingKinds.CyclesDisagree).Any());
    }

    private static Func<VisitedSystem, VisitedSystem> Tower(double conductivity) => record => record with
    {
        Readings = [HistoryBuilder.Tower(TestCodes.Conductivity, conductivity, "uS/cm") with { Source = ReadingSource.Reference, Instrument = "HM-1" }],
        Probes = [],
    };
}
