using CsCheck;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.Estimates;

public class MakeUpMeanTests
{
    [Fact]
    public void Weights_SlowWater_SharesBetweenTheEndsOfTheGap()
    {
        var weights = MakeUpMean.Weights([0, 7], 2);

        // Gap of 7 days, fading 2 days: everything younger is shared by nearness, what is older than 7 days counts as the older reading.
        // Older: (1 − e^−3.5) / 3.5 − e^−3.5 + e^−3.5 = 0.27709; newer: the rest.
        Assert.Equal((1 - Math.Exp(-3.5)) / 3.5, weights[1], 1e-12);
        Assert.Equal(1 - ((1 - Math.Exp(-3.5)) / 3.5), weights[0], 1e-12);
    }

    [Fact]
    public void Weights_AnyAges_AddUpToOneAndNoneIsNegative() =>
        Gen.Select(Gen.Double[0.01, 60].Array[1, 12], Gen.Double[0.1, 30]).Sample((gaps, fading) =>
        {
            var age = 0.0;
            var ages = gaps.Select(gap => age += gap).ToList();
            var weights = MakeUpMean.Weights(ages, fading);
            return Math.Abs(weights.Sum() - 1) < 1e-9 && weights.All(weight => weight >= -1e-12);
        });
}
