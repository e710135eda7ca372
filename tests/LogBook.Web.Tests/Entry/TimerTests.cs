using Bunit;
using LogBook.Domain.Assessments;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;

namespace LogBook.Web.Tests.Entry;

/// <summary>Settling and incubation run on every step, outlive the page, and never block entry.</summary>
public sealed class TimerTests
{
    private const string Over = "#timers-over";

    [Fact]
    public async Task Settling_Runs_IsToldWhenOver_OnAnotherStep_AndGoesWithItsReading()
    {
        await using var page = new EntryPage();
        page.Go("Reference");
        page.Press("Start settling");

        Assert.Contains("Hand meter at C1: 0\u00a0min in the water, 5\u00a0min to go", page.Words, StringComparison.Ordinal);
        page.Go("Water");
        page.Clock.Advance(TimeSpan.FromSeconds(200));
        page.Form.WaitForAssertion(() => Assert.Contains("3\u00a0min in the water, 2\u00a0min to go", page.Words, StringComparison.Ordinal));
        Assert.Equal("", page.Form.Find(Over).TextContent.Trim());
        page.Clock.Advance(TimeSpan.FromSeconds(100));
        page.Form.WaitForAssertion(() => Assert.Contains("the shortest time, 5\u00a0min, is over", page.Form.Find(Over).TextContent, StringComparison.Ordinal));
        Assert.Equal("status", page.Form.Find(Over).GetAttribute("role"));

        page.Go("Reference");
        page.Press("Read now");
        Assert.Equal("", page.Form.Find(Over).TextContent.Trim());
        Assert.DoesNotContain("to go", page.Words, StringComparison.Ordinal);
        Assert.Equal("5", page.Draft.Text("systems/CT-1/probes/C1/settledMin"));
    }

    [Fact]
    public async Task Settling_TakesTheMinutesThatAreSetForTheSystem()
    {
        var firm = new FirmSetUp(EntryFirm.TowerOnly.Document)
        {
            Engine = EngineSettings.Of([new("thresholds:settledMinutes", 8), new("thresholds:settledMinutes", 12, EntryFirm.Site.Code, "CT-1"), new("thresholds:settledMinutes", 20, EntryFirm.Site.Code, "CT-2")]),
        };
        await using var page = new EntryPage(firm);
        page.Go("Reference");

        page.Press("Start settling");

        Assert.Contains("0\u00a0min in the water, 12\u00a0min to go", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settling_OutlivesThePage()
    {
        await using var page = new EntryPage();
        page.Go("Reference");
        page.Press("Start settling");

        await using var later = new EntryPage(draft: VisitDraft.FromJson(page.Draft.ToJson()), language: Language.Spanish);
        later.Clock.Advance(TimeSpan.FromMinutes(2));

        later.Form.WaitForAssertion(() => Assert.Contains("Medidor portátil en C1: 2\u00a0min en el agua, faltan 3\u00a0min", later.Words, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Incubation_WithItsHours_CountsDown_WithoutThem_SaysHowLongItHasBeen()
    {
        await using var page = new EntryPage(previous: []);
        page.Go("Samples");
        page.Press("Taken now, result later");
        page.Clock.Advance(TimeSpan.FromMinutes(90));
        page.Form.WaitForAssertion(() => Assert.Contains("Dip slide, tower water: taken 90\u00a0min ago", page.Words, StringComparison.Ordinal));

        page.Type("Dip slide, tower water, Incubated for", "48");
        Assert.Contains("47\u00a0h to go", page.Words, StringComparison.Ordinal);
        page.Clock.Advance(TimeSpan.FromHours(47));
        page.Form.WaitForAssertion(() => Assert.Contains("its 48\u00a0h are over. Read it now.", page.Form.Find(Over).TextContent, StringComparison.Ordinal));

        page.Type("Dip slide, tower water", "1000");
        Assert.Equal("", page.Form.Find(Over).TextContent.Trim());
        Assert.Equal(1000, page.Tower.Readings.Single(reading => reading.Test == "dip-slide").Value);
    }

    [Fact]
    public async Task AtResult_BeginsWhereTheFirstResultIsStillToCome()
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
        await using var page = new EntryPage(draft: VisitDraft.Amend(taken, EntryFirm.Site), previous: [], atResult: true);

        Assert.Contains("Samples", page.Form.Find(".lb-step[aria-current=step]").TextContent, StringComparison.Ordinal);
        Assert.Equal(page.Field("Dip slide, tower water").Id, page.Script.VerifyInvoke("focusField").Arguments[0]);

        await using var usual = new EntryPage(draft: VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site), previous: [], atResult: true);
        Assert.Contains("Arrive", usual.Form.Find(".lb-step[aria-current=step]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AllSettingsNow_OpensTheFullWalkToday_AndCanBeTakenBack()
    {
        var readLately = EntryFirm.Earlier with
        {
            Systems =
            [
                EntryFirm.Earlier.Systems[0] with
                {
                    Alarms = [],
                    Events = [],
                    Settings = [.. SettingList.Of(EntryFirm.Tower.Programmes[0], EntryFirm.Tower).Select(planned => new SettingReading { Name = planned.Name, Found = SettingValue.Of(1), Left = SettingValue.Of(1) })],
                },
            ],
        };
        await using var page = new EntryPage(previous: [readLately]);
        page.Go("Controller");
        Assert.False(page.Form.Find(".lb-settings details").HasAttribute("open"));
        var before = page.Form.FindAll(".lb-step")[1].TextContent;

        page.Press("All settings now");

        Assert.True(page.Form.Find(".lb-settings details").HasAttribute("open"));
        Assert.NotEqual(before, page.Form.FindAll(".lb-step")[1].TextContent);
        await using var later = new EntryPage(draft: VisitDraft.FromJson(page.Draft.ToJson()), previous: [readLately]);
        later.Go("Controller");
        Assert.True(later.Form.Find(".lb-settings details").HasAttribute("open"));
        later.Press("All settings now");
        Assert.False(later.Form.Find(".lb-settings details").HasAttribute("open"));
        Assert.Equal(before, later.Form.FindAll(".lb-step")[1].TextContent);
    }
}
