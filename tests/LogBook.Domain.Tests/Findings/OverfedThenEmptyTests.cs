using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class OverfedThenEmptyTests
{
    [Fact]
    public void Judge_LeftInHand_TellsHowLongItFedAndHowLongItWasEmpty()
    {
        // 48.4 L left at day 56 and 46.4 L above the heel; 1.283 L/h empties that in 36.2 h = 1.51 days of 28.
        var finding = LeftInHand(residual: 0).Assess().Open(FindingKinds.OverfedThenEmpty)!;
        var stock = 55 - (56 * 100 * 19_400 / 4.5 / 1e6 / 1.12) - 2;

        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Equal(stock / 1.283 / 24, finding.Evidence[1].Value!.Value, 0.03);
        Assert.Equal(28 - (stock / 1.283 / 24), finding.Evidence[2].Value!.Value, 0.03);
        Assert.True(finding.Evidence[1].Low < finding.Evidence[1].Value);
        Assert.Contains("overfed for about", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_LeftInHand_IsTheHeadline()
    {
        var assessment = LeftInHand(residual: 0, added: 0).Assess();

        Assert.Null(assessment.Open(FindingKinds.FeedLow));
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.ResidualLow)!.Severity);
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.RunsOut)!.Severity);
        Assert.Null(assessment.Open(FindingKinds.WrongProduct));
        Assert.Null(assessment.Open(FindingKinds.PumpOutput));
    }

    [Fact]
    public void Judge_ResidualStillThere_IsNoFinding() => Assert.Empty(LeftInHand(residual: 60).Assess().All(FindingKinds.OverfedThenEmpty));

    [Fact]
    public void Judge_NoResidualMeasured_IsPlan() => Assert.Equal(Severity.Plan, LeftInHand(residual: null).Assess().Open(FindingKinds.OverfedThenEmpty)!.Severity);

    [Fact]
    public void Judge_EmptyByUsualHours_IsNoFinding() => Assert.Empty(LeftInHand(residual: 0, hours: 12).Assess().All(FindingKinds.OverfedThenEmpty));

    [Fact]
    public void Judge_HoursReset_IsNotJudged()
    {
        var assessment = LeftInHand(residual: 0, reset: true).Assess();

        Assert.Empty(assessment.All(FindingKinds.OverfedThenEmpty));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.OverfedThenEmpty);
    }

    [Fact]
    public void Judge_FilledAgainAndRunningAsUsual_Closes()
    {
        var builder = LeftInHand(residual: 0);
        builder.Visit(112, record => record with
        {
            HoursRun = [record.HoursRun[0], new HoursReading { Output = "inhibitor", Hours = 716.9 + 8.4 }],
            Drums = [new DrumReading { Drum = "D-INH", Level = 40, Unit = "cm" }],
        });

        Assert.Null(builder.Assess().Open(FindingKinds.OverfedThenEmpty));
    }

    private static HistoryBuilder LeftInHand(double? residual, double hours = 672, bool reset = false, double added = 50) =>
        new HistoryBuilder { RefillAtL = 0 }.Every(28, 3).Visit(84, record => record with
        {
            Readings =
            [
                .. record.Readings.Where(r => r.Test != TestCodes.Inhibitor),
                .. residual is { } value ? new[] { HistoryBuilder.Tower(TestCodes.Inhibitor, value, "mg/L") } : [],
            ],
            HoursRun = [record.HoursRun[0], new HoursReading { Output = "inhibitor", Hours = 36.8 + hours, Reset = reset }],
            Drums = [new DrumReading { Drum = "D-INH", Level = 2 / 60.0 * 62, Unit = "cm", AddedL = added }],
        });
}
