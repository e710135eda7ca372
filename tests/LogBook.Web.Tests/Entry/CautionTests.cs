using Bunit;
using LogBook.Domain.History;
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

    [Theory]
    [InlineData("P-40", false)]
    [InlineData("HYPO", true)]
    public async Task ProductFound_ThatIsNotTheDrums_WarnsAtOnceAndAgainAtTheStep(string found, bool warns)
    {
        await using var page = new EntryPage(Stocked("P-40"));
        page.Go("Stock");
        Assert.DoesNotContain(Words(Caution.OtherProduct), Shown(page));

        page.Type("D-1, Product found on it", found);
        Assert.Equal(warns, Shown(page).Contains(Words(Caution.OtherProduct)));
        page.Go("Water");
        page.Go("Stock");

        Assert.Equal(warns, Shown(page).Contains(Words(Caution.OtherProduct)));
    }

    [Theory]
    [InlineData("ACID", "HYPO", Caution.AcidAndHypochlorite)]
    [InlineData("QUAT", "HYPO", Caution.UnlikeProducts)]
    [InlineData("ACID", "QUAT", null)]
    [InlineData("P-40", "HYPO", null)]
    public async Task UnlikeProducts_WarnAtTheStockAndAtADelivery(string one, string other, Caution? expected)
    {
        await using var page = new EntryPage(Stocked(one, other));
        Caution[] pairs = [Caution.AcidAndHypochlorite, Caution.UnlikeProducts];
        IEnumerable<string> expectedWords = expected is { } caution ? [Words(caution)] : [];

        page.Go("Stock");
        Assert.Equal(expectedWords, Shown(page).Intersect(pairs.Select(Words)));
        if (expected is { } read)
        {
            page.Read(read);
        }

        await FocusAsync(page, "systems/CT-1/drums/D-1/addedL");
        Assert.Equal(expectedWords, Shown(page).Intersect(pairs.Select(Words)));
    }

    [Fact]
    public async Task AcidFoundInADrum_WarnsBesideThePlannedHypochlorite()
    {
        await using var page = new EntryPage(Stocked("P-40", "HYPO"));
        page.Go("Stock");
        Assert.DoesNotContain(Words(Caution.AcidAndHypochlorite), Shown(page));

        page.Type("D-1, Product found on it", "ACID");

        Assert.Contains(Words(Caution.AcidAndHypochlorite), Shown(page));
    }

    [Theory]
    [InlineData("ACID", Caution.AcidAndHypochlorite)]
    [InlineData("QUAT", Caution.UnlikeProducts)]
    public async Task DosedByHand_WarnsBesideThePlannedHypochlorite(string product, Caution expected)
    {
        await using var page = new EntryPage(Stocked("HYPO"));
        page.Go("Adjust");
        page.Form.FindAll("button").First(b => b.TextContent.Trim().StartsWith("Add: ", StringComparison.Ordinal)).Click();
        Assert.DoesNotContain(Words(expected), Shown(page));

        page.Type("Product", product);
        Assert.Contains(Words(expected), Shown(page));
        page.Go("Stock");

        Assert.Contains(Words(expected), Shown(page));
    }

    [Fact]
    public async Task Count_OfASample_WarnsThatItIsNoDiagnosis()
    {
        await using var page = new EntryPage();
        page.Go("Samples");
        Assert.DoesNotContain(Words(Caution.LaboratoryResult), Shown(page));

        await FocusAsync(page, "systems/CT-1/readings/tower|dip-slide||1/value");

        Assert.Contains(Words(Caution.LaboratoryResult), Shown(page));
    }

    [Fact]
    public async Task BleedTest_WarnsWhereTheWaterGoes()
    {
        await using var page = new EntryPage();
        page.Go("Stock");
        Assert.DoesNotContain(Words(Caution.WaterOut), Shown(page));

        await FocusAsync(page, "systems/CT-1/bleedTest/litres");

        Assert.Contains(Words(Caution.WaterOut), Shown(page));
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

    // Drums D-1, D-2… with these products.
    private static FirmSetUp Stocked(params string[] products) => EntryFirm.Selling(
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor },
            new Product { Code = "ACID", Name = "Acid", Kind = ProductKind.Acid },
            new Product { Code = "HYPO", Name = "Hypochlorite", Kind = ProductKind.Biocide, Oxidising = true },
            new Product { Code = "QUAT", Name = "Quaternary", Kind = ProductKind.Biocide, Oxidising = false },
        ],
        EntryFirm.Tower with { Drums = [.. products.Select((product, at) => new Drum { Code = $"D-{at + 1}", Product = product, Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 })] });

    private static WaterSystem OtherTower => EntryFirm.Tower with { Code = "CT-2", Name = "Cooling tower 2" };

    private static Task SetPointAsync(EntryPage page) => FocusAsync(page, "systems/CT-1/settings/setPointUsPerCm/left");

    private static Task FocusAsync(EntryPage page, string key) => page.Form.Find($"[data-key='{key}']").TriggerEventAsync("onfocus", new Microsoft.AspNetCore.Components.Web.FocusEventArgs());

    private static string Words(Caution caution) => CautionTexts.Of(caution).In(Language.English);

    private static List<string> Shown(EntryPage page) => [.. page.Form.FindAll(".lb-caution p").Select(p => p.TextContent.Split(". ", 2)[1].Trim())];
}
