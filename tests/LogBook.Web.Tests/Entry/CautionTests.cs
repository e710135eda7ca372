using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
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
    [InlineData(nameof(EventType.ProbeCleaned), Caution.OpenedLine)]
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

    [Fact]
    public async Task Stock_OfTheOtherTower_WarnsOfItsSolidFeeder()
    {
        var feeder = EntryFirm.Tower with
        {
            Code = "CT-2",
            Name = "Cooling tower 2",
            Programmes = [EntryFirm.Tower.Programmes[0] with { Feeds = [new Feed { Drum = "D-INH", Mode = FeedMode.Feeder }] }],
        };
        await using var page = new EntryPage(EntryFirm.With(EntryFirm.Tower, feeder));
        page.Go("Stock");
        Assert.DoesNotContain(Words(Caution.SolidOxidiser), Shown(page));

        page.Press("Cooling tower 2");

        Assert.Contains(Words(Caution.SolidOxidiser), Shown(page));
    }

    [Fact]
    public async Task PointStillOpen_LeadsToTheCautionsOfItsStep()
    {
        await using var page = new EntryPage();
        page.Draft.SetText("systems/CT-1/switches/bleed/left", nameof(SwitchPosition.ForcedOff));
        page.Go("Close");
        Assert.DoesNotContain(Words(Caution.Switches), Shown(page));

        page.Form.FindAll(".lb-open button").First(b => b.TextContent.Contains("bleed", StringComparison.Ordinal)).Click();

        Assert.Contains(Words(Caution.Switches), Shown(page));
    }

    [Theory]
    [InlineData("Yes")]
    [InlineData("No")]
    public async Task Tower_RunningOrNot_WarnsOfRoofAndLadder(string running)
    {
        await using var page = new EntryPage();
        page.Choose("Is the system running?", running);

        page.Go("Tower");

        Assert.Contains(Words(Caution.Heights), Shown(page));
        Assert.Equal(running == "Yes", Shown(page).Contains(Words(Caution.RunningTower)));
    }

    [Fact]
    public async Task AdditionByHand_WarnsOfConcentrate()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        Assert.DoesNotContain(Words(Caution.Concentrate), Shown(page));

        page.Form.FindAll("button").First(b => b.TextContent.Trim().StartsWith("Add: ", StringComparison.Ordinal)).Click();

        Assert.Contains(Words(Caution.Concentrate), Shown(page));
    }

    [Fact]
    public async Task SetPointLeft_WarnsThatHigherCyclesConcentrateMetals()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        Assert.DoesNotContain(Words(Caution.HigherCycles), Shown(page));

        await SetPointAsync(page);

        Assert.Contains(Words(Caution.HigherCycles), Shown(page));
    }

    [Fact]
    public async Task Swap_WarnsOfTheLevelSwitchAndTheLabel()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        page.Field("D-INH, Container exchanged").Change(true);

        Assert.Equal([Words(Caution.LevelSwitch), Words(Caution.Delivery)], Shown(page));
    }

    [Fact]
    public async Task SparesDelivered_WarnOfTheLabel()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        await FocusAsync(page, "systems/CT-1/drums/D-INH/spareL");

        Assert.Equal([Words(Caution.Delivery)], Shown(page));
    }

    [Fact]
    public async Task Reference_WarnsBeforeAProbeIsTakenOut()
    {
        await using var page = new EntryPage();

        page.Go("Reference");

        Assert.Equal([Words(Caution.OpenedLine)], Shown(page));
    }

    [Theory]
    [InlineData(VisitKind.Routine, true)]
    [InlineData(VisitKind.Result, false)]
    public async Task Samples_WarnOfTheTowerWhereTheyAreTaken(VisitKind kind, bool isThere)
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", kind.ToString());

        page.Go("Samples");

        Assert.Equal(isThere ? [Words(Caution.RunningTower), Words(Caution.Heights), Words(Caution.Basin)] : [], Shown(page));
    }

    [Fact]
    public async Task Switches_ReadAtASetting_ComeBackAtTheOutputTestAndAtTheOtherTower()
    {
        await using var page = new EntryPage(EntryFirm.With(EntryFirm.Tower, OtherTower));
        page.Go("Adjust");
        page.Read(Caution.Switches);
        await SetPointAsync(page);
        Assert.Contains(Words(Caution.Switches), Shown(page));
        page.Read(Caution.Switches);
        await SetPointAsync(page);
        Assert.DoesNotContain(Words(Caution.Switches), Shown(page));

        page.Press("Outputs tested one by one");

        Assert.Contains(Words(Caution.Switches), Shown(page));
        page.Read(Caution.Switches);
        page.Press("Cooling tower 2");
        Assert.Contains(Words(Caution.Switches), Shown(page));
    }

    [Fact]
    public async Task SameWords_OfTwoActs_StandOnceAndAreReadOnce()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        await SetPointAsync(page);
        page.Press("Outputs tested one by one");
        Assert.Single(Shown(page), Words(Caution.Switches));

        page.Read(Caution.Switches);

        await SetPointAsync(page);
        page.Go("Water");
        page.Go("Adjust");
        Assert.DoesNotContain(Words(Caution.Switches), Shown(page));
    }

    private static WaterSystem OtherTower => EntryFirm.Tower with { Code = "CT-2", Name = "Cooling tower 2" };

    private static Task SetPointAsync(EntryPage page) => FocusAsync(page, "systems/CT-1/settings/setPointUsPerCm/left");

    private static Task FocusAsync(EntryPage page, string key) => page.Form.Find($"[data-key='{key}']").TriggerEventAsync("onfocus", new Microsoft.AspNetCore.Components.Web.FocusEventArgs());

    private static string Words(Caution caution) => CautionTexts.Of(caution).In(Language.English);

    private static List<string> Shown(EntryPage page) => [.. page.Form.FindAll(".lb-caution p").Select(p => p.TextContent.Split(". ", 2)[1].Trim())];
}
