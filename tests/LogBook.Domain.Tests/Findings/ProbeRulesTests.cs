using LogBook.Domain.Findings;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class ProbeRulesTests
{
    private static Func<VisitedSystem, VisitedSystem> Probe(double found, double reference = 1361, double? left = null, double? settled = 11, double? cleaned = null, bool? calibrated = null) =>
        record => record with { Probes = [HistoryBuilder.Probe(found, reference, left) with { SettledMin = settled, AfterCleaning = cleaned, Calibrated = calibrated }] };

    [Fact]
    public void ProbeReadsOff_FirstTime_IsWatchWithItsInterval()
    {
        var finding = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1260)).Assess().Open(FindingKinds.ProbeReadsOff);

        // 100 (1260 / 1361 − 1) = −7.42 %. Relative u: display 1 %, hand meter 1 %, compensation 1 %, its common part 1.5 %:
        // sqrt(1 + 1 + 1 + 2.25) = 2.291 %, times 1260 / 1361 = 2.121 points; k = 2: ±4.24.
        Assert.NotNull(finding);
        Assert.Equal(Severity.Watch, finding.Severity);
        Assert.Equal("C1", finding.About!.Probe);
        var evidence = finding.Evidence[0];
        Assert.Equal(-7.421, evidence.Value!.Value, 0.001);
        Assert.Equal(-7.421 - 4.243, evidence.Low!.Value, 0.002);
        Assert.Equal(-7.421 + 4.243, evidence.High!.Value, 0.002);
        Assert.Equal(-5, evidence.LimitLow);
        Assert.Equal(5, evidence.LimitHigh);
        Assert.Contains("common practice", finding.Text, StringComparison.Ordinal);
        Assert.InRange(finding.Suggests.Count, 1, 3);
    }

    [Fact]
    public void ProbeReadsOff_SecondTime_IsPlan() =>
        Assert.Equal(Severity.Plan, new HistoryBuilder().Every(28, 2).Visit(56, Probe(1260)).Visit(84, Probe(1258)).Assess().Open(FindingKinds.ProbeReadsOff)!.Severity);

    [Fact]
    public void ProbeReadsOff_OtherSideTheSecondTime_StaysWatch() =>
        Assert.Equal(Severity.Watch, new HistoryBuilder().Every(28, 2).Visit(56, Probe(1260)).Visit(84, Probe(1462)).Assess().Open(FindingKinds.ProbeReadsOff)!.Severity);

    [Fact]
    public void ProbeReadsOff_LeftTwelvePercentOff_IsAct() =>
        Assert.Equal(Severity.Act, new HistoryBuilder().Every(28, 2).Visit(56, Probe(1198, left: 1198)).Assess().Open(FindingKinds.ProbeReadsOff)!.Severity);

    [Fact]
    public void ProbeReadsOff_OneSidedErrorWithinTolerance_IsNone() =>
        Assert.Empty(new HistoryBuilder().Every(28, 2).Visit(56, Probe(1300)).Assess().All(FindingKinds.ProbeReadsOff));

    [Fact]
    public void ProbeReadsOff_UnprovedHandMeter_NeverMoreThanWatch()
    {
        var assessment = new HistoryBuilder { IsInstrumentProved = false }.Every(28, 2).Visit(56, Probe(1230)).Visit(84, Probe(1230)).Assess();

        // −9.6 % against 2u = 2 × sqrt(1 + 1 + 1 + 9) × 0.904 = 6.3 %: evidence, but of an instrument nobody proved.
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.ProbeReadsOff)!.Severity);
    }

    [Fact]
    public void ProbeReadsOff_ReferenceNotSettled_IsNotJudged()
    {
        var assessment = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1260, settled: 2)).Assess();

        Assert.Empty(assessment.All(FindingKinds.ProbeReadsOff));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.ProbeReadsOff && n.Why.Code == "reference-not-settled");
    }

    [Fact]
    public void ProbeReadsOff_GoneAndBack_IsANewFindingThatNamesTheEarlier()
    {
        var findings = new HistoryBuilder().Visit(0, Probe(1260)).Visit(28, Probe(1360)).Visit(56, Probe(1255)).Assess().All(FindingKinds.ProbeReadsOff);

        Assert.Equal(2, findings.Count);
        Assert.Equal((FindingState.Closed, new DateOnly(2025, 2, 3)), (findings[0].State, findings[0].ClosedOn!.Value));
        Assert.Equal((FindingState.Open, new DateOnly(2025, 3, 3), new DateOnly(2025, 1, 6)), (findings[1].State, findings[1].FirstSeen, findings[1].Earlier!.Value));
    }

    [Fact]
    public void ProbeReadsOff_VisitThatDidNotCompare_LeavesItOpen() =>
        Assert.NotNull(new HistoryBuilder().Visit(0, Probe(1260)).Visit(28, record => record with { Probes = [] }).Assess().Open(FindingKinds.ProbeReadsOff));

    [Fact]
    public void ProbeDrifting_SteadySlope_ForecastsTheNextVisit()
    {
        var builder = new HistoryBuilder();
        double[] errors = [-0.5, -1.6, -2.4, -3.6, -4.5];
        for (var i = 0; i < errors.Length; i++)
        {
            builder.Visit(28 * i, Probe(1361 * (1 + (errors[i] / 100))));
        }

        var finding = builder.Assess().Open(FindingKinds.ProbeDrifting);

        // x = 0, 28 … 112 days: mean error −2.52, Sxy = −28 × (−2 × −0.5 …) = 28 × Σ(i − 2) e = 28 × −10.0 = −280, Sxx = 7840:
        // slope −0.035714 %/d; at day 140 (84 days past the middle) −2.52 − 3.0 = −5.52 %.
        Assert.NotNull(finding);
        Assert.Equal(-0.035714, finding.Evidence[0].Value!.Value, 1e-5);
        Assert.True(finding.Evidence[0].High < 0);
        Assert.Equal(-5.52, finding.Evidence[1].Value!.Value, 0.005);
        Assert.Equal(Severity.Watch, finding.Severity);
    }

    [Fact]
    public void ProbeDrifting_SeriesAcrossACleaning_IsNone()
    {
        var builder = new HistoryBuilder();
        double[] errors = [-0.5, -1.6, -2.4, -3.6, -4.5];
        for (var i = 0; i < errors.Length; i++)
        {
            builder.Visit(28 * i, Probe(1361 * (1 + (errors[i] / 100)), cleaned: i == 2 ? 1360 : null));
        }

        Assert.Empty(builder.Assess().All(FindingKinds.ProbeDrifting));
    }

    [Fact]
    public void ProbeDrifting_AnotherHandMeter_BreaksTheSeries()
    {
        var builder = new HistoryBuilder();
        double[] errors = [-0.5, -1.6, -2.4, -3.6, -4.5];
        for (var i = 0; i < errors.Length; i++)
        {
            var meter = i < 2 ? "HM-1" : "HM-2";
            builder.Visit(28 * i, record => record with { Probes = [HistoryBuilder.Probe(1361 * (1 + (errors[i] / 100)), 1361) with { Instrument = meter }] });
        }

        Assert.Empty(builder.Assess().All(FindingKinds.ProbeDrifting));
    }
}
