using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.Estimates;

public class StatisticsTests
{
    // Values of the standard normal distribution from its definition, as tabulated in the NIST/SEMATECH e-Handbook 1.3.6.7.1.
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.84134)]
    [InlineData(1.96, 0.97500)]
    [InlineData(-1.28, 0.10027)]
    public void Normal_KnownPoints_Agree(double z, double expected) => Assert.Equal(expected, Statistics.Normal(z), 0.00001);

    [Fact]
    public void Median_EvenCount_IsTheMeanOfBoth() => Assert.Equal(2.5, Statistics.Median([4, 1, 3, 2]));

    [Fact]
    public void SpreadByMovingRange_SteadySlope_IsItsStepOnly() => Assert.Equal(1 / 1.128, Statistics.SpreadByMovingRange([1, 2, 3, 4, 5]), 1e-12);
}
