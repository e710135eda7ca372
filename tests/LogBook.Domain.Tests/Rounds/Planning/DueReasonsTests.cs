using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class DueReasonsTests
{
    private static readonly DateOnly Today = new(2025, 12, 1);

    private static readonly DutyAhead Count = new("OXT-COUNT", "Oxterhelm Code, colony count", "Oxterhelm", DutyKind.Interval, Today.AddDays(-25), Today.AddDays(5)) { Test = TestCodes.ColonyCount };

    private static readonly DutyAhead Retest = new("OXT-LEG", "Oxterhelm Code, Legionella", "Oxterhelm", DutyKind.Retest, Today.AddDays(-1), Today.AddDays(6)) { Test = TestCodes.Legionella, NotBefore = Today.AddDays(2) };

    private static readonly DrumAhead Drum = new("D-INH", "P-40", Today.AddDays(-10), 12, 1) { UsePerDayL = 0.9, UsePerDayUncertaintyL = 0.1, From = Today.AddDays(2), To = Today.AddDays(5) };

    private static readonly PromiseAhead Promise = new("renew gasket", Today.AddDays(3), "RYA");

    [Fact]
    public void Of_AllClocks_MostUrgentFirstEachWithItsReason()
    {
        var reasons = Of(new SystemAhead { Duties = [Count, Retest], Drums = [Drum], Promises = [Promise] }, lastVisit: Today.AddDays(-6), findings: [new(null, FindingKinds.WaterLoss, Today.AddDays(-3))]);

        Assert.Equal(
            [
                "Water loss, open since 28 Nov 2025",
                "every 7 days, last visit 25 Nov 2025",
                "drum of P-40 (D-INH) runs out about 3 Dec 2025 to 6 Dec 2025",
                "promised by 4 Dec 2025: renew gasket",
                "Oxterhelm Code, colony count: Colony count by 6 Dec 2025",
                "Oxterhelm Code, Legionella: Legionella again from 3 Dec 2025 to 7 Dec 2025",
            ],
            reasons.Select(reason => reason.Words.In(Language.English)));
    }

    [Theory]
    [InlineData(Language.Spanish, "el bidón de P-40 (D-INH) se agota hacia ")]
    [InlineData(Language.Portuguese, "a bombona de P-40 (D-INH) acaba por volta de ")]
    public void Words_OfADrum_AreSaidInEachLanguage(Language language, string begins) =>
        Assert.StartsWith(begins, Assert.Single(Of(new SystemAhead { Drums = [Drum] })).Words.In(language), StringComparison.Ordinal);

    [Theory]
    [InlineData(5, DueStanding.Later)]
    [InlineData(2, DueStanding.Soon)]
    [InlineData(0, DueStanding.Due)]
    [InlineData(-1, DueStanding.Late)]
    public void Standing_OfADuty_IsLateFromTheDayAfterItsLast(int lastDayFromToday, DueStanding standing) => Assert.Equal(
        standing,
        Assert.Single(Of(new SystemAhead { Duties = [Count with { LastDay = Today.AddDays(lastDayFromToday) }] })).On(Today));

    [Fact]
    public void Standing_OfADrum_IsDueWithinItsRangeAndLateAfterIt()
    {
        DueStanding At(int from, int to) => Assert.Single(Of(new SystemAhead { Drums = [Drum with { From = Today.AddDays(from), To = Today.AddDays(to) }] })).On(Today);

        Assert.Equal((DueStanding.Due, DueStanding.Late), (At(-2, 3), At(-6, -1)));
    }

    [Fact]
    public void Visit_OneDayOverAMonth_IsDueButNotLate()
    {
        var reason = Assert.Single(Of(SystemAhead.Nothing, lastVisit: Today.AddDays(-29), everyDays: 28));

        Assert.Equal((DueKind.Visit, Today.AddDays(-1), DueStanding.Due), (reason.Kind, reason.Day, reason.On(Today)));
    }

    [Fact]
    public void Drum_OfAPlantOutOfSeason_IsNoReason()
    {
        var season = new Operation { Seasons = [new Season { From = "05-01", To = "09-30" }] };

        Assert.Empty(Of(new SystemAhead { Drums = [Drum] }, operation: season));
    }

    [Fact]
    public void Drum_AtItsHeel_IsLateSinceItWasRead()
    {
        var reason = Assert.Single(Of(new SystemAhead { Drums = [Drum with { StockL = -0.5, From = null, To = null }] }));

        Assert.Equal((Today.AddDays(-10), DueStanding.Late), (reason.Day, reason.On(Today)));
    }

    [Theory]
    [InlineData(FindingKinds.ClockDue)]
    [InlineData(FindingKinds.RunsOut)]
    [InlineData(FindingKinds.SummaryUndelivered)]
    public void Finding_AboutAClockADrumOrAMail_IsNoReasonOfItsOwn(string kind) => Assert.Empty(Of(SystemAhead.Nothing, findings: [new("CT-1", kind, Today)]));

    [Theory]
    [InlineData(3, true)]
    [InlineData(4, false)]
    public void Promise_StillOpenAfterALaterVisit_SendsNobodyAgain(int lastVisitFromToday, bool isReason)
    {
        var reasons = Of(new SystemAhead { Promises = [Promise] }, lastVisit: Today.AddDays(lastVisitFromToday), everyDays: null);

        Assert.Equal(isReason, reasons.Any(reason => reason.Kind == DueKind.Promise));
    }

    [Fact]
    public void Of_TwoSystems_NamesTheSystem()
    {
        var reasons = DueReasons.Of(null, null, [("CT-1", null, SystemAhead.Nothing), ("CT-2", null, new SystemAhead { Promises = [Promise] })], [], Today);

        Assert.Equal("CT-2: promised by 4 Dec 2025: renew gasket", Assert.Single(reasons).Words.In(Language.English));
    }

    private static IReadOnlyList<DueReason> Of(SystemAhead ahead, DateOnly? lastVisit = null, double? everyDays = 7, IReadOnlyList<OpenActFinding>? findings = null, Operation? operation = null) =>
        DueReasons.Of(lastVisit, everyDays, [("CT-1", operation, ahead)], findings ?? [], Today);
}
