using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class ValueSuspectTests
{
    private static VisitedSystem With(VisitedSystem record, string test, double value, bool? confirmed = null, string at = SamplePoints.Tower) =>
        record with { Readings = [.. record.Readings.Select(r => r.Test == test && r.At == at ? r with { Value = value, Confirmed = confirmed } : r)] };

    private static VisitedSystem Shown(VisitedSystem record, double display) =>
        record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.Conductivity, display, "uS/cm") with { Source = ReadingSource.Controller }] };

    [Theory]
    [InlineData(515, null)]
    [InlineData(520, 520.0)]
    [InlineData(20.7, null)]
    [InlineData(20.5, 20.5)]
    public void Judge_FiveTimesOrAFifthOfTheUsual_IsWatchWithTheLimits(double chloride, double? doubted)
    {
        // Usual 103.5: five times is 517.5, a fifth 20.7.
        var builder = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, chloride));

        var finding = builder.Assess().Open(FindingKinds.ValueSuspect);

        Assert.Equal(doubted, finding?.Evidence.Single().Value);
        if (finding is not null)
        {
            Assert.Equal((Severity.Watch, TestCodes.Chloride, builder.IdOf(6)), (finding.Severity, finding.About!.Test, finding.FirstVisit));
            Assert.Equal((20.7, 517.5), (finding.Evidence[0].LimitLow!.Value, finding.Evidence[0].LimitHigh!.Value));
            Assert.Equal("mg/L", finding.Evidence[0].Unit);
        }
    }

    [Fact]
    public void Judge_ConfirmedAtEntry_SaysSoInThreeLanguages()
    {
        var finding = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, 1035, confirmed: true)).Assess()
            .Findings.Single(f => f.InEnglish.Kind == FindingKinds.ValueSuspect);

        Assert.EndsWith("It was asked again at entry and confirmed.", finding.In(Language.English).Text, StringComparison.Ordinal);
        Assert.EndsWith("se confirmó.", finding.In(Language.Spanish).Text, StringComparison.Ordinal);
        Assert.EndsWith("foi confirmado.", finding.In(Language.Portuguese).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_NextBelievableValue_Closes()
    {
        var builder = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, 1035)).Visit(196);

        Assert.Equal(FindingState.Closed, builder.Assess().All(FindingKinds.ValueSuspect).Single().State);
    }

    [Fact]
    public void Judge_FewEarlierValuesOrAfterACleanOrIdle_IsNothing()
    {
        var first = new HistoryBuilder().Every(28, 2).Visit(56, record => With(record, TestCodes.Chloride, 1035));
        var cleaned = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, 5) with { Events = [new VisitEvent { Type = EventType.Drained }] });
        var idle = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, 5) with { Running = false });

        Assert.Empty(first.Assess().All(FindingKinds.ValueSuspect));
        Assert.Empty(cleaned.Assess().All(FindingKinds.ValueSuspect));
        Assert.Empty(idle.Assess().All(FindingKinds.ValueSuspect));
    }

    [Theory]
    [InlineData(0, null, false)]
    [InlineData(16, null, false)]
    [InlineData(9.8, null, true)]
    [InlineData(0, true, true)]
    [InlineData(520, null, true)]
    public void Judge_ResidualThatFell_IsDoubtedOnlyWhereThePointMayHaveSlippedOrSomebodyInsisted(double inhibitor, bool? confirmed, bool doubted)
    {
        // A drum that ran empty leaves no inhibitor: that is residual-low, and nothing to read again.
        var builder = new HistoryBuilder().Every(28, 6).Visit(168, record => With(record, TestCodes.Inhibitor, inhibitor, confirmed));

        Assert.Equal(doubted, builder.Assess().Open(FindingKinds.ValueSuspect) is not null);
    }

    [Fact]
    public void Judge_BackInItsRangeAfterABadTime_IsNothing()
    {
        var builder = new HistoryBuilder { Inhibitor = 5 }.Every(28, 7).Visit(196, record => With(record, TestCodes.Inhibitor, 95));

        Assert.Empty(builder.Assess().All(FindingKinds.ValueSuspect));
    }

    [Fact]
    public void Judge_BeyondWhatCanBe_NeedsNoHistory()
    {
        var finding = new HistoryBuilder().Visit(0, record => With(record, TestCodes.Chloride, 12_000)).Assess().Open(FindingKinds.ValueSuspect)!;

        Assert.Equal((Severity.Watch, 12_000.0, 0.0, 10_000.0), (finding.Severity, finding.Evidence[0].Value!.Value, finding.Evidence[0].LimitLow!.Value, finding.Evidence[0].LimitHigh!.Value));
    }

    [Fact]
    public void Judge_SystemOnlyRecorded_IsJudgedToo()
    {
        var builder = new HistoryBuilder { System = system => system with { Kind = SystemKind.Other } }
            .Every(28, 6).Visit(168, record => With(record, TestCodes.Chloride, 1035));

        Assert.Equal(Severity.Watch, builder.Assess().Open(FindingKinds.ValueSuspect)!.Severity);
    }

    [Theory]
    [InlineData(1.019, false)]
    [InlineData(1.021, true)]
    public void Judge_ProbeCheckAndReadingsDiffer_NamesTheProbeAndBothNumbers(double share, bool doubted)
    {
        // The smaller number is 98 % of the larger at 1.0204.
        var conductivity = HistoryBuilder.ConductivityAt(4.5);
        var finding = new HistoryBuilder().Visit(0, record => Shown(record, conductivity * share)).Assess().Open(FindingKinds.ValueSuspect);

        Assert.Equal(doubted, finding is not null);
        if (finding is not null)
        {
            Assert.Equal((Severity.Watch, "C1"), (finding.Severity, finding.About!.Probe));
            Assert.Equal((conductivity, conductivity * share), (finding.Evidence[0].Value!.Value, finding.Evidence[0].LimitLow!.Value));
        }
    }

    [Fact]
    public void Judge_ProbeCheckThatAgreesAgain_Closes()
    {
        var builder = new HistoryBuilder().Visit(0, record => Shown(record, 1500)).Visit(28);

        Assert.Equal(FindingState.Closed, builder.Assess().All(FindingKinds.ValueSuspect).Single().State);
    }

    [Fact]
    public void Judge_MeterFasterThanItsPipe_NamesTheMeter()
    {
        // 4,000 L/h at most: 28 days carry 2,688 m³.
        var slow = new HistoryBuilder().Visit(0).Visit(28, record => record with { Meters = [new MeterReading { Meter = "MU", Dial = 10_000 + 2_600_000 }] });
        var fast = new HistoryBuilder().Visit(0).Visit(28, record => record with { Meters = [new MeterReading { Meter = "MU", Dial = 10_000 + 2_900_000 }] });

        Assert.Empty(slow.Assess().All(FindingKinds.ValueSuspect));
        var finding = fast.Assess().Open(FindingKinds.ValueSuspect)!;
        Assert.Equal((Severity.Watch, "MU", 4_000.0), (finding.Severity, finding.About!.Meter, finding.Evidence[0].LimitHigh!.Value));
        Assert.Equal(2_900_000 / 672.0, finding.Evidence[0].Value!.Value, 1e-6);
    }

    [Fact]
    public void Judge_MoreHoursThanHavePassed_NamesTheOutput()
    {
        var builder = new HistoryBuilder().Visit(0).Visit(28, record => record with { HoursRun = [new HoursReading { Output = "bleed", Hours = 100 + 700 }] });

        var finding = builder.Assess().Open(FindingKinds.ValueSuspect)!;

        Assert.Equal((Severity.Watch, "bleed", 700.0, 672.0), (finding.Severity, finding.About!.Output, finding.Evidence[0].Value!.Value, finding.Evidence[0].LimitHigh!.Value));
    }
}
