using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Programmes;

public class RangeJudgementTests
{
    [Theory]
    [InlineData(79.9, null, RangeStanding.Below)]
    [InlineData(80.0, null, RangeStanding.Inside)]
    [InlineData(120.0, null, RangeStanding.Inside)]
    [InlineData(120.1, null, RangeStanding.Above)]
    [InlineData(80.0, "<", RangeStanding.Below)]
    [InlineData(100.0, "<", RangeStanding.Undecided)]
    [InlineData(120.0, ">", RangeStanding.Above)]
    [InlineData(100.0, ">", RangeStanding.Undecided)]
    public void Of_TwoEnds_IncludesBothAndDecidesCensoredOnlyAtTheEnds(double value, string? qualifier, RangeStanding expected) =>
        Assert.Equal(expected, RangeJudgement.Of(Inhibitor() with { Value = value, Qualifier = qualifier }, Range(80, 120)));

    [Fact]
    public void Of_BelowDetectionAgainstAHighEnd_IsInside() => Assert.Equal(
        RangeStanding.Inside,
        RangeJudgement.Of(
            new Reading { At = "tower", Test = "dip-slide", Value = 1000, Unit = "[CFU]/mL", Qualifier = "<" },
            new TestRange { At = "tower", Test = "dip-slide", High = 10000, Unit = "[CFU]/mL" }));

    [Fact]
    public void Of_AnotherUnit_IsConverted() => Assert.Equal(
        RangeStanding.Above,
        RangeJudgement.Of(
            new Reading { At = "tower", Test = "conductivity", Value = 1.7, Unit = "mS/cm" },
            new TestRange { At = "tower", Test = "conductivity", Low = 1200, High = 1500, Unit = "uS/cm" }));

    [Fact]
    public void Of_AnotherBasis_IsConverted() => Assert.Equal(
        RangeStanding.Inside,
        RangeJudgement.Of(
            new Reading { At = "tower", Test = "calcium", Value = 100, Unit = "mg/L", Basis = "as Ca" },
            new TestRange { At = "tower", Test = "calcium", Low = 240, High = 260, Unit = "mg/L" }));

    [Fact]
    public void Of_DropsWithDilution_MultipliesBoth() => Assert.Equal(
        RangeStanding.Inside,
        RangeJudgement.Of(
            new Reading { At = "tower", Test = "inhibitor", Drops = 4, PerDrop = 5, Unit = "mg/L", Dilution = new Dilution { Sample = 5, Total = 25 } },
            Range(100, 100)));

    [Fact]
    public void Of_ForeignUnit_CannotBeTold() =>
        Assert.Equal(RangeStanding.Undecided, RangeJudgement.Of(Inhibitor() with { Value = 100, Unit = "uS/cm" }, Range(80, 120)));

    [Fact]
    public void Of_NoEnds_IsNoRange() => Assert.Equal(RangeStanding.NoRange, RangeJudgement.Of(Inhibitor() with { Value = 100 }, Range(null, null)));

    private static Reading Inhibitor() => new() { At = "tower", Test = "inhibitor", Unit = "mg/L" };

    private static TestRange Range(double? low, double? high) => new() { At = "tower", Test = "inhibitor", Low = low, High = high, Unit = "mg/L" };
}
