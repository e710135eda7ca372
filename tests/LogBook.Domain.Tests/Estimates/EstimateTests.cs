using CsCheck;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.Estimates;

public sealed class EstimateTests
{
    private static readonly Gen<double> Value = Gen.Double[0.1, 1e4];
    private static readonly Gen<double> Share = Gen.Double[0.001, 0.3];

    [Fact]
    public void Over_SharedCommonPart_CancelsInTheRatio() => Gen.Select(Value, Value, Share).Sample((tower, makeUp, share) =>
    {
        // JCGM 100:2008, 5.2.2: correlation +1, so a meter that reads everything 2 % high changes no ratio.
        var ratio = Read(tower, share, "hand-meter:HM-1").Over(Read(makeUp, share, "hand-meter:HM-1"));

        Assert.Equal(0, ratio.StandardUncertainty / ratio.Value, 1e-12);
    });

    [Fact]
    public void Over_DifferentMeters_AddInQuadrature() => Gen.Select(Value, Value, Share, Share).Sample((tower, makeUp, one, other) =>
    {
        var ratio = Read(tower, one, "hand-meter:HM-1").Over(Read(makeUp, other, "hand-meter:HM-2"));

        Assert.Equal(Math.Sqrt((one * one) + (other * other)), ratio.StandardUncertainty / ratio.Value, 1e-12);
    });

    [Fact]
    public void Plus_RandomParts_AddInQuadrature() => Gen.Select(Value, Value, Value, Value).Sample((a, ua, b, ub) =>
    {
        // JCGM 100:2008, 5.1.2.
        var sum = new Estimate(a, "L", ua).Plus(new Estimate(b, "L", ub));

        Assert.Equal(1, Math.Sqrt((ua * ua) + (ub * ub)) / sum.StandardUncertainty, 1e-12);
    });

    [Fact]
    public void Plus_SharedCommonPart_AddsStraight() => Gen.Select(Value, Value, Share).Sample((a, b, share) =>
    {
        var sum = Read(a, share, "meter:MU").Plus(Read(b, share, "meter:MU"));

        Assert.Equal(share, sum.StandardUncertainty / sum.Value, 1e-12);
    });

    [Fact]
    public void Minus_SharedCommonPart_LeavesOnlyItsDifference() => Gen.Select(Value, Value, Share).Sample((a, b, share) =>
    {
        var difference = Read(a, share, "gauge").Minus(Read(b, share, "gauge"));

        Assert.Equal(share * Math.Abs(a - b), difference.StandardUncertainty, 1e-9);
    });

    private static Estimate Read(double value, double share, string name) => Estimate.Exact(value, "uS/cm").WithCommon(name, value * share);
}
