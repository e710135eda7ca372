using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

/// <summary>An oxidant by ORP against the system's own use: here the builder's drum holds it.</summary>
public class FeedOwnUseTests
{
    private static HistoryBuilder ByOrp() => new()
    {
        Programme = programme => programme with { Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByOrp, SetPoint = 650, Unit = "mV" }], Ranges = [] },
    };

    [Fact]
    public void FeedLow_BeforeABaseline_IsNotJudged()
    {
        var assessment = ByOrp().Every(28, 3).Assess();

        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.FeedLow && n.Why.Code == "no-baseline");
    }

    [Theory]
    [InlineData(1.0, false)]
    [InlineData(0.7, false)]
    [InlineData(0.5, true)]
    public void FeedLow_AgainstOwnUse_FortyPercent(double share, bool expected)
    {
        var builder = ByOrp().Every(28, 8);
        builder.InhibitorPerDayL *= share;
        var assessment = builder.Visit(8 * 28).Visit(9 * 28).Visit(10 * 28).Assess();

        Assert.Equal(expected, assessment.Open(FindingKinds.FeedLow) is not null);
        Assert.Empty(assessment.All(FindingKinds.FeedHigh));
    }

    [Fact]
    public void FeedHigh_AgainstOwnUse_IsFound()
    {
        var builder = ByOrp().Every(28, 8);
        builder.InhibitorPerDayL *= 1.7;

        Assert.NotNull(builder.Visit(8 * 28).Visit(9 * 28).Visit(10 * 28).Assess().Open(FindingKinds.FeedHigh));
    }

    [Fact]
    public void FeedLow_LowSeason_UseADayFallsWithTheWaterOrStays()
    {
        // Half the load: half the make-up; the oxidant's own decay keeps the use a day up, so only one of both moves.
        var builder = ByOrp().Every(28, 8);
        builder.MakeUpPerDayL *= 0.45;
        builder.BleedHoursPerDay *= 0.45;
        var assessment = builder.Visit(8 * 28).Visit(9 * 28).Visit(10 * 28).Assess();

        Assert.Empty(assessment.All(FindingKinds.FeedHigh));
        Assert.Empty(assessment.All(FindingKinds.FeedLow));
    }

    [Fact]
    public void FeedLow_PumpRenewed_StartsANewBaseline()
    {
        var builder = ByOrp().Every(28, 8);
        builder.InhibitorPerDayL *= 0.5;
        builder.Visit(8 * 28, record => record with { Events = [new VisitEvent { Type = EventType.PumpRenewed, Of = "P-INH" }] });
        var assessment = builder.Visit(9 * 28).Assess();

        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.FeedLow && n.Why.Code == "no-baseline");
    }

    [Fact]
    public void FeedLow_WithoutWaterMeter_IsNotJudged()
    {
        var builder = ByOrp();
        builder.InhibitorPerDayL = 0.05;
        builder.System = system => system with { Meters = [] };

        Assert.Empty(builder.Every(28, 10).Assess().All(FindingKinds.FeedLow));
    }
}
