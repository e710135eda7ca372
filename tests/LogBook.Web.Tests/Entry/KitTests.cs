using Bunit;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Fields;
using LogBook.Entry.Plans;

namespace LogBook.Web.Tests.Entry;

/// <summary>Kits counted by thumb, slides that wait for their result, bottles handed on, towers side by side.</summary>
public sealed class KitTests
{
    private const string Inhibitor = "Inhibitor, tower water";

    [Fact]
    public async Task StepPad_Drops_AreCountedAndTheKitIsThatOfLastTime()
    {
        await using var page = new EntryPage();
        page.Go("Water");

        Assert.Equal("", page.Field("Drops counted, Chloride, tower water").GetAttribute("value") ?? "");
        for (var drop = 0; drop < 23; drop++)
        {
            Pad(page, "Drops counted, Chloride, tower water: 1", "more");
        }

        Pad(page, "Drops counted, Chloride, tower water: 1", "less");

        var reading = page.Tower.Readings.Single(r => r.Test == "chloride");
        Assert.Equal((22, 5, "mg/L"), (reading.Drops, reading.PerDrop, reading.Unit));
    }

    [Fact]
    public async Task StepPad_ColourComparison_GoesByTheStepOfTheLot()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        Test(page, Inhibitor).QuerySelectorAll("button").Single(b => b.TextContent.Contains("Colour comparison", StringComparison.Ordinal)).Click();

        for (var step = 0; step < 18; step++)
        {
            Pad(page, Inhibitor + ": 5", "more");
        }

