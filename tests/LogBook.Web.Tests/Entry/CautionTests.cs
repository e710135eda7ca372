using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Cautions;

namespace LogBook.Web.Tests.Entry;

/// <summary>The caution of an act stands there when the act is noted.</summary>
public sealed class CautionTests
{
    [Theory]
    [InlineData("Cleaned", Caution.Basin, Caution.WaterOut)]
    [InlineData("Disinfected", Caution.Basin, Caution.Biocide)]
    [InlineData("Drained", Caution.Basin, Caution.WaterOut)]
    [InlineData("Strainer cleaned", Caution.OpenedLine, Caution.Basin)]
    public async Task QuickEvent_WarnsOfItsOwnDangers(string name, params Caution[] expected)
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", nameof(VisitKind.Cleaning));
        page.Go("Tower");
        var before = Shown(page);

        page.Press(name);

        Assert.Equal(expected.Select(Words), Shown(page).Except(before));
    }

    [Theory]
    [InlineData(nameof(EventType.PumpRenewed), Caution.OpenedLine)]
    [InlineData(nameof(EventType.ValveRenewed), Caution.OpenedLine)]
    [InlineData(nameof(EventType.Started), Caution.NoFlow)]
    public async Task EventChosenFromTheList_WarnsLikeATap(string type, Caution expected)
    {
        await using var page = new EntryPage();
        page.Go("Tower");
        page.Press("Add: What was done or happened");
        Assert.DoesNotContain(Words(expected), Shown(page));

        page.Type("Event", type);

        Assert.Contains(Words(expected), Shown(page));
    }

    [Fact]
    public async Task NothingFlows_WarnsOfWhatFeedsMeanwhile()
    {
        await using var page = new EntryPage();
        page.Choose("Is the system running?", "Yes");
        Assert.DoesNotContain(Words(Caution.NoFlow), Shown(page));

        page.Choose("Is the system running?", "No");

        Assert.Contains(Words(Caution.NoFlow), Shown(page));
    }

    [Fact]
    public async Task StartUp_WarnsOfWhatFedWithoutFlow()
    {
        await using var page = new EntryPage();

        page.Type("Kind of visit", nameof(VisitKind.StartUp));
        Assert.Contains(Words(Caution.NoFlow), Shown(page));
        page.Go("Adjust");

        Assert.Contains(Words(Caution.NoFlow), Shown(page));
    }

    [Fact]
    public async Task Delivery_OnARoutineVisit_WarnsOfTheLabelAndOfTheLevelSwitch()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        await page.Field("D-INH, Delivered into it").TriggerEventAsync("onfocus", new Microsoft.AspNetCore.Components.Web.FocusEventArgs());

        Assert.Equal([Words(Caution.LevelSwitch), Words(Caution.Delivery)], Shown(page));
    }

    private static string Words(Caution caution) => CautionTexts.Of(caution).In(Language.English);

    private static List<string> Shown(EntryPage page) => [.. page.Form.FindAll(".lb-caution p").Select(p => p.TextContent.Split(". ", 2)[1].Trim())];
}
