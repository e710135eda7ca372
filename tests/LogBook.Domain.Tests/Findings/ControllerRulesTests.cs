using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class ControllerRulesTests
{
    private static readonly Feed Biocide = new() { Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [Weekday.Tuesday], Starts = ["14:00"], RunMinutes = 19 };

    [Theory]
    [InlineData(20, null)]
    [InlineData(40, Severity.Plan)]
    [InlineData(-660, Severity.Plan)]
    [InlineData(-1500, Severity.Act)]
    public void ControllerClock_ByItsDifference(double minutes, Severity? expected) =>
        Assert.Equal(expected, Clock(new HistoryBuilder(), minutes).Assess().Open(FindingKinds.ControllerClock)?.Severity);

    [Fact]
    public void ControllerClock_AnHourBehindInSummer_IsWatch()
    {
        // 196 days after 6 January is 21 July.
        var finding = new HistoryBuilder().Visit(0).Visit(196, record => record with { ClockOffByMin = -60 }).Assess().Open(FindingKinds.ControllerClock);

        Assert.Equal(Severity.Watch, finding!.Severity);
    }

    [Fact]
    public void ControllerClock_DoseMovedOutOfTheRunPattern_IsAct()
    {
        // The plant runs 08:00 to 18:00; a dose meant for 14:00 on a clock 11 h behind starts at 01:00 the next day.
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [Biocide] },
            System = system => system with { Operation = new Operation { Week = [new OperatingHours { Days = [.. Enum.GetValues<Weekday>()], From = "08:00", To = "18:00" }] } },
        };

        Assert.Equal(Severity.Act, Clock(builder, -660).Assess().Open(FindingKinds.ControllerClock)!.Severity);
    }

    [Fact]
    public void ControllerClock_WrongWeekOfThePlan_IsAct()
    {
        // Programme from Monday 2 December 2024: 6 January 2025 is day 35, week 6, so week 2 of 4.
        var builder = new HistoryBuilder { Programme = programme => programme with { Feeds = [Biocide] } };

        Assert.Empty(new HistoryBuilder { Programme = builder.Programme }.Visit(0, record => record with { ProgrammeWeek = 2 }).Assess().All(FindingKinds.ControllerClock));
        Assert.Equal(Severity.Act, builder.Visit(0, record => record with { ProgrammeWeek = 3 }).Assess().Open(FindingKinds.ControllerClock)!.Severity);
    }

    [Fact]
    public void AlarmStanding_OnTheBleed_IsAct_Elsewhere_IsPlan_Gone_IsNone()
    {
        Assert.Equal(Severity.Act, Alarm("bleed ran too long", "bleed", true).Assess().Open(FindingKinds.AlarmStanding)!.Severity);
        Assert.Equal(Severity.Plan, Alarm("drum low", "inhibitor", true).Assess().Open(FindingKinds.AlarmStanding)!.Severity);
        Assert.Empty(Alarm("no flow", null, false).Assess().All(FindingKinds.AlarmStanding));
    }

    [Fact]
    public void AlarmStanding_NoFlowWhileIdle_IsNotJudged() => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Running = false, Alarms = [new AlarmReading { Text = "no flow", Standing = true }] }).Assess().All(FindingKinds.AlarmStanding));

    [Fact]
    public void AlarmStanding_ClearedAtTheNextVisit_Closes() =>
        Assert.Equal(FindingState.Closed, Alarm("drum low", "inhibitor", true).Visit(84).Assess().All(FindingKinds.AlarmStanding).Single().State);

    [Fact]
    public void PulsesLost_TotalStoodStill_IsPlan()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        builder.TotalShare = 0;
        var finding = builder.Visit(84).Assess().Open(FindingKinds.PulsesLost);

        Assert.Equal(Severity.Plan, finding!.Severity);
        Assert.Equal(-100, finding.Evidence[0].Value);
    }

    [Fact]
    public void PulsesLost_TwoPercentApart_IsNone()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        builder.TotalShare = 0.98;

        Assert.Empty(builder.Visit(84).Assess().All(FindingKinds.PulsesLost));
    }

    // The total stood at 1,639,600 like the dial and was written with two digits exchanged: half of the water seems lost.
    [Fact]
    public void PulsesLost_TwoDigitsExchanged_IsWatchAndTakenBackByTheNextVisit()
    {
        var builder = new HistoryBuilder().Every(28, 3).Visit(84, record => record with { Meters = [record.Meters[0] with { Total = 1_369_600 }] });
        var first = builder.Assess().Open(FindingKinds.PulsesLost);

        Assert.Equal(Severity.Watch, first!.Severity);
        Assert.Equal(-49.7, first.Evidence[0].Value!.Value, 0.1);
        Assert.Null(builder.Visit(112).Assess().Open(FindingKinds.PulsesLost));
    }

    [Fact]
    public void PulsesLost_FactorOfAGallon_SuspectsTheUnit()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        builder.TotalShare = 1 / 3.785;

        Assert.Equal(FindingKinds.SettingsChanged, builder.Visit(84).Assess().Open(FindingKinds.PulsesLost)!.Suggests[0].Cause);
    }

    [Fact]
    public void PulsesLost_TotalReset_IsNotJudged()
    {
        var assessment = new HistoryBuilder().Every(28, 3).Visit(84, record => record with { Meters = [record.Meters[0] with { Total = 12, Reset = true }] }).Assess();

        Assert.Empty(assessment.All(FindingKinds.PulsesLost));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.PulsesLost);
    }

    [Fact]
    public void SettingsLost_SixOfTen_IsActAndLeadsSettingsChanged()
    {
        var assessment = new HistoryBuilder().Visit(0, Settings(i => i)).Visit(28, Settings(i => i < 6 ? i + 100 : i)).Assess();

        var lost = assessment.Open(FindingKinds.SettingsLost)!;
        Assert.Equal((Severity.Act, 6.0), (lost.Severity, lost.Evidence[0].Value!.Value));
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.SettingsChanged)!.Severity);
    }

    [Fact]
    public void SettingsLost_TwoOfTen_IsOnlyChanged()
    {
        var assessment = new HistoryBuilder().Visit(0, Settings(i => i)).Visit(28, Settings(i => i < 2 ? i + 100 : i)).Assess();

        Assert.Empty(assessment.All(FindingKinds.SettingsLost));
        Assert.NotNull(assessment.Open(FindingKinds.SettingsChanged));
    }

    [Fact]
    public void SettingsLost_DosePlanEmpty_IsAct()
    {
        static Func<VisitedSystem, VisitedSystem> Starts(string text) => record => record with
        {
            Settings = [new SettingReading { Name = "biocide-1/starts", Found = SettingValue.Of(text), Left = SettingValue.Of(text) }],
        };

        Assert.Equal(Severity.Act, new HistoryBuilder().Visit(0, Starts("21:30")).Visit(28, Starts("none")).Assess().Open(FindingKinds.SettingsLost)!.Severity);
    }

    [Theory]
    [InlineData(6.8, false, Severity.Act)]
    [InlineData(7.2, false, Severity.Plan)]
    [InlineData(7.6, false, null)]
    [InlineData(6.4, true, Severity.Act)]
    public void RangeOut_Ph(double ph, bool hasAcid, Severity? expected)
    {
        // Range 7.5 to 9.0; 2u = 0.2. Without acid below 7.0, with acid below 7.5 − 1.0 wants somebody at once.
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with { Ranges = [new TestRange { At = SamplePoints.Tower, Test = TestCodes.Ph, Low = 7.5, High = 9, Unit = "[pH]" }] },
            System = system => hasAcid ? system with { Drums = [.. system.Drums, new Drum { Code = "D-ACID", Product = "A-38", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }] } : system,
        };

        Assert.Equal(expected, builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Ph, ph, "[pH]")] }).Assess().Open(FindingKinds.RangeOut)?.Severity);
    }

    private static HistoryBuilder Clock(HistoryBuilder builder, double minutes) => builder.Visit(0, record => record with { ClockOffByMin = minutes });

    private static HistoryBuilder Alarm(string text, string? output, bool standing) => new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Alarms = [new AlarmReading { Text = text, Output = output, Standing = standing }] });

    private static Func<VisitedSystem, VisitedSystem> Settings(Func<int, double> value) => record => record with
    {
        Settings = [.. Enumerable.Range(0, 10).Select(i => new SettingReading { Name = "text-" + i, Found = SettingValue.Of(value(i)), Left = SettingValue.Of(value(i)) })],
    };
}
