using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Tests.Clocks;

public sealed class FindingDeadlinesTests
{
    private static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");
    private static readonly DateTime At = new(2025, 3, 6, 14, 30, 0, DateTimeKind.Utc);
    private static readonly DateOnly From = new(2024, 7, 1);
    private static readonly Rule[] Rules = [RuleOf("OXT-LEG", "legionella"), RuleOf("OXT-COL", "colony-count")];

    private static readonly RunningClock[] Clocks =
    [
        ClockOf(DutyKind.Interval, "OXT-LEG", At.AddDays(60)),
        ClockOf(DutyKind.Retest, "OXT-LEG", At.AddDays(7)),
        ClockOf(DutyKind.Notify, "OXT-LEG", At.AddHours(20)),
        ClockOf(DutyKind.Retest, "OXT-COL", At.AddHours(5)),
    ];

    [Theory]
    [InlineData(FindingKinds.ClockDue, "OXT-LEG", null, null, DutyKind.Interval)]
    [InlineData(FindingKinds.ClockDue, "oxt-leg", "legionella", null, DutyKind.Retest)]
    [InlineData(FindingKinds.ClockDue, "OXT-LEG", null, "notify", DutyKind.Notify)]
    [InlineData(FindingKinds.MicrobiologyHigh, null, "legionella", null, DutyKind.Notify)]
    [InlineData(FindingKinds.MicrobiologyHigh, null, "colony-count", null, DutyKind.Retest)]
    [InlineData(FindingKinds.MicrobiologyHigh, null, "dip-slide", null, null)]
    [InlineData(FindingKinds.WaterLoss, "OXT-LEG", null, null, null)]
    public void Of_KindWithClock_IsThatOfItsOwnSubject(string kind, string? rule, string? test, string? task, DutyKind? expected)
    {
        var deadline = FindingDeadlines.Of(Of(kind, new About { Rule = rule, Test = test, Task = task }), Clocks, [], Rules, London);

        Assert.Equal(expected, deadline?.Kind);
    }

    [Fact]
    public void Of_NothingLeftToDo_GoesToTheNextClock()
    {
        RunningClock[] told = [.. Clocks.Select(clock => clock.Kind == DutyKind.Notify ? clock with { IsMet = true } : clock)];

        var deadline = FindingDeadlines.Of(Of(FindingKinds.MicrobiologyHigh, new About { Test = "legionella" }), told, [], Rules, London)!;

        Assert.Equal((DutyKind.Retest, At.AddDays(7), false), (deadline.Kind, deadline.Due, deadline.CountsHours));
        Assert.Equal((false, true), (deadline.IsOver(At.AddDays(7).AddSeconds(-1)), deadline.IsOver(At.AddDays(7))));
        Assert.Equal((TimeSpan.FromHours(1), TimeSpan.FromHours(-2)), (deadline.LeftAt(At.AddDays(7).AddHours(-1)), deadline.LeftAt(At.AddDays(7).AddHours(2))));
    }

    [Fact]
    public void Of_Drum_IsItsEarliestDay()
    {
        DrumAhead[] drums = [new("D-INH", "P-40", new DateOnly(2025, 7, 1), 4, 0.2) { From = new DateOnly(2025, 7, 9), To = new DateOnly(2025, 7, 14) }];

        var deadline = FindingDeadlines.Of(Of(FindingKinds.RunsOut, new About { Drum = "d-inh" }), [], drums, Rules, London)!;

        // The 9th ends at eleven in the evening, UTC.
        Assert.Equal((new DateOnly(2025, 7, 9), new DateTime(2025, 7, 9, 23, 0, 0, DateTimeKind.Utc)), (deadline.Day, deadline.Due));
        Assert.Null(FindingDeadlines.Of(Of(FindingKinds.RunsOut, new About { Drum = "D-B1" }), [], drums, Rules, London));
    }

    private static Finding Of(string kind, About about) => new() { Kind = kind, About = about, Severity = Severity.Plan, FirstSeen = From, LastSeen = From, State = FindingState.Open, Text = "said" };

    private static RunningClock ClockOf(DutyKind kind, string rule, DateTime due) => new(kind, due.AddDays(-10), due.AddDays(-2), due, 10) { Rule = rule, RuleFrom = From };

    private static Rule RuleOf(string code, string test) => new() { Code = code, Name = code, From = From, Test = test };
}
