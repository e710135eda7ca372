using LogBook.Domain.Findings;

namespace LogBook.Domain.Tests.Rounds;

public class LotShiftTests
{
    private const double NewLot = 120;

    private static RoundBuilder Round(double factor) => new()
    {
        LotAt = (site, day) => day < NewLot ? "IN-1" : site is "S-5" or "S-6" ? "IN-3" : "IN-2",
        LotFactor = lot => lot == "IN-2" ? factor : 1,
    };

    [Fact]
    public void Of_LotReadsHighOnFourSites_IsFoundWithinTwoWeeksOfTheThird()
    {
        var firm = Round(1.2).Assess();

        var finding = firm.Round(FindingKinds.LotShift)!;
        Assert.Equal(("IN-2", Severity.Plan, FindingState.Open), (finding.About!.Lot, finding.Severity, finding.State));
        var third = DateOnly.FromDateTime(RoundBuilder.Start.AddDays(RoundBuilder.DayOf(2, 9)));
        Assert.InRange(finding.FirstSeen, third.AddDays(-14), third.AddDays(14));
        Assert.InRange(finding.Evidence[0].Value!.Value, 14, 26);
    }

    [Fact]
    public void Of_LotReadsHigh_WithdrawsResidualsHigh()
    {
        var firm = Round(1.25).Assess();

        Assert.Empty(RoundBuilder.Headlines(firm, FindingKinds.ResidualHigh, FindingKinds.FeedHigh));
        Assert.Contains(firm.Systems.SelectMany(system => system.Findings), f =>
            f.InEnglish is { Kind: FindingKinds.ResidualHigh, State: FindingState.Withdrawn } && f.InEnglish.Because!.Contains("IN-2", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_RealOverfeedAtEverySite_IsNoLot()
    {
        // The residual is up a third everywhere the lot is used, and so is the product that left the drums.
        var round = Round(1);
        round.Inhibitor = (site, day) => day >= NewLot && site is not ("S-5" or "S-6") ? 140 : 100;
        round.UseFactor = site => site is not ("S-5" or "S-6") ? 1.4 : 1;
        round.Inhibitor = (site, _) => site is not ("S-5" or "S-6") ? 140 : 100;

        Assert.DoesNotContain(round.Assess().Round.Findings, f => f.InEnglish.Kind == FindingKinds.LotShift);
    }

    [Fact]
    public void Of_OneSiteOverfedUnderTheShift_KeepsItsHeadline()
    {
        var round = Round(1.15);
        round.Inhibitor = (site, day) => site == "S-1" && day >= NewLot ? 210 : 100;

        var firm = round.Assess();

        Assert.NotNull(firm.Round(FindingKinds.LotShift));
        Assert.Equal(["S-1"], RoundBuilder.Headlines(firm, FindingKinds.ResidualHigh).Select(f => f.Site));
    }

    [Fact]
    public void Of_AllLotsMoveAlike_IsNoLot()
    {
        var round = Round(1);
        round.LotFactor = lot => lot == "IN-1" ? 1 : 1.2;

        Assert.DoesNotContain(round.Assess().Round.Findings, f => f.InEnglish.Kind == FindingKinds.LotShift);
    }

    [Fact]
    public void Of_FivePercentOnly_StaysQuiet() =>
        Assert.DoesNotContain(Round(1.05).Assess().Round.Findings, f => f.InEnglish.Kind == FindingKinds.LotShift);

    [Fact]
    public void Of_LotPutAway_Closes()
    {
        var round = Round(1.2);
        round.VisitsEach = 16;
        round.LotAt = (site, day) => day < NewLot ? "IN-1" : day < 180 ? site is "S-5" or "S-6" ? "IN-3" : "IN-2" : "IN-3";

        var finding = round.Assess().Round(FindingKinds.LotShift)!;

        Assert.Equal(FindingState.Closed, finding.State);
        Assert.Equal("IN-2", finding.About!.Lot);
    }
}
