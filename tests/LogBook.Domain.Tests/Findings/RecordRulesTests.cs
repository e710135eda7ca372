using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class RecordRulesTests
{
    private static VisitedSystem Without(VisitedSystem record, string test) => record with { Readings = [.. record.Readings.Where(r => r.Test != test)] };

    private static VisitedSystem Seen(VisitedSystem record, string text = "light algae", params VisitAction[] actions) =>
        record with { Observations = [new Observation { About = "basin", Text = text }], Actions = actions };

    [Fact]
    public void NotMeasured_TestMissedTwiceRunning_IsWatchThenPlan()
    {
        var builder = new HistoryBuilder().Every(28, 3).Visit(84, record => Without(record, TestCodes.Inhibitor));
        Assert.Empty(builder.Assess().All(FindingKinds.NotMeasured));

        builder.Visit(112, record => Without(record, TestCodes.Inhibitor));
        Assert.Equal((Severity.Watch, "inhibitor"), (builder.Assess().Open(FindingKinds.NotMeasured)!.Severity, builder.Assess().Open(FindingKinds.NotMeasured)!.About!.Test));

        builder.Visit(140, record => Without(record, TestCodes.Inhibitor));
        Assert.Equal(Severity.Plan, builder.Assess().Open(FindingKinds.NotMeasured)!.Severity);

        builder.Visit(168);
        Assert.Equal(FindingState.Closed, builder.Assess().All(FindingKinds.NotMeasured).Single().State);
    }

    [Fact]
    public void NotMeasured_NeverMeasuredHereOrIdle_IsNothing()
    {
        var never = new HistoryBuilder();
        for (var i = 0; i < 4; i++)
        {
            never.Visit(28 * i, record => Without(record, TestCodes.Inhibitor));
        }

        var idle = new HistoryBuilder().Every(28, 3);
        for (var i = 3; i < 6; i++)
        {
            idle.Visit(28 * i, record => Without(record, TestCodes.Inhibitor) with { Running = false });
        }

        Assert.Empty(never.Assess().All(FindingKinds.NotMeasured));
        Assert.Empty(idle.Assess().All(FindingKinds.NotMeasured));
    }

    [Theory]
    [InlineData(35, null)]
    [InlineData(36, Severity.Watch)]
    [InlineData(71, Severity.Plan)]
    public void NotMeasured_MeterUnproved_CountsDaysSinceTheLastCheck(int days, Severity? expected)
    {
        var builder = new HistoryBuilder().Visit(0).Visit(days);
        var document = builder.Document();
        var firm = new Domain.History.FirmSetUp(document with
        {
            Instruments = [document.Instruments[0] with { Checks = [new InstrumentCheck { At = Moment.OfUtc(HistoryBuilder.Start.AddHours(-1)), Standard = 1413, Read = 1410, Unit = "uS/cm" }] }],
        });

        var finding = Assessment.Of(Domain.History.SystemHistory.From(firm, "YAF-1", "CT-1", builder.Visits), HistoryBuilder.Start.AddDays(days + 1)).Open(FindingKinds.NotMeasured);

        Assert.Equal(expected, finding?.Severity);
        Assert.True(finding is null || finding.About!.Instrument == "HM-1");
    }

    [Theory]
    [InlineData(Severity.Act, Severity.Plan, Severity.Plan)]
    [InlineData(Severity.Plan, Severity.Plan, Severity.Plan)]
    [InlineData(Severity.Watch, Severity.Watch, Severity.Plan)]
    [InlineData(null, Severity.Watch, Severity.Plan)]
    public void SeenAgain_TwiceWithoutAction_IsPlanUntilItIsGone(Severity? stated, Severity second, Severity third)
    {
        VisitedSystem Stated(VisitedSystem record, string text = "light algae") => Seen(record) with { Observations = [new Observation { About = "basin", Text = text, Severity = stated }] };
        var builder = new HistoryBuilder().Visit(0, record => Stated(record));
        Assert.Empty(builder.Assess().All(FindingKinds.SeenAgain));

        builder.Visit(14, record => Stated(record, "Light  algae"));
        Assert.Equal(second, builder.Assess().Open(FindingKinds.SeenAgain)!.Severity);

        builder.Visit(28, record => Stated(record));
        Assert.Equal(third, builder.Assess().Open(FindingKinds.SeenAgain)!.Severity);

        builder.Visit(56);
        Assert.Equal(FindingState.Closed, builder.Assess().All(FindingKinds.SeenAgain).Single().State);
    }

    [Fact]
    public void SeenAgain_ActionDoneOrOtherText_IsNothing()
    {
        var done = new HistoryBuilder().Visit(0, record => Seen(record, "light algae", new VisitAction { For = "basin", Text = "cleaned", State = ActionState.Done })).Visit(28, record => Seen(record));
        var other = new HistoryBuilder().Visit(0, record => Seen(record)).Visit(28, record => Seen(record, "float valve drips"));

        Assert.Empty(done.Assess().All(FindingKinds.SeenAgain));
        Assert.Empty(other.Assess().All(FindingKinds.SeenAgain));
    }

    [Theory]
    [InlineData(23, null, null, false, null)]
    [InlineData(25, null, null, false, Severity.Plan)]
    [InlineData(25, 20, null, false, null)]
    [InlineData(3, null, 2, false, Severity.Plan)]
    [InlineData(47, null, null, true, Severity.Plan)]
    [InlineData(49, null, null, true, Severity.Act)]
    public void SummaryUndelivered_BounceAtOnceElseAfterADayAndActWhenAPromisePasses(int hours, int? accepted, int? refused, bool promised, Severity? expected)
    {
        var builder = new HistoryBuilder().Visit(0);
        var document = builder.Document();
        var firm = new Domain.History.FirmSetUp(document with { Sites = [document.Sites[0] with { SummaryWithinHours = promised ? 48 : null }] });
        var left = HistoryBuilder.Start.AddHours(1);
        var inputs = new AssessmentInputs
        {
            Deliveries = [new SummaryDelivery(builder.IdOf(0), 1, left, accepted is { } a ? left.AddHours(a) : null, refused is { } r ? left.AddHours(r) : null)],
        };

        var finding = Assessment.Of(Domain.History.SystemHistory.From(firm, "YAF-1", "CT-1", builder.Visits), left.AddHours(hours), inputs).Open(FindingKinds.SummaryUndelivered);

        Assert.Equal(expected, finding?.Severity);
        Assert.True(finding is null || finding.FirstVisit == builder.IdOf(0));
    }

    [Theory]
    [InlineData(-1, Severity.Plan)]
    [InlineData(0, Severity.Act)]
    public void SummaryUndelivered_PromisedByADayOfTheMonth_ActsFromItsEnd(int hours, Severity expected)
    {
        var builder = new HistoryBuilder().Visit(0);
        var document = builder.Document();
        var firm = new Domain.History.FirmSetUp(document with { Sites = [document.Sites[0] with { SummaryByMonthDay = 10 }] });
        var left = HistoryBuilder.Start.AddHours(1);
        var due = Domain.Clocks.SummaryPromise.DueOf(firm.Sites["YAF-1"], TimeZoneInfo.FindSystemTimeZoneById(document.Sites[0].TimeZone), left)!.Value;
        var inputs = new AssessmentInputs { Deliveries = [new SummaryDelivery(builder.IdOf(0), 1, left, null, null)] };

        var finding = Assessment.Of(Domain.History.SystemHistory.From(firm, "YAF-1", "CT-1", builder.Visits), due.AddHours(hours), inputs).Open(FindingKinds.SummaryUndelivered)!;

        Assert.Equal(expected, finding.Severity);
        Assert.Equal(expected == Severity.Act, finding.Text.Contains("was promised by 10", StringComparison.Ordinal));
    }

    [Fact]
    public void SummaryUndelivered_AcceptedLater_Closes()
    {
        var builder = new HistoryBuilder().Visit(0);
        var left = HistoryBuilder.Start.AddHours(1);
        var inputs = new AssessmentInputs { Deliveries = [new SummaryDelivery(builder.IdOf(0), 1, left, left.AddHours(30), null)] };

        var finding = Assessment.Of(builder.Build(), left.AddHours(40), inputs).All(FindingKinds.SummaryUndelivered).Single();

        Assert.Equal(FindingState.Closed, finding.State);
    }
}