        var reading = page.Tower.Readings.Single(r => r.Test == "inhibitor");
        Assert.Equal((90, ReadingMode.Comparator), (reading.Value, reading.Method));
        Assert.Equal("comparator", VisitDraft.Amend(page.Draft.ToVisit(), EntryFirm.Site).Text(DraftKey.Under(new ReadingKey("tower", "inhibitor", null).In("CT-1"), "mode")));
    }

    [Fact]
    public async Task StepPad_OnATypedLessThan_KeepsTheSign()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        Test(page, Inhibitor).QuerySelectorAll("button").Single(b => b.TextContent.Contains("Colour comparison", StringComparison.Ordinal)).Click();
        page.Type(Inhibitor, "<5");

        Pad(page, Inhibitor + ": 5", "more");

        var reading = page.Tower.Readings.Single(r => r.Test == "inhibitor");
        Assert.Equal(("<", 10), (reading.Qualifier, reading.Value));
    }

    [Theory]
    [InlineData("about five")]
    [InlineData("1,250")]
    public async Task StepPad_OnATextThatIsNotUnderstood_IsOff(string text)
    {
        await using var page = new EntryPage();
        page.Go("Water");
        Test(page, Inhibitor).QuerySelectorAll("button").Single(b => b.TextContent.Contains("Colour comparison", StringComparison.Ordinal)).Click();
        Assert.DoesNotContain(page.Form.FindAll(".lb-pad"), pad => IsOff(pad, "more"));

        page.Type(Inhibitor, text);

        Assert.Equal(2, page.Form.FindAll(".lb-pad").Count(pad => IsOff(pad, "more") || IsOff(pad, "less")));
        Assert.Equal(text, page.Field(Inhibitor).GetAttribute("value"));

        static bool IsOff(AngleSharp.Dom.IElement pad, string way) =>
            pad.HasAttribute("disabled") && pad.GetAttribute("aria-label") is { } label && label.StartsWith(Inhibitor, StringComparison.Ordinal) && label.EndsWith(way, StringComparison.Ordinal);
    }

    [Fact]
    public async Task DefaultMode_OfDrops_GivesWayToANumber()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        Test(page, "Chloride, tower water").QuerySelectorAll("button").Single(b => b.TextContent.Trim().EndsWith("Number", StringComparison.Ordinal)).Click();

        page.Type("Chloride, tower water", "105");

        Assert.Equal((105, null), (page.Tower.Readings.Single(r => r.Test == "chloride").Value, page.Tower.Readings.Single(r => r.Test == "chloride").Drops));
    }

    [Fact]
    public async Task KeysOfDropsNotYetLeft_AreCountedAfterwards()
    {
        await using var page = new EntryPage();
        var group = new ReadingKey("tower", "chloride", null).In("CT-1");

        await page.Form.InvokeAsync(() => page.Form.Instance.KeepTyped(DraftKey.Under(group, "drops"), "21", "{drops}"));

        var reading = VisitDraft.FromJson(page.Draft.ToJson()).ToVisit().Systems[0].Readings.Single();
        Assert.Equal((21, 5), (reading.Drops, reading.PerDrop));
    }

    [Fact]
    public async Task SameKits_TakenOverByOneTap_AreLotsAndInstruments()
    {
        await using var page = new EntryPage();
        page.Go("Water");

        page.Form.FindAll("button").Single(b => b.TextContent.StartsWith("Same kits and lots as last time", StringComparison.Ordinal)).Click();
        page.Type(Inhibitor, "95");
        page.Type("Conductivity, make-up", "301");

        Assert.Equal("IN-0412", page.Tower.Readings.Single(r => r.Test == "inhibitor").Lot);
        Assert.Equal("HM-1", page.Tower.Readings.Single(r => r.At == "make-up").Instrument);
    }

    [Fact]
    public async Task DipSlide_TakenNow_WaitsAndGetsItsResultLater()
    {
        await using var page = new EntryPage(previous: []);
        page.Go("Samples");
        page.Press("Taken now, result later");

        var taken = page.Draft.ToVisit();
        var waiting = taken.Systems[0].Readings.Single();
        Assert.Equal((SystemVisit.ResultPending, "2025-03-31T09:05:00+01:00", null), (waiting.NotTaken, waiting.TakenAt!.Value.Text, waiting.Value));

        await using var later = new EntryPage(draft: VisitDraft.Amend(taken, EntryFirm.Site), previous: []);
        later.Clock.Advance(TimeSpan.FromHours(48));
        later.Go("Samples");
        Assert.Contains("48\u00a0h ago", later.Form.Find(".lb-test").TextContent, StringComparison.Ordinal);
        later.Type("Dip slide, tower water", "1000");
        later.Type("Dip slide, tower water, Incubated at", "30");
        later.Type("Dip slide, tower water, Incubated for", "48");

        var result = later.Draft.ToVisit().Systems[0].Readings.Single();
        Assert.Equal((1000, null, "2025-03-31T09:05:00+01:00", "2025-04-02T09:05:00+01:00"), (result.Value, result.NotTaken, result.TakenAt!.Value.Text, result.ResultAt!.Value.Text));
        Assert.Equal(new Incubation { DegC = 30, Hours = 48 }, result.Incubation);
    }

    [Fact]
    public async Task Bottle_HandedOn_IsToldByTheVisit()
    {
        await using var page = new EntryPage();
        page.Go("Samples");
        page.Press("Add: Bottles taken");
        page.Type("Number of the bottle", "B-9");
        page.Type("System", "CT-1");
        page.Type("Handed to", "Umberscombe Water Laboratory");
        page.Type("Handed over at", "2025-03-31T15:10");

        Assert.Contains("Write on the bottle: B-9 · YAF-1 · CT-1", page.Words, StringComparison.Ordinal);
        Assert.Contains(page.Tower.Observations, o => o.Text == "Sample B-9 handed to Umberscombe Water Laboratory, 31 Mar 2025 15:10");
        Assert.Equal("B-9", page.Draft.ToVisit().Samples.Single().Bottle);
    }

    [Fact]
    public async Task SideBySide_TwoTowers_AreEnteredInOneTable()
    {
        var second = EntryFirm.Tower with { Code = "CT-2", Name = "Cooling tower 2" };
        await using var page = new EntryPage(EntryFirm.With(EntryFirm.Tower, second));
        page.Go("Water");
        page.Press("Towers side by side");

        page.Type("Cooling tower 1: Inhibitor, tower water", "95");
        page.Type("Cooling tower 2: Inhibitor, tower water", "60");

        var systems = page.Draft.ToVisit().Systems;
        Assert.Equal([("CT-1", 95.0), ("CT-2", 60.0)], systems.Select(s => (s.System, s.Readings.Single().Value!.Value)));
        Assert.Contains("below the range", page.Group("Cooling tower 2: Inhibitor, tower water").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SideBySide_LastValueOfATest_IsToldOfItsOwnTowerAfterEntry()
    {
        var second = EntryFirm.Tower with { Code = "CT-2", Name = "Cooling tower 2" };
        var other = EntryFirm.Earlier.Systems[0] with { System = "CT-2", Readings = [new Reading { At = "tower", Test = "inhibitor", Value = 71, Unit = "mg/L" }] };
        await using var page = new EntryPage(EntryFirm.With(EntryFirm.Tower, second), previous: [EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0], other] }]);
        page.Go("Water");
        page.Press("Towers side by side");
        Assert.DoesNotContain("Last visit", page.Group("Cooling tower 2: Inhibitor, tower water").TextContent, StringComparison.Ordinal);

        page.Type("Cooling tower 1: Inhibitor, tower water", "95");
        page.Type("Cooling tower 2: Inhibitor, tower water", "60");

        Assert.Contains("Last visit: 96.125\u00a0mg/L", page.Group("Cooling tower 1: Inhibitor, tower water").TextContent, StringComparison.Ordinal);
        Assert.Contains("Last visit: 71\u00a0mg/L", page.Group("Cooling tower 2: Inhibitor, tower water").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("P-40", "P-40", null)]
    [InlineData("Inhibitor P-40 25 kg LOT: A-7731", "P-40", "A-7731")]
    [InlineData("(01)05012345678900(10)A7731(17)260101", null, "A7731")]
    [InlineData("P-405 drum", null, null)]
    public void Label_Text_NamesProductAndLotOrNothing(string text, string? product, string? lot)
    {
        Assert.Equal(product, LabelText.ProductOf(text, EntryFirm.Firm));
        Assert.Equal(lot, LabelText.LotOf(text));
    }

    private static void Pad(EntryPage page, string start, string way) => page.Form.FindAll("button.lb-pad").Single(b => b.GetAttribute("aria-label") is { } label
        && label.StartsWith(start, StringComparison.Ordinal) && label.EndsWith(way, StringComparison.Ordinal)).Click();

    private static AngleSharp.Dom.IElement Test(EntryPage page, string name) => page.Form.FindAll(".lb-test").Single(t => t.TextContent.Contains(name, StringComparison.Ordinal));

    [Fact]
    public async Task DipSlide_WaitingForItsResult_StillWaitsAfterASlipOfAKey()
    {
        await using var page = new EntryPage(previous: []);
        page.Go("Samples");
        page.Press("Taken now, result later");
        var waiting = page.Tower.Readings.Single();
        var value = DraftKey.Under(new ReadingKey("tower", "dip-slide", null).In("CT-1"), "value");

        await page.Form.InvokeAsync(() => page.Form.Instance.KeepTyped(value, "1", "[CFU]/mL"));
        Assert.Equal(waiting, page.Tower.Readings.Single());
        page.Type("Dip slide, tower water", "1");
        Assert.Equal((1, null), (page.Tower.Readings.Single().Value, page.Tower.Readings.Single().NotTaken));
        page.Type("Dip slide, tower water", "");

        Assert.Equal(waiting, page.Tower.Readings.Single());
        Assert.Equal(SystemVisit.ResultPending, waiting.NotTaken);
    }

    [Fact]
    public async Task DipSlide_ResultTypedWhenTheBrowserWentAway_EndsTheWaitingAfterwards()
    {
        await using var page = new EntryPage(previous: []);
        page.Go("Samples");
        page.Press("Taken now, result later");
        var value = DraftKey.Under(new ReadingKey("tower", "dip-slide", null).In("CT-1"), "value");
        await page.Form.InvokeAsync(() => page.Form.Instance.KeepTyped(value, "1000", "[CFU]/mL"));

        await using var again = new EntryPage(draft: VisitDraft.FromJson(page.Draft.ToJson()), previous: []);

        Assert.Equal((1000, null), (again.Tower.Readings.Single().Value, again.Tower.Readings.Single().NotTaken));
    }
}
