using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Clocks;

/// <summary>
/// Tell the authority within 24 hours of receipt of a result above 1,000 CFU/mL: New York State 4-1.6 as read at regs.health.ny.gov, the
/// template of that state. The other days and results are invented.
/// </summary>
public sealed class NotifyTests
{
    private static readonly Rule State = RuleTemplates.All.Single(template => template.Rule.Code == "NYS-LEG").Rule;

    private static readonly DateTime Received = HistoryBuilder.Start.AddDays(10);

    [Theory]
    [InlineData(1_500, "[CFU]/mL")]
    [InlineData(150_000, "[CFU]/(100.mL)")]
    [InlineData(1_500_000, "[CFU]/L")]
    public void Countdown_ResultInTheBandInAnyUnit_EndsTwentyFourHoursAfterReceipt(double value, string unit)
    {
        var clock = Assert.Single(ClocksAt(Builder(value, unit), Received.AddHours(1)), clock => clock.Kind == DutyKind.Notify);

        Assert.Equal((Received, Received.AddHours(24), Received.AddHours(18)), (clock.Since, clock.Due, clock.Soon));
    }

    [Theory]
    [InlineData(999, "[CFU]/mL")]
    [InlineData(900_000, "[CFU]/L")]
    public void Countdown_ResultBelowTheBand_DoesNotRun(double value, string unit) =>
        Assert.DoesNotContain(ClocksAt(Builder(value, unit), Received.AddHours(1)), clock => clock.Kind == DutyKind.Notify);

    [Theory]
    [InlineData(1, ClockStanding.Running)]
    [InlineData(17.9, ClockStanding.Running)]
    [InlineData(18, ClockStanding.DueSoon)]
    [InlineData(23.9, ClockStanding.DueSoon)]
    [InlineData(24, ClockStanding.Missed)]
    public void Countdown_Standing_FollowsTheHours(double hours, ClockStanding expected)
    {
        var builder = Builder(1_500);

        Assert.Equal(expected, Assert.Single(ClocksAt(builder, Received.AddHours(1)), clock => clock.Kind == DutyKind.Notify).StandingAt(Received.AddHours(hours)));
    }

    [Theory]
    [InlineData(5, false)]
    [InlineData(30, true)]
    public void Countdown_Told_IsMetAndSaysWhetherItWasLate(double hours, bool wasLate)
    {
        var builder = Builder(1_500);
        builder.Notifications = [Told(builder, hours)];

        var clock = Assert.Single(ClocksAt(builder, Received.AddDays(3)), clock => clock.Kind == DutyKind.Notify);

        Assert.Equal((ClockStanding.Met, wasLate), (clock.StandingAt(Received.AddDays(3)), clock.WasLate));
    }

    [Fact]
    public void Countdown_ToldBeforeReceipt_IsNotMet()
    {
        var builder = Builder(1_500);
        builder.Notifications = [Told(builder, -1)];

        Assert.Equal(ClockStanding.Missed, Assert.Single(ClocksAt(builder, Received.AddDays(3)), clock => clock.Kind == DutyKind.Notify).StandingAt(Received.AddDays(3)));
    }

    [Fact]
    public void Countdown_ToldOfAnotherResult_IsNotMet()
    {
        var builder = Builder(1_500);
        builder.Notifications = [Told(builder, 5) with { Visit = Guid.CreateVersion7() }];

        Assert.Equal(ClockStanding.Missed, Assert.Single(ClocksAt(builder, Received.AddDays(3)), clock => clock.Kind == DutyKind.Notify).StandingAt(Received.AddDays(3)));
    }

    [Fact]
    public void Finding_NotTold_IsPlanOnReceiptAndActOnTheLastDay()
    {
        var builder = Builder(1_500);

        Assert.Equal(Severity.Plan, Open(builder, Received.AddHours(1))!.Severity);
        Assert.Equal(Severity.Act, Open(builder, Received.AddDays(1).AddHours(1))!.Severity);
        Assert.Contains("no notification is on record", Open(builder, Received.AddDays(2).AddHours(1))!.Text, StringComparison.Ordinal);
    }

