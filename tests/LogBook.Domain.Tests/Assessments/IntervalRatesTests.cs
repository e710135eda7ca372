using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Tests.Assessments;

public sealed class IntervalRatesTests
{
    private static readonly DateTime Start = new(2025, 1, 6, 9, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void BleedHours_OverTheMakeUpOfTheSameDays_CarriesBothUncertainties()
    {
        var rate = Assert.Single(Of(Figure(FigureCodes.MakeUp, 0, 7, 140_000, "L", 1_400), Figure(FigureCodes.BleedHours, 0, 7, 30, "h", 0.6)), figure => figure.Code == FigureCodes.BleedHoursPerVolume);

        // 30 h / 140 m3; relative uncertainties 2 % and 1 %.
        Assert.Equal(("h/m3", 30 / 140.0), (rate.Result.Value.Unit, rate.Result.Value.Value));
        Assert.Equal(30 / 140.0 * Math.Sqrt(0.0005), rate.Result.Value.StandardUncertainty, 1e-6);
    }

    [Fact]
    public void Product_OverSeveralIntervals_TakesTheMakeUpOfAllOfThem()
    {
        var rate = Assert.Single(
            Of(
                Figure(FigureCodes.MakeUp, 0, 7, 140_000, "L", 1_400),
                Figure(FigureCodes.MakeUp, 7, 14, 60_000, "L", 600),
                Figure(FigureCodes.MakeUp, 14, 21, 999_000, "L", 1),
                Figure(FigureCodes.ProductUsed, 0, 14, 4, "L", 0.2)),
            figure => figure.Code == FigureCodes.ProductPerVolume);

        // 4,000 mL / 200 m3; 5 % and, added as one meter's, 2,000 / 200,000 = 1 %.
        Assert.Equal(("mL/m3", 20.0), (rate.Result.Value.Unit, rate.Result.Value.Value));
        Assert.Equal(20 * Math.Sqrt(0.0026), rate.Result.Value.StandardUncertainty, 1e-6);
    }

    [Theory]
    [InlineData(8)]
    [InlineData(6)]
    public void Product_MakeUpWithAGapOrAnOverlap_HasItsReason(int secondFrom)
    {
        var rate = Assert.Single(
            Of(Figure(FigureCodes.MakeUp, 0, 7, 140_000, "L", 1_400), Figure(FigureCodes.MakeUp, secondFrom, 14, 60_000, "L", 600), Figure(FigureCodes.ProductUsed, 0, 14, 4, "L", 0.2)),
            figure => figure.Code == FigureCodes.ProductPerVolume);

        Assert.Equal("make-up-not-known", rate.Result.Reasons[0].Code);
    }

    [Fact]
    public void BleedHours_MakeUpWithinItsUncertainty_HasItsReason() => Assert.Equal(
        "make-up-not-clear",
        Assert.Single(Of(Figure(FigureCodes.MakeUp, 0, 7, 1_000, "L", 600), Figure(FigureCodes.BleedHours, 0, 7, 30, "h", 0.6)), figure => figure.Code == FigureCodes.BleedHoursPerVolume).Result.Reasons[0].Code);

    [Fact]
    public void MakeUp_OfAnInterval_IsGivenADay()
    {
        var rate = Assert.Single(Of(Figure(FigureCodes.MakeUp, 0, 7, 140_000, "L", 1_400)));

        Assert.Equal((FigureCodes.MakeUpPerDay, "m3/d", 20.0, 0.2), (rate.Code, rate.Result.Value.Unit, rate.Result.Value.Value, rate.Result.Value.StandardUncertainty));
    }

    [Fact]
    public void Figure_WithoutValue_KeepsItsReasons()
    {
        var none = Figure(FigureCodes.BleedHours, 0, 7, 0, "h", 0) with { Result = Computed<Estimate>.None(VisitReasons.NotMeasured) };

        Assert.Equal([VisitReasons.NotMeasured], Assert.Single(Of(none)).Result.Reasons);
    }

    private static IReadOnlyList<Figure> Of(params Figure[] figures) => IntervalRates.Of(figures);

    private static Figure Figure(string code, double from, double to, double value, string unit, double uncertainty) =>
        new(code, null, Guid.Empty, Start.AddDays(from), Start.AddDays(to), Computed<Estimate>.Of(new Estimate(value, unit, uncertainty)), []);
}
