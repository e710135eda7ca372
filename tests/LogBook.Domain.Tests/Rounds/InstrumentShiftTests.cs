using LogBook.Domain.Findings;

namespace LogBook.Domain.Tests.Rounds;

public class InstrumentShiftTests
{
    private const double Onset = 120;

    // Every meter is proved until a few days before the shift.
    private static RoundBuilder Round(double factor) => new()
    {
        MeterFactor = (meter, day) => meter == "HM-2" && day >= Onset ? factor : 1,
        Checks = _ => [.. Enumerable.Range(0, 5).Select(i => RoundBuilder.Check(28 * i, 1410))],
    };

    [Fact]
    public void Of_MeterReadsHighOnFourSites_IsFoundWithinTwoWeeksOfTheThird()
    {
        var firm = Round(1.06).Assess();

        var finding = firm.Round(FindingKinds.InstrumentShift)!;
        Assert.Equal(("HM-2", Severity.Act, FindingState.Open), (finding.About!.Instrument, finding.Severity, finding.State));
        Assert.Null(finding.Site);
        Assert.Null(finding.System);
        var third = DateOnly.FromDateTime(RoundBuilder.Start.AddDays(RoundBuilder.DayOf(2, 9)));
        Assert.InRange(finding.FirstSeen, third.AddDays(-14), third.AddDays(14));
        Assert.InRange(finding.Evidence[0].Value!.Value, 4, 8);
    }

    [Fact]
    public void Of_MeterReadsHigh_WithdrawsWhatItExplainsWithTheReason()
    {
        var firm = Round(1.08).Assess();

        Assert.Empty(RoundBuilder.Headlines(firm, FindingKinds.ProbeReadsOff, FindingKinds.ProbeFouled, FindingKinds.ConductivityOut, FindingKinds.CyclesHigh));
        var withdrawn = firm.Systems.SelectMany(system => system.Findings).Where(f => f.InEnglish is { Kind: FindingKinds.ProbeReadsOff, State: FindingState.Withdrawn }).ToList();
        Assert.NotEmpty(withdrawn);
        Assert.All(withdrawn, f =>
        {
            Assert.Contains("HM-2", f.InEnglish.Because!, StringComparison.Ordinal);
            Assert.NotEqual(f.InEnglish.Because, f.InSpanish.Because);
            Assert.NotEqual(f.InSpanish.Because, f.InPortuguese.Because);
        });
    }

    [Fact]
    public void Of_WithoutTheRound_TheSameSitesHaveHeadlines()
    {
        var alone = Round(1.08).Histories().Select(history => Domain.Assessments.Assessment.Of(history, Round(1.08).AsOf()));

        Assert.Contains(alone.SelectMany(system => system.Findings), f => f.InEnglish.Kind is FindingKinds.ProbeFouled && f.InEnglish.Severity > Severity.Watch);
    }

    [Fact]
    public void Of_ProbesSetByTheWrongMeter_AreListed()
    {
        var round = Round(1.08);
        round.SetsProbes = true;

        var finding = round.Assess().Round(FindingKinds.InstrumentShift)!;

        Assert.Equal(FindingState.Open, finding.State);
        Assert.True(finding.LookAtNext.Count(look => look.Contains("was set by this meter", StringComparison.Ordinal)) >= 3, string.Join('\n', finding.LookAtNext));
        Assert.Contains(finding.LookAtNext, look => look.Contains("S-1/CT-1", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AllMetersMoveAlike_IsNoMeter()
    {
        var round = Round(1);
        round.MeterFactor = (_, day) => day >= Onset ? 1.06 : 1;

        Assert.DoesNotContain(round.Assess().Round.Findings, f => f.InEnglish.Kind == FindingKinds.InstrumentShift);
    }

    [Fact]
    public void Of_TwoSitesOnly_IsNoMeter()
    {
        var round = Round(1);
        round.ProbeError = (site, day) => site is "S-1" or "S-2" && day >= Onset ? -0.08 : 0;

        Assert.DoesNotContain(round.Assess().Round.Findings, f => f.InEnglish.Kind == FindingKinds.InstrumentShift);
    }

    [Fact]
    public void Of_HealthyRound_IsQuiet() => Assert.Empty(Round(1).Assess().Round.Findings);

    [Theory]
    [InlineData(1371, false)]
    [InlineData(1370, true)]
    [InlineData(1456, true)]
    [InlineData(1455, false)]
    public void Of_Standard_DecidesAloneBeyondThreePercent(double read, bool found)
    {
        var round = Round(1);
        round.Checks = code => code == "HM-1" ? [RoundBuilder.Check(50, read)] : [];

        var finding = round.Assess().Round(FindingKinds.InstrumentShift);

        Assert.Equal(found, finding is not null);
        if (finding is not null)
        {
            Assert.Equal(("HM-1", Severity.Act), (finding.About!.Instrument, finding.Severity));
        }
    }

    [Fact]
    public void Of_GoodCheck_ClosesAndProbesSetMeanwhileReadOffInTruth()
    {
        var round = Round(1.08);
        round.SetsProbes = true;
        round.MeterFactor = (meter, day) => meter == "HM-2" && day is >= Onset and < 160 ? 1.08 : 1;
        round.Checks = code => [.. Enumerable.Range(0, 5).Select(i => RoundBuilder.Check(28 * i, 1410)), RoundBuilder.Check(160, 1412)];

        var firm = round.Assess();

        var finding = firm.Round(FindingKinds.InstrumentShift)!;
        Assert.Equal((FindingState.Closed, DateOnly.FromDateTime(RoundBuilder.Start.AddDays(160))), (finding.State, finding.ClosedOn!.Value));
        Assert.Contains(firm.Systems.SelectMany(system => system.Findings), f =>
            f.InEnglish.Kind == FindingKinds.ProbeReadsOff && f.InEnglish.FirstSeen >= finding.ClosedOn && f.InEnglish.State != FindingState.Withdrawn);
    }

    [Fact]
    public void Of_OneProbeTrulyFouledUnderTheShift_KeepsItsFinding()
    {
        var round = Round(1.06);
        round.Checks = _ => [.. Enumerable.Range(0, 12).Select(i => RoundBuilder.Check(28 * i, i < 5 ? 1410 : 1490))];
        round.ProbeError = (site, day) => site == "S-1" && day >= Onset ? -0.15 : 0;

        var firm = round.Assess();

        Assert.NotNull(firm.Round(FindingKinds.InstrumentShift));
        Assert.Contains(RoundBuilder.Headlines(firm, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff), f => f.Site == "S-1");
        Assert.DoesNotContain(RoundBuilder.Headlines(firm, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff), f => f.Site != "S-1");
    }
}
