using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class WaterLossTests
{
    private const double NormalHours = 4.3;

    [Fact]
    public void Judge_AThirdOfTheBleedGoesElsewhere_WatchThenPlan()
    {
        var plant = Healthy();

        plant.BleedHoursPerDay = 0.65 * NormalHours;
        var first = plant.Every(28, 1).Assess().Open(FindingKinds.WaterLoss);
        var second = plant.Every(28, 1).Assess().Open(FindingKinds.WaterLoss);

        Assert.Equal(Severity.Watch, first?.Severity);
        Assert.Equal(Severity.Plan, second?.Severity);
        Assert.InRange(second!.Evidence[0].Value!.Value, 28, 42);
        Assert.Equal(25, second.Evidence[0].LimitHigh);
    }

    [Fact]
    public void Judge_HoursSlowlyHalved_IsFoundByThen()
    {
        var plant = Healthy();

        // Conductivity and make-up do not move; a baseline that followed along would never see it.
        for (var month = 1; month <= 6; month++)
        {
            plant.BleedHoursPerDay = NormalHours * (1 - (month / 12.0));
            plant.Every(28, 1);
        }

        Assert.True(plant.Assess().Open(FindingKinds.WaterLoss)?.Severity >= Severity.Plan);
    }

    [Fact]
    public void Judge_LossSwallowsTheBleed_Act()
    {
        var plant = Healthy();

        plant.BleedHoursPerDay = 0;
        plant.Cycles = 3.6;
        plant.Chloride = 3.6 * 23;
        plant.Every(28, 2);

        var found = plant.Assess().Open(FindingKinds.WaterLoss);
        Assert.Equal(Severity.Act, found?.Severity);
        Assert.Equal(FindingKinds.WaterLoss, found!.Suggests[0].Cause);
    }

    [Fact]
    public void Judge_InhibitorFeedsAlongsideTheBleed_Act()
    {
        var plant = Healthy(new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.AlongsideBleed, TargetMgPerL = 100 }] },
        });

        plant.BleedHoursPerDay = 0.65 * NormalHours;
        plant.Every(28, 2);

        Assert.Equal(Severity.Act, plant.Assess().Open(FindingKinds.WaterLoss)?.Severity);
    }

    [Theory]
    [InlineData("N-15", "P-40", Severity.Act)]
    [InlineData("P-40", "N-15", Severity.Plan)]
    public void Judge_DrumThatTookAnotherProduct_CountsByTheOneOfTheDay(string before, string now, Severity expected)
    {
        // A leak takes the inhibitor's feed with it, where the drum alongside the bleed holds inhibitor today.
        var drum = new Drum { Code = "D-2", Product = before, Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 };
        var plant = Healthy(new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-2", Output = "second", Mode = FeedMode.AlongsideBleed }] },
            System = system => system with { Drums = [.. system.Drums, drum, drum with { Product = now, From = new DateOnly(2025, 1, 5) }] },
        });

        plant.BleedHoursPerDay = 0.65 * NormalHours;
        plant.Every(28, 2);

        Assert.Equal(expected, plant.Assess().Open(FindingKinds.WaterLoss)?.Severity);
    }

    [Fact]
    public void Judge_LowLoadWithFixedDrift_StaysQuiet()
    {
        // Old eliminators: 0.43 m³ a day go whatever the load, a tenth of the loss in the busy season and half of it at a fifth of the load.
        const double drift = 430;
        var plant = new HistoryBuilder { BleedHoursPerDay = ((19_400 / 4.5) - drift) / 1000 };
        plant.Every(28, 7);

        plant.MakeUpPerDayL = 0.2 * 19_400;
        plant.BleedHoursPerDay = ((0.2 * 19_400 / 4.5) - drift) / 1000;
        plant.Every(28, 4);

        Assert.Empty(plant.Assess().All(FindingKinds.WaterLoss));
    }

    [Theory]
    [InlineData(1.25)]
    [InlineData(0.8)]
    public void Judge_LoadSwings_StaysQuiet(double load)
    {
        var plant = Healthy();

        plant.MakeUpPerDayL *= load;
        plant.BleedHoursPerDay *= load;
        plant.Every(28, 4);

        Assert.Empty(plant.Assess().All(FindingKinds.WaterLoss));
    }

    [Fact]
    public void Judge_OtherCyclesAtTheSameMakeUp_StaysQuiet()
    {
        var plant = Healthy();

        // The probe reads low: the water thickens and the bleed opens less. The ions tell, so nothing is missing.
        plant.Cycles = 5.4;
        plant.Chloride = 5.4 * 23;
        plant.BleedHoursPerDay = 19.4 / 5.4;
        plant.Every(28, 3);

        Assert.Empty(plant.Assess().All(FindingKinds.WaterLoss));
    }

    [Fact]
    public void Judge_ValveRenewed_LearnsAnew()
    {
        var plant = Healthy();
        plant.Visit(200, record => record with { Events = [new VisitEvent { Type = EventType.ValveRenewed }] });

        plant.System = system => system with { BleedValveLPerH = 2_000 };
        plant.BleedHoursPerDay = NormalHours / 2;
        plant.Every(28, 4);

        Assert.DoesNotContain(plant.Assess().All(FindingKinds.WaterLoss), found => found.Severity > Severity.Watch);
    }

    [Fact]
    public void Judge_BlockedBleedWhileLearning_IsNotLearntAsNormal()
    {
        var plant = new HistoryBuilder().Every(28, 3);
        plant.BleedHoursPerDay = 2.5 * NormalHours;
        plant.Every(28, 4);

        plant.BleedHoursPerDay = NormalHours;
        plant.Every(28, 4);

        Assert.Empty(plant.Assess().All(FindingKinds.WaterLoss));
    }

    [Fact]
    public void Judge_HoursLeftOutAtSomeVisits_AreTakenOverTheWholeSpan()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0;
        foreach (var day in new[] { 196.0, 224, 252 })
        {
            plant.Visit(day, record => record with { HoursRun = [] });
        }

        var before = plant.Assess();
        var after = plant.Every(28, 1).Assess();

        Assert.Empty(before.All(FindingKinds.WaterLoss));
        Assert.Contains(before.NotJudged, n => n.Kind == FindingKinds.WaterLoss);
        Assert.True(after.Open(FindingKinds.WaterLoss)?.Severity >= Severity.Plan);
    }

    [Fact]
    public void Judge_ValveFlowNotOnFile_IsStillFoundAgainstTheOwnHistory()
    {
        var plant = Healthy(new HistoryBuilder { System = system => system with { BleedValveLPerH = null } });

        plant.BleedHoursPerDay = 0.5 * NormalHours;
        plant.Every(28, 2);

        Assert.True(plant.Assess().Open(FindingKinds.WaterLoss)?.Severity >= Severity.Plan);
    }

    [Fact]
    public void Judge_NoMakeUpMeter_SaysNothingOfTheBleed()
    {
        var plant = new HistoryBuilder { System = system => system with { Meters = [] } };
        for (var i = 0; i < 10; i++)
        {
            plant.BleedHoursPerDay = i < 7 ? NormalHours : 1;
            plant.Visit(28 * i, record => record with { Meters = [] });
        }

        Assert.Empty(plant.Assess().All(FindingKinds.WaterLoss));
    }

    [Fact]
    public void Judge_OneVisitAfterTheSetPointMoved_IsNotJudged()
    {
        var plant = Healthy();

        plant.BleedHoursPerDay = 0.3 * NormalHours;
        plant.Visit(28 * 8, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1500), Left = SettingValue.Of(1232) }] });

        var assessment = plant.Assess();
        Assert.Empty(assessment.All(FindingKinds.WaterLoss));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.WaterLoss);
    }

    [Fact]
    public void Judge_StandingPlantTakesWater_IsFoundByTheRegister()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0;
        plant.MakeUpPerDayL = 3_500;
        plant.Visit(200, Standing);

        plant.Visit(207, Standing);

        var found = plant.Assess().Open(FindingKinds.WaterLoss);
        Assert.Equal(Severity.Plan, found?.Severity);
        Assert.Contains("stood still", found!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_StandingPlantRefilledAfterADrain_StaysQuiet()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0;
        plant.MakeUpPerDayL = 3_500;
        plant.Visit(200, Standing);

        plant.Visit(207, record => Standing(record) with { Events = [new VisitEvent { Type = EventType.Refilled }] });

        Assert.Null(plant.Assess().Open(FindingKinds.WaterLoss));
    }

    [Fact]
    public void Judge_RepairedLeak_Closes()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0.3 * NormalHours;
        plant.Every(28, 3);

        plant.BleedHoursPerDay = NormalHours;
        plant.Every(28, 1);

        Assert.Equal(FindingState.Closed, Assert.Single(plant.Assess().All(FindingKinds.WaterLoss)).State);
    }

    [Fact]
    public void Judge_Leak_LeadsOverTheCyclesItExplains()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0;
        plant.Cycles = 2.8;
        plant.Chloride = 2.8 * 23;
        plant.Every(28, 3);

        var assessment = plant.Assess();
        Assert.Equal(Severity.Act, assessment.Open(FindingKinds.WaterLoss)?.Severity);
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.CyclesLow)?.Severity);
    }

    [Fact]
    public void Judge_HoursGrowAndConductivityRises_BleedDoesNotFlow()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 16;
        plant.Cycles = 6;
        plant.Chloride = 6 * 23;
        plant.Every(28, 1);

        var found = plant.Assess().Open(FindingKinds.BleedNotFlowing);
        Assert.Equal(Severity.Act, found?.Severity);
        Assert.Equal("bleed", found!.About?.Output);
    }

    [Fact]
    public void Judge_HoursGrowButConductivityHolds_OnlyWatch()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 9;
        plant.Every(28, 2);

        Assert.Equal(Severity.Watch, plant.Assess().Open(FindingKinds.BleedNotFlowing)?.Severity);
    }

    [Fact]
    public void Judge_PeakLoadWithHighConductivity_IsNoBlockedBleed()
    {
        var plant = Healthy();
        plant.MakeUpPerDayL *= 2;
        plant.BleedHoursPerDay *= 1.7;
        plant.Cycles = 5.3;
        plant.Chloride = 5.3 * 23;
        plant.Every(28, 2);

        Assert.Empty(plant.Assess().All(FindingKinds.BleedNotFlowing));
    }

    [Fact]
    public void Judge_BucketStaysEmpty_BleedDoesNotFlow()
    {
        var plant = Healthy();

        plant.Visit(200, record => record with { BleedTest = new BleedTest { Litres = 1, Seconds = 60 } });

        Assert.Equal(Severity.Act, plant.Assess().Open(FindingKinds.BleedNotFlowing)?.Severity);
    }

    [Fact]
    public void Judge_FlowsAllDayWithTheOutputOff_BleedDoesNotClose()
    {
        var plant = Healthy();

        // Evaporation 15.1 m³ and 20 m³ through the valve: cycles 35.1 / 20.
        plant.MakeUpPerDayL = 35_100;
        plant.BleedHoursPerDay = 0;
        plant.Cycles = 1.755;
        plant.Chloride = 1.755 * 23;
        plant.Every(28, 2);

        var assessment = plant.Assess();
        Assert.Equal(Severity.Act, assessment.Open(FindingKinds.BleedNotClosing)?.Severity);
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.WaterLoss)?.Severity);
    }

    [Fact]
    public void Judge_ALeakSmallerThanTheValve_IsNotCalledAValveThatDoesNotClose()
    {
        var plant = Healthy();
        plant.BleedHoursPerDay = 0;
        plant.Cycles = 3;
        plant.Chloride = 69;
        plant.Every(28, 2);

        Assert.Empty(plant.Assess().All(FindingKinds.BleedNotClosing));
    }

    private static HistoryBuilder Healthy(HistoryBuilder? plant = null) => (plant ?? new HistoryBuilder()).Every(28, 7);

    private static VisitedSystem Standing(VisitedSystem record) => record with { Running = false, InUse = false };
}
