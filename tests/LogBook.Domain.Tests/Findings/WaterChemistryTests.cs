using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class WaterChemistryTests
{
    [Fact]
    public void MakeUpChanged_ConductivityAndIonsUpAThird_IsPlanAtOnce_AndLeadsOverCycles()
    {
        var plant = Mains(12);

        var first = Mains(plant, 12, 1.35).Assess().Open(FindingKinds.MakeUpChanged);
        var assessment = Mains(plant, 13, 1.35).Assess();

        Assert.Equal(Severity.Plan, first?.Severity);
        Assert.Equal(Severity.Plan, assessment.Open(FindingKinds.MakeUpChanged)?.Severity);
        Assert.True(assessment.Open(FindingKinds.CyclesLow) is null or { Severity: Severity.Watch });
    }

    [Fact]
    public void MakeUpChanged_OneIonTwice_WatchThenPlan()
    {
        var plant = Mains(12);

        var first = Ion(plant, 12, 31).Assess().Open(FindingKinds.MakeUpChanged);
        var second = Ion(plant, 13, 31).Assess().Open(FindingKinds.MakeUpChanged);

        // 31 against 23 mg/L is 35 % and 5 standard deviations of a 5 % drop test.
        Assert.Equal(Severity.Watch, first?.Severity);
        Assert.Equal(Severity.Plan, second?.Severity);
    }

    // Chloride 19 is 17 % under 23 mg/L; with conductivity 11 % under its usual the water as a whole moved by less than 15 %, with 20 % by more.
    [Theory]
    [InlineData(267, Severity.Watch)]
    [InlineData(240, Severity.Plan)]
    public void MakeUpChanged_IonPastTheLimitTwice_AsksThatTheTestsTogetherArePastIt(double conductivity, Severity severity)
    {
        var plant = Mains(12);
        void Next(int visit) => plant.Visit(28 * visit, record => With(record, (TestCodes.Conductivity, conductivity), (TestCodes.Chloride, 19), (TestCodes.Calcium, 82)));

        Next(12);
        Next(13);

        Assert.Equal(severity, plant.Assess().Open(FindingKinds.MakeUpChanged)?.Severity);
    }

    [Fact]
    public void MakeUpChanged_WrongTapOnce_IsWatchAndCloses()
    {
        var plant = Mains(12);
        Ion(plant, 12, 40);
        Ion(plant, 13, 23);

        var found = Assert.Single(plant.Assess().All(FindingKinds.MakeUpChanged));
        Assert.Equal(Severity.Watch, found.Severity);
        Assert.Equal(FindingState.Closed, found.State);
    }

    [Fact]
    public void MakeUpChanged_SeasonalSwing_StaysQuiet()
    {
        var plant = new HistoryBuilder();
        for (var i = 0; i < 36; i++)
        {
            Mains(plant, i, 1 + (0.12 * Math.Sin(2 * Math.PI * i / 26)), 14);
        }

        Assert.Empty(plant.Assess().All(FindingKinds.MakeUpChanged));
    }

    [Fact]
    public void MakeUpChanged_ConductivityAloneWithIonsThatStayed_NeverMoreThanWatch()
    {
        var plant = Mains(12);
        for (var i = 12; i < 15; i++)
        {
            plant.Visit(28 * i, record => With(record, (TestCodes.Conductivity, 300 * 1.25), (TestCodes.Chloride, 23), (TestCodes.Calcium, 82)));
        }

        Assert.Equal(Severity.Watch, Assert.Single(plant.Assess().All(FindingKinds.MakeUpChanged)).Severity);
    }

    [Fact]
    public void MakeUpChanged_SoftenerPasses_IsWatchThenPlan_AndActAboveAQuarterOfRaw()
    {
        var plant = Softened(new HistoryBuilder(), 8, 15);

        var first = Softened(plant, 1, 30).Assess().Open(FindingKinds.MakeUpChanged);
        var second = Softened(plant, 1, 30).Assess().Open(FindingKinds.MakeUpChanged);
        var raw = Softened(plant, 1, 70, raw: 210).Assess().Open(FindingKinds.MakeUpChanged);

        Assert.Equal(Severity.Watch, first?.Severity);
        Assert.Equal(Severity.Plan, second?.Severity);
        Assert.Equal(Severity.Act, raw?.Severity);
    }

    [Fact]
    public void MakeUpChanged_SoftenerStaysBroken_StaysOpen()
    {
        var plant = Softened(new HistoryBuilder(), 8, 15);

        Softened(plant, 14, 200);

        Assert.True(plant.Assess().Open(FindingKinds.MakeUpChanged)?.Severity >= Severity.Plan);
    }

    [Fact]
    public void MakeUpChanged_TowerHardnessAgrees_IsPlanAtOnce()
    {
        var plant = Softened(new HistoryBuilder(), 8, 15);

        Softened(plant, 1, 195, tower: 430);

        Assert.Equal(Severity.Plan, plant.Assess().Open(FindingKinds.MakeUpChanged)?.Severity);
    }

    [Fact]
    public void MakeUpChanged_TooFewReadings_IsNotJudged()
    {
        var assessment = Mains(3).Assess();

        Assert.Empty(assessment.All(FindingKinds.MakeUpChanged));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.MakeUpChanged);
    }

    [Fact]
    public void Depositing_SeventyPercentOfItsOwn_WatchThenPlan()
    {
        var plant = Calcium(new HistoryBuilder(), 7, 82 * 4.4);

        var first = Calcium(plant, 1, 82 * 4.4 * 0.7).Assess().Open(FindingKinds.Depositing);
        var second = Calcium(plant, 1, 82 * 4.4 * 0.7).Assess().Open(FindingKinds.Depositing);

        Assert.Equal(Severity.Watch, first?.Severity);
        Assert.Equal(Severity.Plan, second?.Severity);
    }

    [Fact]
    public void Depositing_HalfOfIt_IsWatchUntilRepeated_AndActWithARisingApproach()
    {
        var plant = new HistoryBuilder();
        for (var i = 0; i < 7; i++)
        {
            Approach(plant, i, 82 * 4.4, 4);
        }

        var found = Calcium(new HistoryBuilder(), 7, 82 * 4.4);
        Assert.Equal(Severity.Watch, Calcium(found, 1, 82 * 2.2).Assess().Open(FindingKinds.Depositing)?.Severity);
        Assert.Equal(Severity.Plan, Calcium(found, 1, 82 * 2.2).Assess().Open(FindingKinds.Depositing)?.Severity);
        Assert.Equal(Severity.Act, Approach(plant, 7, 82 * 2.2, 6.5).Assess().Open(FindingKinds.Depositing)?.Severity);
    }

    // 110 mg/L of alkalinity in the make-up; calcium carbonate takes as much of it as of calcium.
    [Fact]
    public void Depositing_AlkalinityLacksAsMuchAsCalcium_HalfOfItIsPlanAtOnce()
    {
        var plant = WithAlkalinity(new HistoryBuilder(), 7, 82 * 4.4, 110 * 4.4);

        WithAlkalinity(plant, 1, 82 * 2.2, (110 * 4.4) - (82 * 2.2));

        Assert.Equal(Severity.Plan, plant.Assess().Open(FindingKinds.Depositing)?.Severity);
    }

    [Fact]
    public void Depositing_AlkalinityLacksNothing_IsBelievedAtTheThirdVisit()
    {
        var plant = WithAlkalinity(new HistoryBuilder(), 7, 82 * 4.4, 110 * 4.4);
        Severity? Next() => WithAlkalinity(plant, 1, 82 * 2.6, 110 * 4.4).Assess().Open(FindingKinds.Depositing)?.Severity;

        Assert.Equal([Severity.Watch, Severity.Watch, Severity.Plan], [Next(), Next(), Next()]);
    }

    [Fact]
    public void Depositing_SlowlyGrowing_IsNotLearntAsNormal()
    {
        var plant = Calcium(new HistoryBuilder(), 6, 82 * 4.4);
        for (var i = 1; i <= 12; i++)
        {
            Calcium(plant, 1, 82 * 4.4 * (1 - (0.03 * i)));
        }

        Assert.True(plant.Assess().Open(FindingKinds.Depositing)?.Severity >= Severity.Plan);
    }

    [Fact]
    public void Depositing_MakeUpHardnessJustRose_IsNotJudged()
    {
        var plant = Calcium(new HistoryBuilder(), 7, 82 * 4.4);

        plant.Visit(28 * 7, record => WithCalcium(record, 200, 82 * 4.4));

        Assert.Empty(plant.Assess().All(FindingKinds.Depositing));
    }

    [Fact]
    public void Depositing_SoftenedMakeUp_IsNotJudged()
    {
        var plant = Softened(new HistoryBuilder(), 8, 15, tower: 30);

        var assessment = plant.Assess();
        Assert.Empty(assessment.All(FindingKinds.Depositing));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.Depositing && n.Why.Code == "softened-make-up");
    }

    [Fact]
    public void Depositing_HypochloriteWithoutABaseline_IsNotJudgedByAFixedLimit()
    {
        static HistoryBuilder Builder(bool oxidant) => new()
        {
            System = system => system with { Drums = oxidant ? [.. system.Drums, new Drum { Code = "D-OX", Product = "H-12", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }] : system.Drums },
            Programme = programme => programme with { Feeds = oxidant ? [.. programme.Feeds, new Feed { Drum = "D-OX", Mode = FeedMode.ByOrp, SetPoint = 650, Differential = 20, Unit = "mV" }] : programme.Feeds },
        };

        Assert.Empty(Calcium(Builder(true), 2, 82 * 2.9).Assess().All(FindingKinds.Depositing));
        Assert.NotEmpty(Calcium(Builder(false), 2, 82 * 2.9).Assess().All(FindingKinds.Depositing));
    }

    [Fact]
    public void Scaling_IndexAboveTwoAndAHalf_IsWatch_AndPlanWithDeposits()
    {
        // 30 °C, 800 mg/L solids, Ca 600, alkalinity 500, pH 9.2: pHs = 9.3 + 0.190 + B − 2.378 − 2.699.
        var plant = new HistoryBuilder();
        for (var i = 0; i < 6; i++)
        {
            Index(plant, i, 600, 130, 9.2, 500);
        }

        var watch = plant.Assess().Open(FindingKinds.Scaling);
        var plan = Index(plant, 6, 300, 130, 9.6, 500).Assess().Open(FindingKinds.Scaling);

        Assert.Equal(Severity.Watch, watch?.Severity);
        Assert.InRange(watch!.Evidence[0].Value!.Value, 2.5, 3.0);
        Assert.Equal(Severity.Plan, plan?.Severity);
    }

    [Fact]
    public void Scaling_UsualTreatedTower_StaysQuiet()
    {
        // Index about +1.7: by design.
        Assert.Empty(Index(new HistoryBuilder(), 0, 370, 82, 8.6, 340).Assess().All(FindingKinds.Scaling));
    }

    [Theory]
    [InlineData(140, 0)]
    [InlineData(160, 1)]
    public void Scaling_Silica_HasItsOwnLimit(double silica, int expected)
    {
        var plant = new HistoryBuilder().Visit(0, record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.Silica, silica, "mg/L")] });

        Assert.Equal(expected, plant.Assess().All(FindingKinds.Scaling).Count);
    }

    [Theory]
    [InlineData(TestCodes.CorrosionSteel, 4.9, null)]
    [InlineData(TestCodes.CorrosionSteel, 6.0, Severity.Plan)]
    [InlineData(TestCodes.CorrosionSteel, 11.0, Severity.Act)]
    [InlineData(TestCodes.CorrosionCopper, 0.3, null)]
    [InlineData(TestCodes.CorrosionCopper, 0.5, Severity.Plan)]
    [InlineData(TestCodes.CorrosionCopper, 1.2, Severity.Act)]
    public void Corrosive_Coupon_ByItsBand(string test, double rate, Severity? expected)
    {
        var plant = new HistoryBuilder().Visit(0, record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(test, rate, "[mil_i]/a")] });

        Assert.Equal(expected, plant.Assess().Open(FindingKinds.Corrosive)?.Severity);
    }

    [Fact]
    public void Corrosive_TwoCouponsInAMonth_CannotHaveHungThirtyDays()
    {
        var plant = new HistoryBuilder();
        foreach (var day in new[] { 0.0, 20 })
        {
            plant.Visit(day, record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.CorrosionSteel, 12, "[mil_i]/a")] });
        }

        Assert.Equal(Severity.Watch, plant.Assess().Open(FindingKinds.Corrosive)?.Severity);
    }

    [Theory]
    [InlineData(60, 8.6, Severity.Plan)]
    [InlineData(60, 8.1, null)]
    [InlineData(100, 8.6, null)]
    public void Corrosive_NewGalvanisedSteel_IsHeldBelowItsPhForTwelveWeeks(int ageDays, double ph, Severity? expected)
    {
        var plant = new HistoryBuilder
        {
            System = system => system with { Metals = [Metal.Galvanised], NewGalvanisedFrom = DateOnly.FromDateTime(HistoryBuilder.Start).AddDays(-ageDays) },
        };
        plant.Visit(0, record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.Ph, ph, "[pH]")] });

        Assert.Equal(expected, plant.Assess().Open(FindingKinds.Corrosive)?.Severity);
    }

    [Fact]
    public void Corrosive_IndexAlone_IsWatch()
    {
        Assert.Equal(Severity.Watch, Index(new HistoryBuilder(), 0, 40, 20, 7.0, 40).Assess().Open(FindingKinds.Corrosive)?.Severity);
    }

    private static HistoryBuilder Mains(int visits)
    {
        var plant = new HistoryBuilder();
        for (var i = 0; i < visits; i++)
        {
            Mains(plant, i, 1);
        }

        return plant;
    }

    private static HistoryBuilder Mains(HistoryBuilder plant, int visit, double times, double every = 28) => plant.Visit(every * visit, record =>
        With(record, (TestCodes.Conductivity, 300 * times), (TestCodes.Chloride, 23 * times), (TestCodes.Calcium, 82 * times)));

    private static HistoryBuilder Ion(HistoryBuilder plant, int visit, double chloride) => plant.Visit(28 * visit, record =>
        With(record, (TestCodes.Conductivity, 300), (TestCodes.Chloride, chloride), (TestCodes.Calcium, 82)));

    private static VisitedSystem With(VisitedSystem record, params (string Test, double Value)[] makeUp) => record with
    {
        Readings =
        [
            .. record.Readings.Where(reading => reading.At != SamplePoints.MakeUp),
            .. makeUp.Select(pair => HistoryBuilder.MakeUp(pair.Test, pair.Value, pair.Test == TestCodes.Conductivity ? "uS/cm" : "mg/L")),
        ],
    };

    private static HistoryBuilder Softened(HistoryBuilder plant, int visits, double hardness, double? raw = null, double? tower = 60)
    {
        for (var i = 0; i < visits; i++)
        {
            plant.Visit(28 * plant.Visits.Count, record => record with
            {
                Readings =
                [
                    .. record.Readings,
                    HistoryBuilder.MakeUp(TestCodes.Calcium, hardness, "mg/L"),
                    HistoryBuilder.MakeUp(TestCodes.Alkalinity, 110, "mg/L"),
                    .. raw is { } before ? [new Reading { At = SamplePoints.Raw, Test = TestCodes.Calcium, Value = before, Unit = "mg/L" }] : Array.Empty<Reading>(),
                    .. tower is { } inTower ? [HistoryBuilder.Tower(TestCodes.Calcium, inTower, "mg/L")] : Array.Empty<Reading>(),
                ],
            });
        }

        return plant;
    }

    private static VisitedSystem WithCalcium(VisitedSystem record, double makeUp, double tower) => record with
    {
        Readings = [.. record.Readings, HistoryBuilder.MakeUp(TestCodes.Calcium, makeUp, "mg/L"), HistoryBuilder.Tower(TestCodes.Calcium, tower, "mg/L")],
    };

    private static HistoryBuilder Calcium(HistoryBuilder plant, int visits, double tower)
    {
        for (var i = 0; i < visits; i++)
        {
            plant.Visit(28 * plant.Visits.Count, record => WithCalcium(record, 82, tower));
        }

        return plant;
    }

    private static HistoryBuilder WithAlkalinity(HistoryBuilder plant, int visits, double calcium, double alkalinity)
    {
        for (var i = 0; i < visits; i++)
        {
            plant.Visit(28 * plant.Visits.Count, record =>
            {
                var with = WithCalcium(record, 82, calcium);
                return with with { Readings = [.. with.Readings, HistoryBuilder.MakeUp(TestCodes.Alkalinity, 110, "mg/L"), HistoryBuilder.Tower(TestCodes.Alkalinity, alkalinity, "mg/L")] };
            });
        }

        return plant;
    }

    private static HistoryBuilder Approach(HistoryBuilder plant, int visit, double tower, double kelvin) => plant.Visit(28 * visit, record =>
    {
        var with = WithCalcium(record, 82, tower);
        return with with { Readings = [.. with.Readings, HistoryBuilder.Tower(TestCodes.Approach, kelvin, "Cel")] };
    });

    private static HistoryBuilder Index(HistoryBuilder plant, int visit, double calcium, double makeUp, double ph, double alkalinity) => plant.Visit(28 * visit, record =>
    {
        var with = WithCalcium(record, makeUp, calcium);
        return with with
        {
            Readings =
            [
                .. with.Readings,
                HistoryBuilder.Tower(TestCodes.Ph, ph, "[pH]"),
                HistoryBuilder.Tower(TestCodes.Alkalinity, alkalinity, "mg/L"),
                HistoryBuilder.Tower(TestCodes.Temperature, 30, "Cel"),
            ],
        };
    });
}
