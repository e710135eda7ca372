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
    public void WalkIsDue_EverySettingReadLately_IsNot() => Assert.False(IsDue(Nothing, (28, All())));

    [Fact]
    public void WalkIsDue_NinetyDaysOn_Is() => Assert.True(IsDue(Nothing, (90, All())));

    [Fact]
    public void WalkIsDue_OneSettingNeverRead_Is() => Assert.True(IsDue(Nothing, (28, All() with { Settings = [.. All().Settings.Skip(1)] })));

    [Fact]
    public void WalkIsDue_LastVisitNotedPowerLossOrStandingAlarmAndMadeNoWalk_Is()
    {
        Assert.True(IsDue(Nothing, (56, All()), (28, PowerLost)));
        Assert.True(IsDue(Nothing, (56, All()), (28, Alarm)));
        Assert.False(IsDue(Nothing, (56, All()), (28, All() with { Events = PowerLost.Events, Alarms = Alarm.Alarms })));
    }

    [Fact]
    public void WalkIsDue_LastVisitFoundASettingOtherwiseThanLeftAndMadeNoWalk_Is()
    {
        Assert.True(IsDue(Nothing, (56, All()), (28, Changed)));
        Assert.False(IsDue(Nothing, (56, All()), (28, All() with { Settings = [.. Changed.Settings, .. All().Settings.Skip(1)] })));
    }

    [Fact]
    public void WalkIsDue_TodayFindsAlarmPowerLossOrAnotherSetting_IsAtOnce()
    {
        Assert.True(IsDue(Alarm, (28, All())));
        Assert.True(IsDue(PowerLost, (28, All())));
        Assert.True(IsDue(Changed, (28, All())));
        Assert.False(IsDue(All(), (28, All())));
        Assert.False(IsDue(new VisitedSystem { System = "CT-1", Alarms = [new AlarmReading { Text = "no flow", Standing = false }] }, (28, All())));
    }

    [Theory]
    [InlineData("1350", false)]
    [InlineData("1350.0", false)]
    [InlineData("1500", true)]
    public async Task Walk_SettingFoundTodayAgainstWhatWasLeft_OpensInThisVisit(string found, bool due)
    {
        await using var page = WalkedBefore();
        page.Go("Controller");
        Assert.DoesNotContain("Full walk through the settings: due", page.Words, StringComparison.Ordinal);

        page.Form.Find("[data-key='systems/CT-1/settings/setPointUsPerCm/found']").Change(found);

        Assert.Equal(due, page.Words.Contains("Full walk through the settings: due", StringComparison.Ordinal));
        page.Go("Close");
        Assert.Equal(due, page.Form.Find(".lb-open").TextContent.Contains("Full walk through the settings is due: 2 not read", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Walk_AlarmFoundToday_OpensInThisVisit_AndClosesWhenItStandsNoMore()
    {
        await using var page = WalkedBefore();
        page.Go("Controller");
        page.Press("Add: Alarms and last error");
        page.Type("Alarm, as shown", "bleed ran too long");

        Assert.Contains("Full walk through the settings: due", page.Words, StringComparison.Ordinal);
        page.Choose("Still standing?", "No");

        Assert.DoesNotContain("Full walk through the settings: due", page.Words, StringComparison.Ordinal);
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

    private static VisitedSystem Nothing { get; } = new() { System = "CT-1" };

    private static VisitedSystem PowerLost { get; } = new() { System = "CT-1", Events = [new VisitEvent { Type = EventType.PowerLost }] };

    private static VisitedSystem Alarm { get; } = new() { System = "CT-1", Alarms = [new AlarmReading { Text = "no flow", Standing = true }] };

    private static VisitedSystem Changed { get; } = new() { System = "CT-1", Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1500) }] };

    private static bool IsDue(VisitedSystem today, params (int DaysAgo, VisitedSystem System)[] visits) =>
        SettingList.WalkIsDue(Planned, [.. visits.Select(v => (Now.AddDays(-v.DaysAgo), v.System))], today, Now);

    // The last visit read every setting as the programme has it.
    private static EntryPage WalkedBefore() => new(previous:
    [
        EntryFirm.Earlier with
        {
            Systems =
            [
                EntryFirm.Earlier.Systems[0] with
                {
                    Settings = [.. Planned.Select(s => new SettingReading { Name = s.Name, Found = SettingValue.Of((double)s.Programme) })],
                },
            ],
        },
    ]);

    private static VisitedSystem All() => new() { System = "CT-1", Settings = [.. Planned.Select(s => new SettingReading { Name = s.Name, Found = SettingValue.Of(1), Left = SettingValue.Of(1) })] };
}
