using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Bank.Scoring;
using LogBook.Domain.Findings;
using Xunit;

namespace LogBook.Domain.Tests.Bank;

/// <summary>When a headline with no fault behind it is true of the plant.</summary>
public class TruthfulTests
{
    private const int At = 5;

    [Theory]
    [InlineData(1.0, true, Standing.False)]
    [InlineData(0.6, true, Standing.False)]
    [InlineData(0.4, true, Standing.Right)]
    [InlineData(0.0, true, Standing.Right)]
    [InlineData(0.0, false, Standing.False)]
    internal void Of_BiocideLapse_IsTrueWhereARunningPlantGotLessThanHalfOfIt(double share, bool running, Standing standing)
    {
        var course = CourseWith(share, running);

        var flag = new Flag(FindingKinds.BiocideLapse, "", course.DayOf(At), course.DayOf(At), null, Severity.Act, "drawn for this test");

        Assert.Equal(standing, Truthful.Of(flag, course));
    }

    // Every drum gives what it was designed to, those of biocides a share of it in the interval that ends with the visit.
    private static Course CourseWith(double share, bool running)
    {
        var firm = FirmDraw.Of(23, 3, 6);
        var course = firm.Systems.Select(system => SystemRun.Of(system, firm)).First(c => c.Count > At + 1);
        course.System.Faults.Clear();
        var used = course.System.DesignLPerDay.ToDictionary(pair => pair.Key, _ => 0.0, StringComparer.Ordinal);
        var truths = new List<Truth>();
        for (var i = 0; i < course.Count; i++)
        {
            var days = i == 0 ? 0 : course.DayOf(i).DayNumber - course.DayOf(i - 1).DayNumber;
            used = used.ToDictionary(
                pair => pair.Key,
                pair => pair.Value + (days * course.System.DesignLPerDay[pair.Key] * (i == At && pair.Key != course.System.InhibitorDrum ? share : 1)),
                StringComparer.Ordinal);
            truths.Add(course.Truths[i] with { Running = running, UsedL = used });
        }

        return course with { Truths = truths };
    }
}
