using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Clocks;

/// <summary>Rules of the invented Oxterhelm Code; its numbers are those of the demo firm.</summary>
public sealed class DutiesTests
{
    private static readonly Rule Legionella = new()
    {
        Code = "OXT-LEG",
        Name = "Oxterhelm Code, Legionella",
        Jurisdiction = "Oxterhelm",
        From = new DateOnly(2024, 7, 1),
        Test = TestCodes.Legionella,
        EveryDays = 90,
        RetestDays = [3, 7],
        Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan }],
    };

    private static readonly Rule AfterStart = new()
    {
        Code = "OXT-START",
        Name = "Oxterhelm Code, sample after a start",
        Jurisdiction = "Oxterhelm",
        From = new DateOnly(2024, 7, 1),
        OnEvent = "started",
        WithinDays = 14,
    };

    private static readonly Rule Cleaning = new()
    {
        Code = "OXT-CLEAN",
        Name = "Oxterhelm Code, cleaning",
        From = new DateOnly(2024, 7, 1),
        Task = "cleaning",
        EveryDays = 180,
    };

    [Fact]
    public void Retest_AfterAResultInABand_IsDueInItsWindowFromReceipt()
    {
        var builder = Builder(Legionella);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);

        var duty = Assert.Single(DutiesOn(builder, 12), d => d.Kind == DutyKind.Retest);

        Assert.Equal((Day(10), Day(13), false), (duty.Since, duty.NotBefore!.Value, duty.IsMet));
        Assert.False(duty.IsOverdueOn(Day(17)));
        Assert.True(duty.IsOverdueOn(Day(18)));
    }

    [Fact]
    public void Interval_AfterAResultInABand_IsShorterUntilALaterOneLiesBelow()
    {
        // Every 90 days; every 30 from 20, every 7 from 1000 CFU/mL on.
        var rule = Legionella with
        {
            RetestDays = [],
            Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, EveryDays = 30 }, new RuleBand { From = 1000, Unit = "[CFU]/mL", Severity = Severity.Act, EveryDays = 7 }],
        };
        var builder = Builder(rule);
        Sample(builder, day: 0, value: 5, resultAfterDays: 10);
        Sample(builder, day: 60, value: 300, resultAfterDays: 10);
        Sample(builder, day: 80, value: 1500, resultAfterDays: 12);
        Sample(builder, day: 95, value: 2, resultAfterDays: 10);
        (DateOnly Since, DateOnly LastDay, double? Every) On(int day) => Assert.Single(DutiesOn(builder, day), duty => duty.Kind == DutyKind.Interval) is var duty ? (duty.Since, duty.LastDay, duty.EveryDays) : default;

        Assert.Equal((Day(0), Day(90), 90), On(59));

        // Nobody knows before the result is there; from then on it counts from the sample.
        Assert.Equal((Day(60), Day(150), 90), On(69));
        Assert.Equal((Day(60), Day(90), 30), On(71));

        // The next sample waits for its result: the one before it still asks for 30 days. Then 7 are over already; it is due on the day it was known.
        Assert.Equal((Day(80), Day(110), 30), On(91));
        Assert.Equal((Day(80), Day(92), 7), On(93));
        Assert.Equal((Day(95), Day(102), 7), On(104));
        Assert.Equal((Day(95), Day(185), 90), On(106));
    }

    [Fact]
    public void Interval_ShortenedBand_IsTheSameInTheRecord()
    {
        var rule = Legionella with { RetestDays = [], Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, EveryDays = 30 }] };
        var builder = Builder(rule);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);
        Sample(builder, day: 40, value: 2, resultAfterDays: 10);
        Sample(builder, day: 120, value: 2, resultAfterDays: 10);

        var spells = Assert.Single(RuleRecords.Of(builder.Build(), Day(0), Day(130))).Spells.Where(spell => spell.Kind == DutyKind.Interval);

        Assert.Equal(
            [(Day(0), Day(30), RuleStanding.Missed, 10), (Day(40), Day(130), RuleStanding.Met, 0), (Day(120), Day(210), RuleStanding.Running, 0)],
            spells.Select(spell => (spell.Since, spell.DueBy, spell.Standing, spell.DaysOver)));
    }

    [Theory]
    [InlineData(89.0, 0)]
    [InlineData(90.0, 1)]
    [InlineData(120.0, 1)]
    public void Band_IntervalNotShorterThanTheRules_IsRefused(double everyDays, int issues)
    {
        var rule = Legionella with { Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, EveryDays = everyDays }] };
        var json = ExchangeWriter.Write(new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version, Rules = [rule] });

        var found = ExchangeReader.ReadAndCheck(json, FirmSetUp.Empty).Issues;

        Assert.Equal(issues, found.Count(issue => issue is { Code: "not-shorter", Path: "rules[0].bands[0].everyDays" }));
        Assert.Equal(issues, found.Count);
    }

    [Fact]
    public void Retest_LaterVersionWithAnotherBandAndWindow_LeavesOlderResultsToTheirOwn()
    {
        var change = Day(12);
        var (old, changed) = (Legionella with { To = change.AddDays(-1) }, Legionella with { From = change, RetestDays = [1, 2], Bands = [new RuleBand { From = 1000, Unit = "[CFU]/mL", Severity = Severity.Plan }] });
        var builder = Builder(old, changed);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);

        var duty = Assert.Single(DutiesOn(builder, 20), d => d.Kind == DutyKind.Retest);

        Assert.Equal((old.From, Day(13)), (duty.Rule.From, duty.NotBefore!.Value));
    }

    [Fact]
    public void Retest_VisitAmendedWithoutReceipt_CountsFromItsFirstVersion()
    {
        var builder = Builder(Legionella);
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 300, "[CFU]/mL")] });
        var before = Assert.Single(DutiesOn(builder, 12), d => d.Kind == DutyKind.Retest).Since;
        var amended = builder.Visits[0] with { Version = 2, AmendedAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(10)), Notes = "the key was with the porter" };

        var known = builder.Build([.. builder.Visits, amended]).AsKnownAt(HistoryBuilder.Start.AddDays(12));

        Assert.Equal(before, Assert.Single(Duties.Of(known, known.Visits.Reverse(), Day(12)), d => d.Kind == DutyKind.Retest).Since);
    }

    [Fact]
    public void Retest_AfterDisinfection_CountsFromIt()
    {
        var builder = Builder(Legionella);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);
        builder.Visit(12, record => record with { Readings = [], Events = [new VisitEvent { Type = EventType.Disinfected }] });

        Assert.Equal(Day(12), Assert.Single(DutiesOn(builder, 13), d => d.Kind == DutyKind.Retest).Since);
    }

    [Theory]
    [InlineData(11, false, 11)]
    [InlineData(14, true, null)]
    public void Retest_Sampled_CountsOnlyWithinItsWindow(int day, bool isMet, int? tooEarlyOn)
    {
        var builder = Builder(Legionella);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);
        Sample(builder, day, value: 5, resultAfterDays: 10);

        var duty = Assert.Single(DutiesOn(builder, day + 1), d => d.Kind == DutyKind.Retest);

        Assert.Equal((isMet, tooEarlyOn is { } early ? Day(early) : (DateOnly?)null), (duty.IsMet, duty.TooEarlyOn));
    }

    [Theory]
    [InlineData(19)]
    [InlineData(null)]
    public void Retest_ResultBelowTheBandOrStillToCome_IsNotAskedFor(int? value)
    {
        var builder = Builder(Legionella);
        Sample(builder, day: 0, value: value ?? 300, resultAfterDays: value is null ? 60 : 1);

        Assert.DoesNotContain(DutiesOn(builder, 30), d => d.Kind == DutyKind.Retest);
    }

    [Fact]
    public void Retest_LaterLargeResult_OpensAnotherWindow()
    {
        var builder = Builder(Legionella);
        Sample(builder, day: 0, value: 300, resultAfterDays: 10);
        Sample(builder, day: 14, value: 40, resultAfterDays: 10);

        var duty = Assert.Single(DutiesOn(builder, 25), d => d.Kind == DutyKind.Retest);

        Assert.Equal((Day(24), false), (duty.Since, duty.IsMet));
    }

    [Fact]
    public void AfterEvent_StartedAndNotSampled_IsOverdueOnTheFifteenthDay()
    {
        var builder = Builder(AfterStart, Legionella);
        builder.Visit(0, record => record with { Readings = [], Events = [new VisitEvent { Type = EventType.Started }] });

        var duty = Assert.Single(DutiesOn(builder, 1), d => d.Kind == DutyKind.AfterEvent);

        Assert.False(duty.IsOverdueOn(Day(14)));
        Assert.True(duty.IsOverdueOn(Day(15)));
        var finding = builder.Assess(HistoryBuilder.Start.AddDays(20)).All(FindingKinds.ClockDue).Single(f => f.About!.Rule == "OXT-START");
        Assert.Equal((Severity.Act, Day(12)), (finding.Severity, finding.FirstSeen));
    }

    [Fact]
    public void AfterEvent_Sampled_IsMet()
    {
        var builder = Builder(AfterStart, Legionella);
        builder.Visit(0, record => record with { Readings = [], Events = [new VisitEvent { Type = EventType.Started }] });
        Sample(builder, day: 9, value: 5, resultAfterDays: 10);

        Assert.True(Assert.Single(DutiesOn(builder, 10), d => d.Kind == DutyKind.AfterEvent).IsMet);
    }

    [Fact]
    public void AfterEvent_SampledAgainLater_StaysMetByTheFirstSample()
    {
        var builder = Builder(AfterStart, Legionella);
        Sample(builder, day: 0, value: 5, resultAfterDays: 1);
        builder.Visit(2, record => record with { Readings = [], Events = [new VisitEvent { Type = EventType.Started }] });
        Sample(builder, day: 9, value: 5, resultAfterDays: 1);
        Sample(builder, day: 60, value: 5, resultAfterDays: 1);

        var duty = Assert.Single(DutiesOn(builder, 62), d => d.Kind == DutyKind.AfterEvent);

        Assert.Equal((true, Day(9)), (duty.IsMet, DateOnly.FromDateTime(duty.LastDone!.Value)));
    }

    [Fact]
    public void AfterEvent_NoEvent_DoesNotRun()
    {
        var builder = Builder(AfterStart);
        builder.Visit(0);

        Assert.Empty(DutiesOn(builder, 40));
    }

    [Fact]
    public void Task_DoneByEventVisitOrAction_RunsFromThatDay()
    {
        foreach (var done in new Func<HistoryBuilder, HistoryBuilder>[]
                 {
                     b => b.Visit(30, record => record with { Events = [new VisitEvent { Type = EventType.Cleaned }] }),
                     b => b.Visit(30, changeVisit: visit => visit with { Kind = VisitKind.Cleaning }),
                     b => b.Visit(30, record => record with { Actions = [new VisitAction { For = "cleaning", Text = "clean the basin", State = ActionState.Done }] }),
                 })
        {
            var builder = Builder(Cleaning);
            builder.Visit(0);

            Assert.Equal(Day(0), Assert.Single(DutiesOn(builder, 40)).Since);
            Assert.Equal(Day(30), Assert.Single(DutiesOn(done(builder), 40)).Since);
        }
    }

    [Fact]
    public void Task_OfAContract_IsPlanWhenOverdue()
    {
        var builder = Builder(Cleaning);
        builder.Visit(0);

        var finding = builder.Assess(HistoryBuilder.Start.AddDays(185)).All(FindingKinds.ClockDue).Single(f => f.About?.Rule == "OXT-CLEAN");

        Assert.Equal(Severity.Plan, finding.Severity);
        Assert.Contains("cleaning", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Rule_InANewVersion_CountsFromItsOwnInterval()
    {
        var builder = Builder(Legionella with { To = new DateOnly(2025, 2, 28) }, Legionella with { From = new DateOnly(2025, 3, 1), EveryDays = 28 });
        Sample(builder, day: 0, value: 5, resultAfterDays: 1);

        Assert.Equal(90, Assert.Single(DutiesOn(builder, 40)).Days);
        Assert.Equal(28, Assert.Single(DutiesOn(builder, 60)).Days);
    }

    private static HistoryBuilder Builder(params Rule[] rules) => new() { Rules = rules, VisitEveryDays = null };

    private static void Sample(HistoryBuilder builder, int day, double value, int resultAfterDays) => builder.Visit(day, record => record with
    {
        Readings = [HistoryBuilder.Tower(TestCodes.Legionella, value, "[CFU]/mL") with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(day + resultAfterDays)) }],
    });

    private static DateOnly Day(int day) => DateOnly.FromDateTime(HistoryBuilder.Start).AddDays(day);

    private static IReadOnlyList<Duty> DutiesOn(HistoryBuilder builder, int day)
    {
        var known = builder.Build().AsKnownAt(HistoryBuilder.Start.AddDays(day));
        return Duties.Of(known, known.Visits.Reverse(), Day(day));
    }
}