    /// <summary>Urgent below six hours (findings.md, clock-due): where they begin the evening before, the finding is urgent that evening.</summary>
    [Theory]
    [InlineData(5, 0)]
    [InlineData(7, 1)]
    public void Finding_CountdownThatEndsInTheMorning_IsUrgentFromTheDayOfItsLastSixHours(int hourOfEnd, int urgentAfterDays)
    {
        var received = Received.Date.AddHours(hourOfEnd);
        var builder = new HistoryBuilder { Rules = [State], VisitEveryDays = null }.Visit(0, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 1_500, "[CFU]/mL") with { ResultAt = Moment.OfUtc(received.AddHours(-1)), ReceivedAt = Moment.OfUtc(received) }],
        });

        var finding = Open(builder, received.AddHours(10))!;

        Assert.Equal(urgentAfterDays == 0 ? Severity.Act : Severity.Plan, finding.Severity);
        Assert.Equal(Severity.Act, Open(builder, received.AddDays(1).AddMinutes(-1))!.Severity);
        Assert.Equal((24.0, "h"), Assert.Single(finding.Evidence.Select(figure => (figure.Value!.Value, figure.Unit))));
    }

    [Fact]
    public void Finding_Told_Closes()
    {
        var builder = Builder(1_500);
        builder.Notifications = [Told(builder, 5)];
        builder.Visit(14);

        Assert.Null(Open(builder, Received.AddDays(5)));
        Assert.DoesNotContain(builder.Assess(Received.AddDays(5)).All(FindingKinds.ClockDue), finding => finding.About?.Task == "notify" && finding.Severity == Severity.Act);
    }

    [Fact]
    public void Rule_LaterVersionWithAnotherBand_LeavesOlderResultsToTheirOwn()
    {
        // Sampled on 6 January; from 10 January the rule asks for nobody to be told.
        var change = new DateOnly(2025, 1, 10);
        var builder = Builder(1_500);
        builder.Rules = [State with { To = change.AddDays(-1) }, State with { From = change, Bands = [.. State.Bands.Select(band => band with { NotifyWithinHours = null })] }];

        Assert.Equal(State.From, Assert.Single(ClocksAt(builder, Received.AddHours(1)), clock => clock.Kind == DutyKind.Notify).RuleFrom);
    }

    [Theory]
    [InlineData(false, false, 0)] // neither told: the older one
    [InlineData(false, true, 0)] // a later call about another result does not make up for the older one
    [InlineData(true, false, 1)]
    [InlineData(true, true, 1)] // both told: the newest
    public void Countdown_TwoResults_ShowsTheOldestThatWasNotTold(bool isOlderTold, bool isNewerTold, int shown)
    {
        var later = Received.AddDays(20);
        var builder = Builder(1_500).Visit(20, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 2_000, "[CFU]/mL") with { ResultAt = Moment.OfUtc(later.AddHours(-3)), ReceivedAt = Moment.OfUtc(later) }],
        });
        builder.Notifications = [.. new[] { isOlderTold ? Told(builder, 5) : null, isNewerTold ? Told(builder, 5) with { Visit = builder.IdOf(1), At = later.AddHours(5) } : null }.OfType<Notification>()];

        var clock = Assert.Single(ClocksAt(builder, later.AddDays(1)), clock => clock.Kind == DutyKind.Notify);

        Assert.Equal((shown == 0 ? Received : later, isOlderTold && isNewerTold), (clock.Since, clock.IsMet));
    }

    [Fact]
    public void Countdown_AmendedLaterWithNoReceiptOnRecord_StartsNoCountAnew()
    {
        // Known when the visit ended, an hour after its arrival; twenty days later something else of the visit was corrected.
        var known = HistoryBuilder.Start.AddHours(1);
        var builder = new HistoryBuilder { Rules = [State], VisitEveryDays = null }.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 1_500, "[CFU]/mL")] });
        var first = builder.Visits[0];
        var amended = first with { Version = 2, AmendedBy = "RYA", AmendedAt = Moment.OfUtc(known.AddDays(20)), Reason = "wrong drum" };
        var otherResult = amended with { Systems = [amended.Systems[0] with { Readings = [amended.Systems[0].Readings[0] with { Value = 2_500 }] }] };

        Assert.Equal((known, known.AddHours(24)), Countdown(first, amended));
        Assert.Equal((known.AddDays(20), known.AddDays(21)), Countdown(first, otherResult));

        (DateTime? Since, DateTime? Due) Countdown(params Visit[] versions)
        {
            var clock = Assert.Single(builder.Assess(known.AddDays(21), versions).Clocks, clock => clock.Kind == DutyKind.Notify);
            return (clock.Since, clock.Due);
        }
    }

    private static Finding? Open(HistoryBuilder builder, DateTime asOf) =>
        builder.Assess(asOf).All(FindingKinds.ClockDue).SingleOrDefault(finding => finding.About?.Task == "notify" && finding.State == FindingState.Open);

    private static Notification Told(HistoryBuilder builder, double hours) =>
        new(builder.IdOf(0), TestCodes.Legionella, State.Code, Received.AddHours(hours), "I. Wendle", "Oxterhelm health office", "by telephone, reference OX-114");

    private static HistoryBuilder Builder(double value, string unit = "[CFU]/mL") => new HistoryBuilder { Rules = [State], VisitEveryDays = null }.Visit(0, record => record with
    {
        Readings =
        [
            HistoryBuilder.Tower(TestCodes.Legionella, value, unit) with
            {
                ResultAt = Moment.OfUtc(Received.AddHours(-3)), ReceivedAt = Moment.OfUtc(Received),
            },
        ],
    });

    private static IReadOnlyList<RunningClock> ClocksAt(HistoryBuilder builder, DateTime asOf) => builder.Assess(asOf).Clocks;
}
