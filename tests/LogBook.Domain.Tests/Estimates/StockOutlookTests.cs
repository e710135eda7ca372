using LogBook.Domain.Estimates;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Estimates;

/// <summary>Worked out by hand: 40 L left, 2 L a day, 20 days; uncertainties as given.</summary>
public sealed class StockOutlookTests
{
    private static readonly DateTime Read = new(2025, 3, 3, 9, 0, 0, DateTimeKind.Utc);

    private static readonly StockOutlook Forty = new(Read, new Estimate(40, "L", 1), new Estimate(2, "L/d", 0.1), new Estimate(20, "d", 1.5));

    [Fact]
    public void UsableAt_FiveDaysLater_IsTenLitresLess()
    {
        var left = Forty.UsableAt(Read.AddDays(5))!;

        Assert.Equal(30, left.Value, 9);

        // u² = 1² + (5 × 0.1)².
        Assert.Equal(Math.Sqrt(1.25), left.StandardUncertainty, 9);
        Assert.Equal(0, Forty.UsableAt(Read.AddDays(40))!.Value);
    }

    [Fact]
    public void RunsOut_IsTheRangeOfTheDays() =>
        Assert.Equal((new DateOnly(2025, 3, 20), new DateOnly(2025, 3, 26)), Forty.RunsOut());

    [Fact]
    public void NeededUntil_ThirtyDays_IsTheShortfallWithTheUpperEnd()
    {
        // 60 L − 40 L = 20 L; u² = (30 × 0.1)² + 1² = 10, so 20 + 2 × 3.162 = 26.3: 27 whole litres.
        Assert.Equal(27, Forty.NeededUntil(Read.AddDays(30)));
        Assert.Equal(0, Forty.NeededUntil(Read.AddDays(10)));
    }

    [Fact]
    public void RunsOut_UncertainUse_EndsLateFurtherOffThanEarly()
    {
        // (2 t − 40)² = 4 ((0.5 t)² + 6²): 3 t² − 160 t + 1456 = 0, so t = (80 ± √2032) / 3 = 11.64 and 41.69; an even range would be 8.3 to 31.7.
        var range = RunOutDays.Of(new Estimate(40, "L", 6), new Estimate(2, "L/d", 0.5))!.Value;

        Assert.Equal((80 - Math.Sqrt(2032)) / 3, range.Low, 9);
        Assert.Equal((80 + Math.Sqrt(2032)) / 3, range.High!.Value, 9);
    }

    [Theory]
    [InlineData(40, 6, 2, 0.5)]
    [InlineData(40, 1, 2, 0.1)]
    [InlineData(12, 0.5, 0.4, 0.06)]
    [InlineData(300, 20, 9, 4)]
    [InlineData(300, 20, 9, 5)]
    public void RunsOut_EarlyEnd_IsWhereAnOrderBeginsToBeNeeded(double stock, double stockUncertainty, double use, double useUncertainty)
    {
        var outlook = new StockOutlook(Read, new Estimate(stock, "L", stockUncertainty), new Estimate(use, "L/d", useUncertainty), new Estimate(stock / use, "d", 1));
        var low = RunOutDays.Of(outlook.Usable, outlook.UsePerDay!)!.Value.Low;

        Assert.Equal(0, outlook.NeededUntil(Read.AddDays(low - 0.01)));
        Assert.True(outlook.NeededUntil(Read.AddDays(low + 0.01)) >= 1);
        Assert.Equal(DateOnly.FromDateTime(Read).AddDays((int)low), outlook.RunsOut()!.Value.First);
    }

    [Fact]
    public void RunsOut_NothingSurelyLeftOrUsed_BeginsNowOrHasNoLateEnd()
    {
        Assert.Equal(0, RunOutDays.Of(new Estimate(2, "L", 1.5), new Estimate(2, "L/d", 0.1))!.Value.Low);
        Assert.Null(RunOutDays.Of(new Estimate(40, "L", 1), new Estimate(2, "L/d", 1))!.Value.High);
        Assert.Null(RunOutDays.Of(new Estimate(40, "L", 1), new Estimate(0, "L/d", 0.1)));
    }

    [Fact]
    public void OutOfSeason_NothingIsUsed()
    {
        // In operation up to 10 March and again from 1 May: seven days are used by then, the other ten of the low end end on 10 May.
        var seasonal = Forty with { Operation = new Operation { Seasons = [new Season { From = "05-01", To = "03-10" }] } };

        Assert.Equal(26, seasonal.UsableAt(Read.AddDays(40))!.Value, 9);
        Assert.Equal(new DateOnly(2025, 5, 10), seasonal.RunsOut()!.Value.First);
        Assert.Equal(StockStanding.Lasts, seasonal.StandingBefore(Read.AddDays(40), Read.AddDays(47)));
        Assert.Equal(0, seasonal.NeededUntil(Read.AddDays(40)));
    }

    [Theory]
    [InlineData(25, 40, StockStanding.BeforeNext)]
    [InlineData(18, 40, StockStanding.PerhapsBeforeNext)]
    [InlineData(10, 18, StockStanding.BeforeSecond)]
    [InlineData(5, 10, StockStanding.Lasts)]
    public void Standing_FollowsTheVisits(int next, int second, StockStanding expected) =>
        Assert.Equal(expected, Forty.StandingBefore(Read.AddDays(next), Read.AddDays(second)));

    [Fact]
    public void Standing_NothingLeft_IsEmpty_UseUnknown_IsUnknown()
    {
        Assert.Equal(StockStanding.Empty, (Forty with { Usable = new Estimate(-0.5, "L", 1) }).StandingBefore(Read.AddDays(7), Read.AddDays(14)));
        var unknown = Forty with { UsePerDay = null, DaysToEmpty = null };
        Assert.Equal(StockStanding.Unknown, unknown.StandingBefore(Read.AddDays(7), Read.AddDays(14)));
        Assert.Null(unknown.NeededUntil(Read.AddDays(7)));
        Assert.Null(unknown.RunsOut());
    }
}
