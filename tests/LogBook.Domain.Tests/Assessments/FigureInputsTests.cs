using System.Globalization;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Tests.Assessments;

/// <summary>What "How was this worked out?" shows is enough to work the figure out again.</summary>
public class FigureInputsTests
{
    [Fact]
    public void ProbeDrift_FromItsPointsAlone_IsTheSameLine()
    {
        var builder = new HistoryBuilder();
        double[] errors = [-0.5, -1.9, -2.1, -3.8, -4.4];
        for (var i = 0; i < errors.Length; i++)
        {
            builder.Visit(28 * i, record => record with { Probes = [HistoryBuilder.Probe(1361 * (1 + (errors[i] / 100)), 1361)] });
        }

        var drift = builder.Assess().Figure(FigureCodes.ProbeDrift, builder.IdOf(4))!;
        var points = drift.Inputs.Where(input => input.Name.StartsWith("error-on:", StringComparison.Ordinal)).ToList();
        var days = points.ConvertAll(point => (At(point.Name) - At(points[0].Name)).TotalDays);
        var line = LinearFit.Of(days, points.ConvertAll(point => point.Value)).Value;

        Assert.Equal(5, points.Count);
        Assert.All(points.Zip(errors), pair => Assert.Equal(pair.Second, pair.First.Value, 1e-9));
        Assert.All(points, point => Assert.True(point.StandardUncertainty > 0));

        // Wall times of the site: the hour of the clock change lies in the series.
        Assert.Equal(line.Slope, drift.Result.Value.Value, 1e-4);
        Assert.Equal(line.SlopeStandardError.Value, drift.Result.Value.StandardUncertainty, 1e-4);
        Assert.Equal(line.Intercept, Value(drift, "line-start"), 1e-2);
        Assert.Equal(line.ResidualDeviation.Value, Value(drift, "line-scatter"), 1e-2);
        Assert.Equal(line.Slope + line.SlopeHalfWidth().Value, Value(drift, "slope-high"), 1e-4);
        Assert.Equal(line.Slope - line.SlopeHalfWidth().Value, Value(drift, "slope-low"), 1e-4);
    }

    [Fact]
    public void MakeUpShift_FromItsReadingsAlone_IsTheSameNormal()
    {
        var builder = new HistoryBuilder();
        double[] make = [298, 305, 301, 310, 295, 302, 299, 340];
        for (var i = 0; i < make.Length; i++)
        {
            builder.Visit(28 * i, record => record with
            {
                Readings = [.. record.Readings.Select(r => r.At == SamplePoints.MakeUp && r.Test == TestCodes.Conductivity ? r with { Value = make[i] } : r)],
            });
        }

        var shift = builder.Assess().Figures.Single(figure => figure.Code == FigureCodes.MakeUpShift && figure.About == TestCodes.Conductivity && figure.VisitId == builder.IdOf(7));
        var own = shift.Inputs.Where(input => input.Name.StartsWith("own-reading:", StringComparison.Ordinal)).ToList();
        var median = Statistics.Median([.. own.Select(input => input.Value)]);

        Assert.Equal(make[..^1], own.Select(input => input.Value));
        Assert.Equal("own-reading:2025-01-06", own[0].Name);
        Assert.Equal(median, Value(shift, "usual"));
        Assert.Equal(100 * ((Value(shift, "now") / median) - 1), shift.Result.Value.Value, 1e-9);
        Assert.Equal(
            Math.Max(Statistics.StandardDeviation([.. own.Select(input => input.Value)]), shift.Inputs.Single(input => input.Name == "now").StandardUncertainty!.Value),
            Value(shift, "spread"),
            1e-9);
    }

    [Fact]
    public void DaysToEmpty_FromItsInputsAlone_IsTheSameDay()
    {
        var builder = new HistoryBuilder().Every(28, 8);

        var days = builder.Assess().Figure(FigureCodes.DaysToEmpty, builder.IdOf(7))!;

        Assert.Equal(Value(days, "used") / Value(days, "running-days"), Value(days, "use-per-day"), 1e-9);
        Assert.Equal(Value(days, "usable") / Value(days, "use-per-day"), days.Result.Value.Value, 1e-9);
    }

    private static double Value(Figure figure, string name) => figure.Inputs.Single(input => input.Name == name).Value;

    private static DateTime At(string name) => DateTime.ParseExact(name[(name.IndexOf(':', StringComparison.Ordinal) + 1)..], "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
