using LogBook.Bank.Faults;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Bank.Scoring;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using Xunit;

namespace LogBook.Domain.Tests.Bank;

/// <summary>When a flag has found a fault: said at or after its onset, not before.</summary>
public class FaultScoreTests
{
    private const int OnsetAt = 4;

    private static readonly Course Course = CourseOf();

    [Fact]
    public void Of_FlagFirstSaidAfterTheOnset_FindsWithItsDelay()
    {
        var score = ScoreOf(Flag(OnsetAt + 1, null, (OnsetAt + 1, Severity.Watch), (OnsetAt + 2, Severity.Plan)));

        Assert.Equal(1, score.Delay(score.Seen));
        Assert.Equal(2, score.Delay(score.Raised));
        Assert.False(score.StoodBefore);
    }

    [Fact]
    public void Of_FlagThatStoodBeforeTheOnset_FindsNothingAndIsCountedApart()
    {
        var score = ScoreOf(Flag(OnsetAt - 2, null, (OnsetAt - 2, Severity.Plan)));

        Assert.Null(score.Seen);
        Assert.Null(score.Raised);
        Assert.Null(score.Noticed);
        Assert.True(score.StoodBefore);
        Assert.False(score.RaisedInTime);
    }

    [Fact]
    public void Of_FlagThatStoodAndRises_FindsOnTheDayItRises()
    {
        var score = ScoreOf(Flag(OnsetAt - 2, null, (OnsetAt - 2, Severity.Watch), (OnsetAt + 2, Severity.Plan)));

        Assert.Equal(Course.DayOf(OnsetAt + 2), score.Seen);
        Assert.Equal(Course.DayOf(OnsetAt + 2), score.Raised);
        Assert.False(score.StoodBefore);
    }

    /// <summary>Folded under another cause and let go again is no news: it only comes back to what it was.</summary>
    [Fact]
    public void Of_FlagThatFallsAndComesBackToWhatItWas_FindsNothing()
    {
        var score = ScoreOf(Flag(OnsetAt - 2, null, (OnsetAt - 2, Severity.Plan), (OnsetAt - 1, Severity.Watch), (OnsetAt + 1, Severity.Plan)));

        Assert.Null(score.Raised);
        Assert.True(score.StoodBefore);
    }

    [Fact]
    public void Of_FlagClosedAndOpenedAgain_FindsByTheSecond()
    {
        var score = ScoreOf(
            Flag(OnsetAt - 2, OnsetAt + 1, (OnsetAt - 2, Severity.Plan)),
            Flag(OnsetAt + 2, null, (OnsetAt + 2, Severity.Plan)));

        Assert.Equal(2, score.Delay(score.Raised));
        Assert.True(score.StoodBefore);
    }

    [Fact]
    public void Of_FlagClosedBeforeTheOnset_DoesNotStand()
    {
        var score = ScoreOf(Flag(0, OnsetAt - 1, (0, Severity.Plan)));

        Assert.Null(score.Seen);
        Assert.False(score.StoodBefore);
    }

    private static Course CourseOf()
    {
        var firm = FirmDraw.Of(23, 3, 6);
        return firm.Systems.Select(system => SystemRun.Of(system, firm)).First(course => course.Count > OnsetAt + 3);
    }

    private static FaultScore ScoreOf(params Flag[] flags) => FaultScore.Of(
        new Fault
        {
            Name = "probe fouls",
            Onset = Course.DayOf(OnsetAt),
            FoundBy = [FindingKinds.ProbeFouled],
            KnowableOn = _ => Course.DayOf(OnsetAt),
        },
        Course,
        23,
        flags);

    private static Flag Flag(int seen, int? closed, params (int At, Severity Severity)[] steps) => new(
        FindingKinds.ProbeFouled,
        "K1",
        Course.DayOf(seen),
        steps.Where(s => s.Severity >= Severity.Plan).Select(s => (DateOnly?)Course.DayOf(s.At)).FirstOrDefault(),
        closed is { } at ? Course.DayOf(at) : null,
        steps.Max(s => s.Severity),
        "drawn for this test")
    {
        Steps = [.. steps.Select(s => new SeverityStep(Course.DayOf(s.At), s.Severity))],
    };
}
