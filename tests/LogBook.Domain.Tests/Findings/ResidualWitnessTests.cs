using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class ResidualWitnessTests
{
    // The feed aims at 100 mg/L; a feed that is 25 % off is borne out from 15 % on.
    [Theory]
    [InlineData(82, -0.15, true)]
    [InlineData(88, -0.15, false)]
    [InlineData(120, -0.15, false)]
    [InlineData(118, 0.15, true)]
    [InlineData(112, 0.15, false)]
    public void BearsOut_MeanOfTheLastTwoResults_DecidesOnItsSide(double mean, double off, bool borneOut)
    {
        var builder = new HistoryBuilder().Every(28, 4);
        builder.Inhibitor = mean - 10;
        builder.Visit(112);
        builder.Inhibitor = mean + 10;
        builder.Visit(140);

        Assert.Equal(borneOut, BearsOut(builder, off));
    }

    [Fact]
    public void BearsOut_WithoutAResidual_LeavesItToTheLevels() =>
        Assert.True(BearsOut(new HistoryBuilder().Every(28, 4).Visit(112, record => record with { Readings = [.. record.Readings.Where(reading => reading.Test != TestCodes.Inhibitor)] }), -0.15));

    private static bool BearsOut(HistoryBuilder builder, double off)
    {
        var history = builder.Build();
        VisitFacts? last = null;
        foreach (var visit in history.Visits)
        {
            last = new VisitFacts(history, visit, last);
        }

        // From the visit before the last but one, or the last alone.
        return ResidualWitness.BearsOut(last!, builder.Visits.Count > 5 ? last!.Previous!.Previous! : last!.Previous!, "D-INH", off);
    }
}
