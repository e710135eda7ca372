using Bunit;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Tests.Entry;

/// <summary>What the close asks for: all of what each visit reads, and nothing that the system does not have.</summary>
public sealed class CloseGateTests
{
    [Fact]
    public async Task Close_OfARoutineVisitThatReadNothing_AsksForEachOfTheShortSet()
    {
        await using var page = new EntryPage();

        page.Go("Close");

        var open = Open(page);
        Assert.Contains("bleed: switch as found", open);
        Assert.Contains("inhibitor: switch as found", open);
        Assert.Contains("Controller clock, minutes fast (slow: minus): not read", open);
        Assert.Contains("set point, as found: not read", open);
        Assert.Contains("differential, as found: not read", open);
        Assert.Contains("longest bleed allowed, as found: not read", open);
        Assert.Contains("MU, controller's total: not read", open);
    }

    [Fact]
    public async Task Close_OfTheWholeShortSet_AsksForNoneOfIt()
    {
        await using var page = new EntryPage();
        page.Go("Controller");
        page.Press("All found automatic");
        page.Press("Clock is right");
        foreach (var setting in new[] { "setPointUsPerCm", "differentialUsPerCm", "longestBleedMin" })
        {
            page.Form.Find($"[data-key='systems/CT-1/settings/{setting}/found']").Change("140");
        }

        page.Go("Stock");
        page.Type("MU, controller's total", "50210");
        page.Go("Close");

        Assert.DoesNotContain(Open(page), line => line.EndsWith("switch as found", StringComparison.Ordinal));
        Assert.DoesNotContain(Open(page), line => line.StartsWith("set point", StringComparison.Ordinal) || line.StartsWith("differential", StringComparison.Ordinal) || line.StartsWith("longest bleed", StringComparison.Ordinal));
        Assert.DoesNotContain(Open(page), line => line.Contains("clock", StringComparison.Ordinal) || line.Contains("total", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Close_OfASystemWithoutControllerPumpOrCountedMeter_AsksForNoneOfThem()
    {
        var bare = EntryFirm.Tower with { Probes = [], Outputs = [], Pumps = [], Programmes = [EntryFirm.Tower.Programmes[0] with { SetPointUsPerCm = null, DifferentialUsPerCm = null, LongestBleedMin = null, Feeds = [] }] };
        await using var page = new EntryPage(EntryFirm.With(bare), previous: []);

        page.Go("Close");

        Assert.DoesNotContain(Open(page), line => line.Contains("clock", StringComparison.Ordinal) || line.Contains("switch", StringComparison.Ordinal) || line.Contains("Stroke", StringComparison.Ordinal) || line.Contains("total", StringComparison.Ordinal));
        Assert.Contains("MU, dial: not read", Open(page));
    }

    [Fact]
    public async Task Close_WhileTheFullWalkIsDue_AsksForItInOneLine_AndForThePumpsWithIt()
    {
        await using var page = new EntryPage();
        page.Go("Close");
        Assert.Contains("Full walk through the settings is due: 2 not read", Open(page));
        Assert.Contains("P-INH, Stroke, as found: not read", Open(page));

        page.Press("Full walk through the settings is due: 2 not read");
        page.Form.Find("[data-key='systems/CT-1/settings/inhibitor%2FeveryL/found']").Change("1000");
        page.Form.Find("[data-key='systems/CT-1/settings/inhibitor%2FrunSeconds/found']").Change("47.6");
        page.Go("Close");

        Assert.DoesNotContain(Open(page), line => line.StartsWith("Full walk", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Close_ShortSetLeftOpen_TakesAReasonAndTellsHowMuchIsMissingWhere()
    {
        await using var page = new EntryPage();
        page.Go("Close");
        page.Type("Leave open because", "controller cabinet locked");

        page.Press("Close the visit");

        var notes = Assert.Single(page.Closed).Notes!;
        Assert.Contains("Controller as found: 10 open", notes, StringComparison.Ordinal);
        Assert.Contains("controller cabinet locked", notes, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(VisitKind.Routine, "ForcedOn")]
    [InlineData(VisitKind.Emergency, "ForcedOn")]
    [InlineData(VisitKind.Audit, "ForcedOff")]
    [InlineData(VisitKind.Delivery, "ForcedOn")]
    [InlineData(VisitKind.Result, "ForcedOn")]
    [InlineData(VisitKind.Stopped, "ForcedOn")]
    public async Task SwitchFoundForced_WithoutWhatItWasLeftAt_IsAskedAboutOnEveryKindOfVisit(VisitKind kind, string found)
    {
        const string Asked = "bleed: switch as left";
        await using var page = new EntryPage();
        page.Go("Controller");
        page.Choose("bleed, as found", found == "ForcedOn" ? "Forced on" : "Forced off");
        page.Go("Arrive");
        page.Type("Kind of visit", kind.ToString());
        page.Go("Close");
        Assert.Contains(Asked, Open(page));

        page.Press(Asked);
        page.Choose("bleed, as left", "Automatic");
        page.Go("Close");

        Assert.DoesNotContain(Asked, Open(page));
    }

    [Fact]
    public async Task SwitchFoundForced_OnASystemOutOfUse_IsAskedAbout_AndAnAutomaticOneIsNot()
    {
        await using var page = new EntryPage();
        page.Choose("Is it in use this season?", "No");
        page.Go("Controller");
        page.Choose("bleed, as found", "Forced on");
        page.Choose("inhibitor, as found", "Automatic");

        page.Go("Close");

        Assert.Contains("bleed: switch as left", Open(page));
        Assert.DoesNotContain("inhibitor: switch as left", Open(page));
    }

    [Fact]
    public async Task SwitchLeftForced_WhenWorkStops_AsksForItsReason()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        page.Choose("bleed, as left", "Forced on");
        page.Press("I cannot work here");

        page.Go("Close");

        Assert.Contains("bleed is left Forced on: reason", Open(page));
    }

    [Theory]
    [InlineData("9000", false)]
    [InlineData("10000", true)]
    public async Task DipSlide_InAnActionBand_AsksForActionOrReason_AndBelowItDoesNot(string count, bool asks)
    {
        const string Asked = "Dip slide, tower water: action or reason";
        await using var page = new EntryPage();
        page.Go("Samples");
        page.Type("Dip slide, tower water", count);

        page.Go("Close");

        Assert.Equal(asks, Open(page).Contains(Asked));
        Assert.Equal(asks, page.Words.Contains("Dip slide, tower water: 10,000\u00a0CFU/mL, the limit is 10,000\u00a0CFU/mL", StringComparison.Ordinal));
        if (asks)
        {
            page.Type("Or the reason why nothing is needed: Dip slide, tower water", "slide was dropped");
            Assert.DoesNotContain(Asked, Open(page));
        }
    }

    [Fact]
    public async Task LegionellaResult_AddedToAnEarlierVisit_InABandOfTheRule_AsksAndTellsWhatTheRuleSays()
    {
        var tower = EntryFirm.Tower with { Rules = ["OXT-LEG"] };
        var firm = new FirmSetUp(EntryFirm.With(tower).Document with
        {
            Rules =
            [
                new Rule
                {
                    Code = "OXT-LEG", Name = "Oxterhelm Code", Jurisdiction = "Oxterhelm", From = new DateOnly(2024, 7, 1), Test = TestCodes.Legionella, EveryDays = 90,
                    Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, Says = "disinfect, retest in 3 to 7 days" }],
                },
            ],
        });
        var visit = EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0] with { Readings = [new Reading { At = "tower", Test = TestCodes.Legionella, Source = ReadingSource.Lab, Value = 19, Unit = "[CFU]/mL" }] }] };
        await using var page = new EntryPage(firm, VisitDraft.Amend(visit, EntryFirm.Site), previous: []);
        page.Go("Close");
        Assert.DoesNotContain("Legionella, tower water: action or reason", Open(page));

        page.Go("Samples");
        page.Type("Legionella, tower water", "300");
        page.Go("Close");

        Assert.Contains("Legionella, tower water: action or reason", Open(page));
        Assert.Contains("From 20\u00a0CFU/mL on, Oxterhelm Code asks for action. disinfect, retest in 3 to 7 days", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Action_WithoutOwnerOrDay_IsAskedToBeCompleted()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type("Inhibitor, tower water", "60");
        page.Go("Close");
        page.Press("Add: Action");
        page.Type("What is to be done: Inhibitor, tower water", "raise the feed");
        Assert.DoesNotContain("Inhibitor, tower water: action or reason", Open(page));
        Assert.Contains("raise the feed: who does it", Open(page));

        page.Type("Who", "RYA");
        Assert.DoesNotContain("raise the feed: who does it", Open(page));
        Assert.Contains("raise the feed: by when", Open(page));
        page.Type("By when", "2025-04-07");

        Assert.DoesNotContain(Open(page), line => line.StartsWith("raise the feed", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Action_SaidToBeDone_OrOfAVisitThatIsAmended_IsNotAskedForOwnerAndDay()
    {
        var bare = EntryFirm.Earlier with { Systems = [EntryFirm.Earlier.Systems[0] with { Actions = [EntryFirm.Earlier.Systems[0].Actions[0] with { Owner = null, Due = null }] }] };
        await using var page = new EntryPage(previous: [bare]);
        page.Press("Done");
        page.Go("Close");
        Assert.DoesNotContain(Open(page), line => line.StartsWith("clean basin", StringComparison.Ordinal));

        await using var amended = new EntryPage(draft: VisitDraft.Amend(bare, EntryFirm.Site), previous: []);
        amended.Go("Close");

        Assert.DoesNotContain(Open(amended), line => line.StartsWith("clean basin", StringComparison.Ordinal));
    }

    [Fact]
    public async Task OutputsTested_IsAskedOfARoutineVisit_SaidByOneTap_AndTakenBackByTheSame()
    {
        const string Asked = "Outputs tested one by one: to be confirmed";
        await using var page = new EntryPage();
        page.Go("Close");
        page.Press(Asked);

        page.Press("Outputs tested one by one");
        var said = Assert.Single(page.Tower.Events);
        Assert.Equal((EventType.Other, "Outputs tested one by one"), (said.Type, said.Note));
        page.Go("Close");
        Assert.DoesNotContain(Asked, Open(page));
        page.Go("Adjust");
        page.Press("Outputs tested one by one");

        Assert.Empty(page.Draft.ToVisit().Systems);
    }

    [Fact]
    public async Task OutputsTested_AtTheClose_IsSaidTogetherWithHowTheyAreLeft()
    {
        await using var page = new EntryPage();
        page.Go("Close");
        Assert.Contains("This may start a pump or open a valve at once.", page.Words, StringComparison.Ordinal);

        page.Press("Outputs tested one by one, all left automatic");

        Assert.Single(page.Tower.Events);
        Assert.All(page.Tower.Switches, s => Assert.Equal(SwitchPosition.Automatic, s.Left));
        Assert.DoesNotContain(Open(page), line => line.Contains("switch as left", StringComparison.Ordinal) || line.StartsWith("Outputs tested", StringComparison.Ordinal));
        Assert.DoesNotContain("This may start a pump or open a valve at once.", page.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(nameof(SwitchPosition.ForcedOn))]
    [InlineData(nameof(SwitchPosition.ForcedOff))]
    public async Task OutputsTested_AtTheClose_SaysNothingOfASwitchThatWasFoundForced(string found)
    {
        await using var page = new EntryPage();
        page.Draft.SetText("systems/CT-1/switches/bleed/found", found);
        page.Go("Close");

        page.Press("Outputs tested one by one, all left automatic but those found or left forced");

        Assert.Equal([null, SwitchPosition.Automatic], page.Tower.Switches.OrderBy(s => s.Output, StringComparer.Ordinal).Select(s => s.Left));
        Assert.Single(Open(page), line => line.Contains("switch as left", StringComparison.Ordinal));
        Assert.False(page.HasButton("All left automatic"));
    }

    [Theory]
    [InlineData(VisitKind.Delivery)]
    [InlineData(VisitKind.Emergency)]
    [InlineData(VisitKind.Result)]
    public async Task OutputsTested_OfAVisitThatIsNoRound_IsNotAsked(VisitKind kind)
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", kind.ToString());

        page.Go("Close");

        Assert.DoesNotContain(Open(page), line => line.StartsWith("Outputs tested", StringComparison.Ordinal));
    }

    private static List<string> Open(EntryPage page) => [.. page.Form.FindAll(".lb-open li").Select(line => line.TextContent.Trim())];
}
