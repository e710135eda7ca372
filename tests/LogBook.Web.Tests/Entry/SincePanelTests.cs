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
        Assert.Contains("Last time: Inhibitor, tower water: 60\u00a0mg/L is below the range (Range 80 to 120\u00a0mg/L)", since, StringComparison.Ordinal);
        Assert.Contains("bleed was left Forced off", since, StringComparison.Ordinal);
        Assert.Contains("renew the strainer", since, StringComparison.Ordinal);
        Assert.Contains("pump room tidy", since, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9000, false)]
    [InlineData(10_000, true)]
    public async Task Since_TellsACountThatReachesALimit_ThoughNoRangeNamesIt(double count, bool told)
    {
        var slide = new Reading { At = "tower", Test = "dip-slide", Value = count, Unit = "[CFU]/mL" };
        var last = EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0] with { Readings = [slide] }] };
        await using var page = new EntryPage(previous: [last]);

        Assert.Equal(told, page.Form.Find(".lb-since").TextContent.Contains("Last time: Dip slide, tower water: 10,000\u00a0CFU/mL, the limit is 10,000\u00a0CFU/mL", StringComparison.Ordinal));
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
    public async Task OpenAction_OfAVisitTooOldToBeHere_StandsAndIsClosedByOneTap()
    {
        var old = new VisitAction { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a98"), Text = "renew the float valve", State = ActionState.Open };
        var since = EntryFirm.At("2024-03-03T09:05:00+00:00").Utc;
        await using var page = new EntryPage(standing: [new StandingAction("YAF-1", "CT-1", since, old), new StandingAction("YAF-1", "CT-9", since, old with { Id = null, Text = "of another tower" })]);

        var told = page.Form.Find(".lb-since").TextContent;
        Assert.Contains("renew the float valve", told, StringComparison.Ordinal);
        Assert.DoesNotContain("of another tower", told, StringComparison.Ordinal);
        page.Press("Done");

        var action = Assert.Single(page.Tower.Actions);
        Assert.Equal((old.Id, ActionState.Done), (action.Id, action.State));
    }

    [Fact]
    public async Task OpenAction_ThatTheLastVisitsClosed_StandsNoMore_WhateverTheRoundBrought()
    {
        var asked = EntryFirm.Earlier.Systems[0].Actions[0];
        var closed = EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0] with { Actions = [asked with { State = ActionState.Done }] }] };
        await using var page = new EntryPage(previous: [closed], standing: [new StandingAction("YAF-1", "CT-1", EntryFirm.At("2024-03-03T09:05:00+00:00").Utc, asked)]);

        Assert.DoesNotContain("clean basin at shutdown", page.Form.Find(".lb-since").TextContent, StringComparison.Ordinal);
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

    [Fact]
    public async Task WhatTheVisitBeforeADeliveryLeft_IsStillTold_AndOnlyTheLastWordOfIt()
    {
        VisitedSystem Found(params AlarmReading[] alarms) => new() { System = "CT-1", Alarms = alarms };
        var full = EntryFirm.Earlier with
        {
            Systems =
            [
                Found(new AlarmReading { Text = "bleed ran too long", Standing = true }, new AlarmReading { Text = "no flow", Standing = true }) with
                {
                    Switches =
                    [
                        new SwitchReading { Output = "bleed", Found = SwitchPosition.Automatic, Left = SwitchPosition.ForcedOff },
                        new SwitchReading { Output = "inhibitor", Found = SwitchPosition.Automatic, Left = SwitchPosition.ForcedOn },
                    ],
                },
            ],
        };
        var delivery = EntryFirm.Earlier with
        {
            Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2b07"),
            Kind = VisitKind.Delivery,
            Arrived = EntryFirm.At("2025-03-17T09:05:00+00:00"),
            Systems =
            [
                Found(new AlarmReading { Text = "no flow", Standing = false }) with
                {
                    Drums = [new DrumReading { Drum = "D-INH", AddedL = 25 }],
                    Switches = [new SwitchReading { Output = "inhibitor", Found = SwitchPosition.ForcedOn, Left = SwitchPosition.Automatic }],
                },
            ],
        };
        await using var page = new EntryPage(previous: [full, delivery]);

        var since = page.Form.Find(".lb-since").TextContent;

        Assert.Contains("14 days ago", since, StringComparison.Ordinal);
        Assert.Contains("bleed was left Forced off", since, StringComparison.Ordinal);
        Assert.Contains("bleed ran too long", since, StringComparison.Ordinal);
        Assert.DoesNotContain("inhibitor was left", since, StringComparison.Ordinal);
        Assert.DoesNotContain("no flow", since, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AlarmThatAFullVisitDidNotFindAnyMore_IsNotTold()
    {
        var first = EntryFirm.Earlier with { Systems = [new VisitedSystem { System = "CT-1", Alarms = [new AlarmReading { Text = "bleed ran too long", Standing = true }] }] };
        var second = EntryFirm.Earlier with { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2b08"), Arrived = EntryFirm.At("2025-03-17T09:05:00+00:00"), Systems = [new VisitedSystem { System = "CT-1" }] };
        await using var page = new EntryPage(previous: [first, second]);

        Assert.DoesNotContain("bleed ran too long", page.Form.Find(".lb-since").TextContent, StringComparison.Ordinal);
    }
}
