using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Tests.Assessments;

public class ExplainedCountTests
{
    [Fact]
    public void Of_HighCountComesInWhileAMeterReadsOff_IsNotTheMeters()
    {
        var result = HistoryBuilder.Start.AddDays(60);
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, record => record with
        {
            Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.DipSlide, 1e6, "[CFU]/mL") with { ResultAt = Moment.OfUtc(result) }],
        });
        var shift = new RoundShift(FindingKinds.InstrumentShift, "HM-1", TestCodes.Conductivity, new DateOnly(2025, 1, 6), [new ShiftStep(HistoryBuilder.Start, 0.05, DateTime.MinValue, null)]);

        var assessed = Assessment.Of(builder.Build(), result.AddDays(1), new AssessmentInputs { Shifts = [shift] });

        var found = Assert.Single(assessed.Findings, finding => finding.InEnglish.Kind == FindingKinds.MicrobiologyHigh).InEnglish;
        Assert.Equal(FindingState.Open, found.State);
        Assert.Equal(Severity.Act, found.Severity);
    }
}
