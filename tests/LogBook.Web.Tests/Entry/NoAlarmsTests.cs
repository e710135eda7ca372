using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Tests.Entry;

/// <summary>That the controller shows no alarm is said by a tap of its own: an empty list does not tell that somebody looked.</summary>
public sealed class NoAlarmsTests
{
    private const string None = "No alarm at the controller";
    private const string Add = "Add: Alarms and last error";

    [Fact]
    public async Task NoAlarm_IsSaidByOneTap_AndTakenBackByTheSame()
    {
        await using var page = new EntryPage();
        page.Go("Controller");

        page.Press(None);
        var said = Assert.Single(page.Tower.Events);
        Assert.Equal((EventType.Other, None), (said.Type, said.Note));
        Assert.Empty(page.Tower.Alarms);
        Assert.False(page.HasButton(Add));

        page.Press(None);
        Assert.Empty(page.Draft.ToVisit().Systems);
        Assert.True(page.HasButton(Add));
    }

    [Fact]
    public async Task NoAlarm_IsNotOffered_WhereAnAlarmStands()
    {
        await using var page = new EntryPage();
        page.Go("Controller");

        page.Press(Add);

        Assert.False(page.HasButton(None));
    }

    [Fact]
    public async Task NoAlarm_IsKeptApartFromTheTestOfTheOutputs()
    {
        await using var page = new EntryPage();
        page.Go("Controller");
        page.Press(None);
        page.Go("Adjust");
        page.Press("Outputs tested one by one");
        Assert.Equal(2, page.Tower.Events.Count);

        page.Press("Outputs tested one by one");

        Assert.Equal(None, Assert.Single(page.Tower.Events).Note);
    }

    [Fact]
    public async Task NoAlarm_IsNotOfferedInAnAmendment()
    {
        await using var page = new EntryPage(draft: VisitDraft.Amend(EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0] with { Alarms = [] }] }, EntryFirm.Site), language: Language.Spanish);

        page.Go("Controlador");

        Assert.False(page.HasButton("Ninguna alarma en el controlador"));
    }
}
