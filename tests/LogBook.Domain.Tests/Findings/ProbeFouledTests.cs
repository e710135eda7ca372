using LogBook.Domain.Findings;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class ProbeFouledTests
{
    [Fact]
    public void CleaningTakesTheErrorAway_IsWatchThenPlan_AndLeadsReadsOff()
    {
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1279, 1361, cleaned: 1350));
        var first = builder.Assess().Open(FindingKinds.ProbeFouled);
        var second = builder.Visit(84, Probe(1279, 1361, cleaned: 1350)).Assess();

        // −6.02 % as found, −0.81 % after cleaning: 87 % of the error gone.
        Assert.Equal(Severity.Watch, first!.Severity);
        Assert.Equal(86.6, first.Evidence[0].Value!.Value, 0.1);
        Assert.Equal(Severity.Plan, second.Open(FindingKinds.ProbeFouled)!.Severity);
        Assert.Equal(Severity.Watch, second.Open(FindingKinds.ProbeReadsOff)!.Severity);
    }

    [Fact]
    public void CleaningChangesNothing_IsNone() =>
        Assert.Empty(new HistoryBuilder().Every(28, 2).Visit(56, Probe(1279, 1361, cleaned: 1282)).Assess().All(FindingKinds.ProbeFouled));

    [Fact]
    public void CalibratedDirtyTwiceToOneSide_IsPlan()
    {
        var finding = new HistoryBuilder().Every(28, 2)
            .Visit(56, Probe(1290, 1361, left: 1361, calibrated: true))
            .Visit(84)
            .Visit(112, Probe(1295, 1361, left: 1361, calibrated: true))
            .Assess().Open(FindingKinds.ProbeFouled);

        Assert.Equal(Severity.Plan, finding!.Severity);
        Assert.Equal(-4.85, finding.Evidence[0].Value!.Value, 0.01);
        Assert.Equal(-5.22, finding.Evidence[1].Value!.Value, 0.01);
    }

    [Fact]
    public void CalibratedAfterCleaning_IsNoDirtyCalibration() => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, Probe(1320, 1361, left: 1361, cleaned: 1325, calibrated: true))
        .Visit(84, Probe(1320, 1361, left: 1361, cleaned: 1325, calibrated: true))
        .Assess().All(FindingKinds.ProbeFouled));

    [Fact]
    public void OneJumpAmongThreeErrors_IsNoDirt()
    {
        // −2.5, −3.5 and −24 %: −10 % on average, but only the last is far off.
        var finding = new HistoryBuilder().Visit(0, Probe(1327, 1361)).Visit(28, Probe(1313, 1361)).Visit(56, Probe(1034, 1361)).Assess();

        Assert.Null(finding.Open(FindingKinds.ProbeFouled));
        Assert.NotNull(finding.Open(FindingKinds.ProbeReadsOff));
    }

    [Fact]
    public void ThreeErrorsToOneSide_AreJudgedByTheirMean()
    {
        // −4.2, −4.8, −5.4 %: mean −4.8. u: random sqrt(3) % × 0.952 / sqrt(3) = 0.952, hand meter 1.5 % × 0.952 = 1.43: 2u = 3.43.
        var finding = new HistoryBuilder().Visit(0, Probe(1303.8, 1361)).Visit(28, Probe(1295.7, 1361)).Visit(56, Probe(1287.5, 1361))
            .Assess().Open(FindingKinds.ProbeFouled);

        // 4.8 − 1.72 (one standard uncertainty) is not beyond 4 %: watched; 6.8 − 1.72 is.
        Assert.Equal(Severity.Watch, finding!.Severity);
        var clear = new HistoryBuilder().Visit(0, Probe(1276.6, 1361)).Visit(28, Probe(1268.5, 1361)).Visit(56, Probe(1260.3, 1361));
        Assert.Equal(Severity.Plan, clear.Assess().Open(FindingKinds.ProbeFouled)!.Severity);
        Assert.Equal(-4.8, finding.Evidence[0].Value!.Value, 0.01);
        Assert.Equal(-4.8 - 3.43, finding.Evidence[0].Low!.Value, 0.03);
    }

    [Fact]
    public void ThreeSmallErrorsToOneSide_AreNone() => Assert.Empty(new HistoryBuilder()
        .Visit(0, Probe(1320, 1361)).Visit(28, Probe(1319, 1361)).Visit(56, Probe(1320, 1361)).Visit(84, Probe(1318, 1361)).Assess().All(FindingKinds.ProbeFouled));

    [Fact]
    public void ThreeErrorsThatACalibrationGaveIt_AreNoDirt()
    {
        // Set to a reference that read 4.6 % high: the probe has been 4.6 % off ever since, and does not move.
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1361, 1427, left: 1427, cleaned: 1361, calibrated: true));
        builder.Visit(84, Probe(1427, 1361)).Visit(112, Probe(1429, 1361)).Visit(140, Probe(1428, 1361));

        Assert.Empty(builder.Assess().All(FindingKinds.ProbeFouled));
    }

    [Fact]
    public void ThreeErrorsLeftAfterCleaning_AreNoDirt()
    {
        // Left 4.4 % low after cleaning, found 4.6 to 4.9 % low since then: an offset, not a coat.
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1300, 1361, left: 1301, cleaned: 1301));
        builder.Visit(84, Probe(1298, 1361)).Visit(112, Probe(1295, 1361)).Visit(140, Probe(1294, 1361));

        Assert.Empty(builder.Assess().All(FindingKinds.ProbeFouled));
    }

    [Fact]
    public void ThreeErrorsThatGrewSinceTheLastCleaning_AreDirt()
    {
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Probe(1360, 1361, left: 1361, cleaned: 1361));
        builder.Visit(84, Probe(1280, 1361)).Visit(112, Probe(1270, 1361)).Visit(140, Probe(1262, 1361));

        Assert.Equal(Severity.Plan, builder.Assess().Open(FindingKinds.ProbeFouled)!.Severity);
    }

    private static Func<VisitedSystem, VisitedSystem> Probe(double found, double reference, double? left = null, double? cleaned = null, bool? calibrated = null) =>
        record => record with { Probes = [HistoryBuilder.Probe(found, reference, left) with { AfterCleaning = cleaned, Calibrated = calibrated }] };
}
