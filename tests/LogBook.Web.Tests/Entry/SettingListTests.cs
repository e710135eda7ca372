using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;

namespace LogBook.Web.Tests.Entry;

public sealed class SettingListTests
{
    private static readonly DateTime Now = new(2025, 3, 31, 8, 5, 0, DateTimeKind.Utc);

    private static IReadOnlyList<PlannedSetting> Planned => SettingList.Of(EntryFirm.Tower.Programmes[0], EntryFirm.Tower);

    [Fact]
    public void Of_Programme_NamesItsSettingsAsTheRecordDoes() => Assert.Equal(
        ["setPointUsPerCm", "differentialUsPerCm", "longestBleedMin", "inhibitor/everyL", "inhibitor/runSeconds"],
        Planned.Select(s => s.Name));

    [Fact]
    public void WalkIsDue_EverySettingReadLately_IsNot() => Assert.False(SettingList.WalkIsDue(Planned, [(Now.AddDays(-28), All())], Now));

    [Fact]
    public void WalkIsDue_NinetyDaysOn_Is() => Assert.True(SettingList.WalkIsDue(Planned, [(Now.AddDays(-90), All())], Now));

    [Fact]
    public void WalkIsDue_OneSettingNeverRead_Is() =>
        Assert.True(SettingList.WalkIsDue(Planned, [(Now.AddDays(-28), All() with { Settings = [.. All().Settings.Skip(1)] })], Now));

    [Fact]
    public void WalkIsDue_AfterPowerLossOrStandingAlarm_Is()
    {
        Assert.True(SettingList.WalkIsDue(Planned, [(Now.AddDays(-28), All() with { Events = [new VisitEvent { Type = EventType.PowerLost }] })], Now));
        Assert.True(SettingList.WalkIsDue(Planned, [(Now.AddDays(-28), All() with { Alarms = [new AlarmReading { Text = "no flow", Standing = true }] })], Now));
    }

    [Fact]
    public void WalkIsDue_ASettingFoundOtherwiseThanLeft_Is()
    {
        var changed = All() with { Settings = [.. All().Settings.Select(s => s.Name == "setPointUsPerCm" ? s with { Found = SettingValue.Of(1500) } : s)] };

        Assert.True(SettingList.WalkIsDue(Planned, [(Now.AddDays(-56), All()), (Now.AddDays(-28), changed)], Now));
    }

    [Fact]
    public async Task LeftAsFound_WrittenOtherwise_AsksForNoReason()
    {
        const string setting = "systems/CT-1/settings/setPointUsPerCm/";
        await using var page = new EntryPage();
        page.Go("Controller");
        page.Form.Find($"[data-key='{setting}found']").Change("1395");
        page.Go("Adjust");

        page.Form.Find($"[data-key='{setting}left']").Change("1395.0");
        Assert.Empty(page.Form.FindAll($"#{DraftKey.ElementId(setting + "reason")}"));

        page.Form.Find($"[data-key='{setting}left']").Change("1396");
        Assert.Single(page.Form.FindAll($"#{DraftKey.ElementId(setting + "reason")}"));
    }

    [Fact]
    public async Task DaysAndWhatGoesOnMeanwhile_AreChosenInTheReadersWords()
    {
        const string Feed = "systems/CT-1/settings/biocide-1/";
        var plan = new Feed
        {
            Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.DosePlan, Days = [Weekday.Monday, Weekday.Thursday], Weeks = [1, 3], Starts = ["21:30"], RunMinutes = 30,
            InhibitorMeanwhile = InhibitorMeanwhile.Waits,
        };
        var tower = EntryFirm.Tower with { Programmes = [EntryFirm.Tower.Programmes[0] with { Feeds = [plan] }] };
        await using var page = new EntryPage(EntryFirm.With(tower), language: Language.Spanish);
        page.Go("Controlador");

        var days = page.Form.FindAll("fieldset").Single(set => set.QuerySelector("legend")!.TextContent.Contains("días", StringComparison.Ordinal));
        days.QuerySelectorAll("button").Single(day => day.TextContent.Contains("jue", StringComparison.Ordinal)).Click();
        days = page.Form.FindAll("fieldset").Single(set => set.QuerySelector("legend")!.TextContent.Contains("días", StringComparison.Ordinal));
        days.QuerySelectorAll("button").Single(day => day.TextContent.Contains("lun", StringComparison.Ordinal)).Click();
        var meanwhile = page.Form.Find("#" + DraftKey.ElementId(Feed.Replace("biocide-1/", "biocide-1%2F", StringComparison.Ordinal) + "inhibitorMeanwhile/found"));
        Assert.Contains("Espera", meanwhile.TextContent, StringComparison.Ordinal);
        meanwhile.Change("skips");

        var found = page.Tower.Settings.ToDictionary(setting => setting.Name, setting => setting.Found!.ToString());
        Assert.Equal(("mon,thu", "skips"), (found["biocide-1/days"], found["biocide-1/inhibitorMeanwhile"]));
    }

    private static VisitedSystem All() => new() { System = "CT-1", Settings = [.. Planned.Select(s => new SettingReading { Name = s.Name, Found = SettingValue.Of(1), Left = SettingValue.Of(1) })] };
}
