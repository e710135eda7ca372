using System.Diagnostics;
using System.Text.Json;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Tests.Trends;

/// <summary>Trend statistics against SciPy (BSD licence, Debian's python3-scipy) on random samples.</summary>
public sealed class SciPyTests
{
    private const int Samples = 200;

    [Fact]
    public async Task Statistics_RandomSamples_AgreeWithSciPy()
    {
        var random = new Random(20250106);
        var samples = Enumerable.Range(0, Samples).Select(_ => Draw(random)).ToArray();

        var judged = await Judge(samples);

        Assert.Equal(Samples, judged.Length);
        foreach (var (sample, said) in samples.Zip(judged))
        {
            var line = LinearFit.Of(sample.X, sample.Y).Value;
            var robust = TheilSen.Of(sample.X, sample.Y).Value;
            Near(said.Slope, line.Slope);
            Near(said.Intercept, line.Intercept);
            Near(said.SlopeError, line.SlopeStandardError.Value);
            Near(said.InterceptError, line.InterceptStandardError.Value);
            Near(said.SlopeP, line.SlopePValue().Value, 1e-7);
            Near(said.RSquared, line.RSquared);
            Near(said.T95 * line.SlopeStandardError.Value, line.SlopeHalfWidth().Value, 1e-8);
            // SciPy 1.10 finds quantiles to about 2e-9 (three degrees of freedom have a closed form, which ours meets to 1e-16).
            Near(said.T99, StudentT.TwoSided(0.99, sample.X.Length - 2), 1e-8);
            Near(said.TailOfThree, StudentT.PValue(3, sample.X.Length - 2), 1e-7);
            Near(said.RobustSlope, robust.Slope);
            if (said.TrendP is { } p)
            {
                Near(p, MannKendall.Of(sample.Y).Value.PValue, 1e-7);
            }
        }

        Assert.Contains(judged, said => said.TrendP is not null);
    }

    /// <summary>Both follow Sen (1968), but round the rank of the limits differently: they may lie one ordered slope apart.</summary>
    [Fact]
    public async Task TheilSenInterval_RandomSamples_LiesWithinOneRankOfSciPys()
    {
        var random = new Random(20250107);
        var samples = Enumerable.Range(0, Samples).Select(_ => Draw(random)).ToArray();

        foreach (var (sample, said) in samples.Zip(await Judge(samples)))
        {
            var robust = TheilSen.Of(sample.X, sample.Y).Value;
            Assert.InRange(Ranks(sample, robust.SlopeLow, said.RobustLow), 0, 1);
            Assert.InRange(Ranks(sample, robust.SlopeHigh, said.RobustHigh), 0, 1);
        }
    }

    private static int Ranks(Sample sample, double one, double other)
    {
        var (low, high) = (Math.Min(one, other), Math.Max(one, other));
        var between = 0;
        for (var i = 0; i < sample.X.Length; i++)
        {
            for (var j = i + 1; j < sample.X.Length; j++)
            {
                var slope = (sample.Y[j] - sample.Y[i]) / (sample.X[j] - sample.X[i]);
                between += slope > low + 1e-12 && slope <= high + 1e-12 ? 1 : 0;
            }
        }

        return between;
    }

    // Days since a calibration and errors in %, with a drift; every fourth sample has readings rounded to the display, so ties occur.
    private static Sample Draw(Random random)
    {
        var count = random.Next(5, 40);
        var isRounded = random.Next(4) == 0;
        var drift = (random.NextDouble() - 0.5) / 5;
        var x = new double[count];
        var y = new double[count];
        for (var i = 0; i < count; i++)
        {
            x[i] = (i == 0 ? 0 : x[i - 1]) + 1 + random.Next(35);
            var error = (drift * x[i]) + (random.NextDouble() * 4) - 2;
            y[i] = isRounded ? Math.Round(error) : error;
        }

        y[^1] += 0.01;
        return new Sample(x, y);
    }

    private static void Near(double expected, double actual, double relative = 1e-9) =>
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Max(1, Math.Abs(expected)), $"expected {expected:R}, got {actual:R}");

    private static async Task<Judged[]> Judge(Sample[] samples)
    {
        using var python = Process.Start(new ProcessStartInfo("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Trends", "scipy_judge.py")])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
        var answer = python.StandardOutput.ReadToEndAsync();
        await JsonSerializer.SerializeAsync(python.StandardInput.BaseStream, samples, JsonSerializerOptions.Web);
        python.StandardInput.Close();
        var text = await answer;
        await python.WaitForExitAsync();
        Assert.Equal(0, python.ExitCode);
        return JsonSerializer.Deserialize<Judged[]>(text, JsonSerializerOptions.Web)!;
    }

    private sealed record Sample(double[] X, double[] Y);

    private sealed record Judged(
        double Slope, double Intercept, double SlopeError, double InterceptError, double SlopeP, double RSquared,
        double RobustSlope, double RobustLow, double RobustHigh, double? TrendP, double T95, double T99, double TailOfThree);
}
