using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class MeterRulesTests
{
    [Fact]
    public void MeterStopped_DialStillWhileTheBleedRan_IsActWhereItPacesAFeed()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        builder.DialShare = 0;
        builder.TotalShare = 0;
        var finding = builder.Visit(84).Assess().Open(FindingKinds.MeterStopped);

        // 28 d × 4.3 h × 1,000 L/h × 4.5 cycles = 541.8 m³ must have gone in.
        Assert.Equal(Severity.Act, finding!.Severity);
        Assert.Equal(0, finding.Evidence[0].Value);
        Assert.Contains("542,000\u00a0L", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void MeterStopped_IdlePlant_IsNotJudged()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        builder.DialShare = 0;
        builder.TotalShare = 0;
        builder.BleedHoursPerDay = 0;

        Assert.Empty(builder.Visit(84, record => record with { Running = false }).Assess().All(FindingKinds.MeterStopped));
    }

    [Fact]
    public void MeterStopped_FeedLowUnderIt_StaysWatch()
    {
        var builder = new HistoryBuilder { InhibitorPerDayL = 0.1, System = system => system with { Pumps = [] } }.Every(28, 3);
        var before = builder.Assess().Open(FindingKinds.FeedLow);
        builder.DialShare = 0;
        var after = builder.Visit(84).Assess();

        Assert.Equal(Severity.Plan, before!.Severity);
        Assert.NotNull(after.Open(FindingKinds.MeterStopped));
        Assert.All(after.All(FindingKinds.FeedLow).Where(f => f.LastSeen == new DateOnly(2025, 3, 31)), f => Assert.Equal(Severity.Watch, f.Severity));
    }

    [Fact]
    public void MeterBackwards_FellWithoutReason_IsWatchThenPlanWhenUnanswered()
    {
        var builder = new HistoryBuilder().Every(28, 3).Visit(84, Dial(500_000, 1_639_600));
        var first = builder.Assess().Open(FindingKinds.MeterBackwards);
        var second = builder.Visit(112, Dial(1_043_200, 2_182_800)).Assess().Open(FindingKinds.MeterBackwards);

        Assert.Equal(Severity.Watch, first!.Severity);
        Assert.Equal(500_000 - 1_096_400, first.Evidence[0].Value!.Value, 1.0);
        Assert.Equal(Severity.Plan, second!.Severity);
        Assert.Equal(first.FirstSeen, second.FirstSeen);
    }

    [Fact]
    public void MeterBackwards_PlausibleRollover_IsWaterAndNoFinding()
    {
        // The seven-digit dial stood at 9,900,000 and now at 443,200: 543,200 L in 28 days, the usual amount.
        var builder = new HistoryBuilder().Every(28, 2);
        builder.Visit(56, Dial(9_900_000, 1_096_400)).Visit(84, Dial(443_200, 1_639_600));
        var assessment = builder.Assess();

        Assert.DoesNotContain(assessment.All(FindingKinds.MeterBackwards), f => f.FirstSeen == new DateOnly(2025, 3, 31));
        Assert.Equal(543_200, assessment.Figure(FigureCodes.MakeUp, builder.IdOf(3))!.Result.Value.Value, 1.0);
    }

    [Fact]
    public void MeterBackwards_ReplacedWithCounts_IsWaterAndNoFinding()
    {
        var builder = new HistoryBuilder().Every(28, 3).Visit(84, record => record with
        {
            Meters = [new MeterReading { Meter = "MU", Dial = 143_200, Replaced = true, OldFinal = 1_496_400, NewStart = 0 }],
        });
        var assessment = builder.Assess();

        // (1,496,400 − 1,096,400) + (143,200 − 0) = 543,200 L.
        Assert.Empty(assessment.All(FindingKinds.MeterBackwards));
        Assert.Equal(543_200, assessment.Figure(FigureCodes.MakeUp, builder.IdOf(3))!.Result.Value.Value, 1.0);
    }

    [Fact]
    public void MakeUp_ReplacedWithoutCounts_HasAReasonAndNoNumber()
    {
        var builder = new HistoryBuilder().Every(28, 3).Visit(84, record => record with
        {
            Meters = [new MeterReading { Meter = "MU", Dial = 143_200, Replaced = true }],
        });

        Assert.False(builder.Assess().Figure(FigureCodes.MakeUp, builder.IdOf(3))!.Result.HasValue);
    }

    private static Func<VisitedSystem, VisitedSystem> Dial(double dial, double total) =>
        record => record with { Meters = [new MeterReading { Meter = "MU", Dial = dial, Total = total }] };
}
