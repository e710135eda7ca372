using Bunit;
using LogBook.Domain.History;
using LogBook.Domain.Visits;

namespace LogBook.Web.Tests.Entry;

public sealed class SincePanelTests
{
    [Fact]
    public async Task Since_TellsWhatTheLastVisitLeftBehind()
    {
        var last = EntryFirm.Earlier with
        {
            Systems =
            [
                EntryFirm.Earlier.Systems[0] with
                {
                    Alarms = [new AlarmReading { Text = "bleed ran too long", Standing = true }],
                    Readings = [new Reading { At = "tower", Test = "inhibitor", Value = 60, Unit = "mg/L" }],
                },
            ],
        };
        await using var page = new EntryPage(previous: [last]);

        var since = page.Form.Find(".lb-since").TextContent;

        Assert.Contains("28 days ago, by R. Yaffle", since, StringComparison.Ordinal);
        Assert.Contains("bleed ran too long", since, StringComparison.Ordinal);
        Assert.Contains("Inhibitor, tower water: 60\u00a0mg/L, below the range", since, StringComparison.Ordinal);
        Assert.Contains("bleed was left Forced off", since, StringComparison.Ordinal);
        Assert.Contains("renew the strainer", since, StringComparison.Ordinal);
        Assert.Contains("pump room tidy", since, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OpenAction_SaidToBeDone_IsTheSameActionWithItsNewState_AndTakenBackByTheSameTap()
    {
        await using var page = new EntryPage();

        page.Press("Done");

        var action = Assert.Single(page.Tower.Actions);
        Assert.Equal((EntryFirm.Earlier.Systems[0].Actions[0].Id, "clean basin at shutdown", ActionState.Done), (action.Id, action.Text, action.State));
        page.Press("Done");
        Assert.Empty(page.Draft.ToVisit().Systems);
    }

    [Fact]
    public async Task PendingResult_IsTold_AndItsVisitIsOpenedByOneTap()
    {
        var taken = EntryFirm.Earlier with
        {
            Systems =
            [
                EntryFirm.Earlier.Systems[0] with
                {
                    Readings = [new Reading { At = "tower", Test = "dip-slide", Unit = "[CFU]/mL", NotTaken = SystemVisit.ResultPending, TakenAt = EntryFirm.At("2025-03-29T08:05:00+00:00") }],
                },
            ],
        };
        var opened = new List<Guid>();
        await using var page = new EntryPage(previous: [taken], openVisit: opened.Add);

        Assert.Contains("result not entered yet (48\u00a0h ago)", page.Form.Find(".lb-since").TextContent, StringComparison.Ordinal);
        page.Press("Enter the result: Dip slide, tower water");

        Assert.Equal([taken.Id], opened);
    }
}
