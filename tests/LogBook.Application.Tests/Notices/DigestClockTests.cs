using LogBook.Application.Clocks;
using LogBook.Application.DueLists;
using LogBook.Application.Notices;
using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Tests.Notices;

public sealed class DigestClockTests
{
    private static readonly DateOnly Today = new(2025, 6, 10);
    private static readonly DateTime Noon = new(2025, 6, 10, 11, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void Of_ClocksOfEveryKind_AnAuthorityFirstThenByDay()
    {
        var site = SiteWith(
            Reason(DueKind.Finding, -9, "switch forced on"),
            Reason(DueKind.Drum, -4, "drum runs out"),
            Reason(DueKind.Duty, -1, "sample"),
            Reason(DueKind.Visit, 0, "visit"),
            Reason(DueKind.Promise, 1, "float valve"));
        ClockLine[] office =
        [
            Line("YAF-1", DutyKind.Notify, Noon.AddHours(5)),
            Line("YAF-1", DutyKind.Summary, new DateTime(2025, 6, 7, 23, 0, 0, DateTimeKind.Utc)),
            Line("YAF-1", DutyKind.Summary, Noon.AddDays(2)),
            Line("NUR-1", DutyKind.Notify, Noon),
        ];

        var told = DigestClock.Of(site, office)!;

        // A promised 7th ends at its midnight in London, an hour earlier in UTC; findings are told elsewhere, and what has time left is not told.
        Assert.Equal(
            ["tell the authority (OXT-LEG) by 10 Jun 2025 17:00", "drum runs out", "summary promised by 7 Jun 2025", "sample", "visit"],
            told.Clocks.Select(clock => clock.Words.In(Language.English)));
        Assert.Equal([0, -4, -3, -1, 0], told.Clocks.Select(clock => clock.Day.DayNumber - Today.DayNumber));
        Assert.Equal(0, told.DaysOver);
    }

    [Fact]
    public void Of_NothingAtItsEnd_IsNothing() => Assert.Null(DigestClock.Of(SiteWith(Reason(DueKind.Visit, 1, "visit"), Reason(DueKind.Finding, -3, "finding")), []));

    private static DueReason Reason(DueKind kind, int days, string words) => new(kind, Today.AddDays(days), null, new Said(new Text(words, words, words)), days < 0);

    private static SiteDueRow SiteWith(params DueReason[] reasons) =>
        new("YAF-1", "Yaffleford College", "Yaffleford College", "RYA", 1, null, null, 28, null, null, false, new SeverityCounts(0, 0, 0)) { Today = Today, Reasons = reasons };

    private static ClockLine Line(string site, DutyKind kind, DateTime due) =>
        new(site, site, "Europe/London", "RYA", null, null, new RunningClock(kind, due.AddDays(-1), due.AddHours(-6), due, 1) { Rule = "OXT-LEG" }, null, ClockStanding.DueSoon, false);
}
