using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Clocks;

public sealed class CountResponseTests
{
    private static readonly Rule State = RuleTemplates.All.Single(template => template.Rule.Code == "NYS-LEG").Rule;

    /// <summary>20 CFU/mL = 2,000 per 100 mL = 20,000 CFU/L: plain arithmetic of the units.</summary>
    [Theory]
    [InlineData(20, "[CFU]/mL")]
    [InlineData(2_000, "[CFU]/(100.mL)")]
    [InlineData(20_000, "[CFU]/L")]
    public void Converted_AnyUnit_IsTheSameNumberInAllThree(double value, string unit)
    {
        var response = Assert.Single(ResponsesAt(Builder(value, unit), 12));

        Assert.Equal([("[CFU]/mL", 20.0), ("[CFU]/(100.mL)", 2_000.0), ("[CFU]/L", 20_000.0)], response.Converted.Select(amount => (amount.Unit, Math.Round(amount.Value, 6))));
        Assert.Equal((20.0, State.From), (response.Band!.From, response.Rule!.From));
    }

    [Fact]
    public void Band_IsOfTheRuleInForceOnTheDayOfTheSample()
    {
        // Sampled on 6 January; the stricter version begins on the 10th.
        var change = new DateOnly(2025, 1, 10);
        var builder = Builder(15, "[CFU]/mL");
        builder.Rules = [State with { To = change.AddDays(-1) }, State with { From = change, Bands = [new RuleBand { From = 10, Unit = "[CFU]/mL", Severity = LogBook.Domain.Findings.Severity.Act }] }];

        var response = Assert.Single(ResponsesAt(builder, 12));

        Assert.Null(response.Band);
        Assert.Equal(State.From, response.Rule!.From);
    }

    [Fact]
    public void Result_NotThereYet_IsNotShown() => Assert.Empty(ResponsesAt(Builder(300, "[CFU]/mL"), 5));

    [Fact]
    public void Done_DisinfectionSampleAndNotice_StandInTheirOrder()
    {
        var builder = Builder(1_500, "[CFU]/mL");
        builder.Visit(11, record => record with { Readings = [], Events = [new VisitEvent { Type = EventType.Disinfected }] });
        Sample(builder, 15, 2, "[CFU]/mL", 20);
        builder.Notifications = [new Notification(builder.IdOf(0), TestCodes.Legionella, State.Code, HistoryBuilder.Start.AddDays(10).AddHours(3), "I. Wendle", "health office", "OX-114")];

        var response = Assert.Single(ResponsesAt(builder, 16));

        Assert.Equal(
            ["I. Wendle told health office: OX-114", "Disinfected", "Legionella sampled"],
            response.Done.Select(act => act.What.In(Language.English)));
        Assert.Equal([DutyKind.Retest, DutyKind.Notify], response.Clocks.Select(clock => clock.Kind));
        Assert.All(response.Clocks, clock => Assert.Equal(ClockStanding.Met, clock.StandingAt(HistoryBuilder.Start.AddDays(16))));
        Assert.Equal(HistoryBuilder.Start.AddDays(15), response.PendingSince);
    }

    [Fact]
    public void Newest_BelowTheBands_StillShowsTheOpenRetestOfTheOneBefore()
    {
        var builder = Builder(300, "[CFU]/mL");
        Sample(builder, 11, 5, "[CFU]/mL", 1);

        var response = Assert.Single(ResponsesAt(builder, 13));

        Assert.Equal(5, response.Reading.Value);
        Assert.Null(response.Band);
        Assert.Equal(new DateOnly(2025, 1, 17), Assert.Single(response.Clocks).TooEarlyOn);
    }

    [Fact]
    public void DetectionLimit_HasNoBand()
    {
        var builder = new HistoryBuilder { Rules = [State], VisitEveryDays = null }.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 100, "[CFU]/mL") with { Qualifier = "<" }] });

        Assert.Null(Assert.Single(ResponsesAt(builder, 1)).Band);
    }

    [Fact]
    public void ReceivedAt_VisitAmendedWithoutReceipt_StaysAndTheNoticeIsShown()
    {
        // Known when the visit was over at 10:00, told three hours later; the next day somebody adds a note.
        var builder = new HistoryBuilder { Rules = [State], VisitEveryDays = null }
            .Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 1_500, "[CFU]/mL")] });
        var known = HistoryBuilder.Start.AddHours(1);
        builder.Notifications = [new Notification(builder.IdOf(0), TestCodes.Legionella, State.Code, known.AddHours(3), "I. Wendle", "health office", "OX-114")];
        var amended = builder.Visits[0] with { Version = 2, AmendedBy = "RYA", AmendedAt = Moment.OfUtc(known.AddDays(1)), Reason = "a note was missing" };

        var response = Assert.Single(CountResponse.Of(builder.Build([builder.Visits[0], amended]), HistoryBuilder.Start.AddDays(3), 0.2));

        Assert.Equal(known, response.ReceivedAt);
        Assert.Contains("I. Wendle told health office: OX-114", response.Done.Select(act => act.What.In(Language.English)));
        Assert.Equal(ClockStanding.Met, response.Clocks.Single(clock => clock.Kind == DutyKind.Notify).StandingAt(HistoryBuilder.Start.AddDays(3)));
    }

    private static HistoryBuilder Builder(double value, string unit)
    {
        var builder = new HistoryBuilder { Rules = [State], VisitEveryDays = null };
        Sample(builder, 0, value, unit, 10);
        return builder;
    }

    private static void Sample(HistoryBuilder builder, int day, double value, string unit, int resultAfterDays) => builder.Visit(day, record => record with
    {
        Readings = [HistoryBuilder.Tower(TestCodes.Legionella, value, unit) with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(day + resultAfterDays)) }],
    });

    private static IReadOnlyList<CountResponse> ResponsesAt(HistoryBuilder builder, int day) => CountResponse.Of(builder.Build(), HistoryBuilder.Start.AddDays(day), 0.2);
}
