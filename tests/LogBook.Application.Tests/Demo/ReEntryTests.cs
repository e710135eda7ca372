using LogBook.Application.Demo;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using Xunit;

namespace LogBook.Application.Tests.Demo;

/// <summary>
/// UMB-1 loses its settings on 3 March 2026. The sheet of the day before, made from the visits alone, is entered into the simulated controller:
/// from then on it must do what it does with the true settings, to the last digit.
/// </summary>
public sealed class ReEntryTests
{
    private static readonly DateOnly DayBefore = new(2026, 3, 2);
    private static readonly DateTime Reset = new(2026, 3, 3, 18, 0, 0, DateTimeKind.Utc);
    private static readonly DateTime NextVisit = new(2026, 3, 17, 13, 45, 0, DateTimeKind.Utc);
    private static readonly DateTime End = new(2026, 5, 15, 0, 0, 0, DateTimeKind.Utc);

    private static readonly Lazy<Case> Umb1 = new(Case.Make);

    [Fact]
    [Trait("goal", "re-entry")]
    public void Sheet_EnteredAtOnce_BringsBackTheOldBehaviourToTheLastDigit()
    {
        var (known, entered) = (Umb1.Value.Plant(), Umb1.Value.Plant());
        known.AdvanceTo(Reset);
        entered.AdvanceTo(Reset);

        // Both controllers restart at this moment: one comes back with what it had, the other with its defaults.
        known.Settings = Umb1.Value.True;
        entered.Settings = Umb1.Value.Defaults;
        entered.Settings = Umb1.Value.Sheet.EnteredInto(entered.Settings, Umb1.Value.System);

        AssertSame(known, entered);
    }

    [Fact]
    [Trait("goal", "re-entry")]
    public void Sheet_EnteredAtTheNextVisit_DoesWhatTheTrueSettingsDo()
    {
        var (known, entered) = (AfterReset(), AfterReset());
        known.Settings = Umb1.Value.True;
        entered.Settings = Umb1.Value.Sheet.EnteredInto(entered.Settings, Umb1.Value.System);

        AssertSame(known, entered);
    }

    [Theory]
    [InlineData("setPointUsPerCm")]
    [InlineData("differentialUsPerCm")]
    [InlineData("inhibitor/runSeconds")]
    [InlineData("biocide-1/starts")]
    [InlineData("biocide-1/holdBleedShutMin")]
    [InlineData("biocide-1/bleedDownFirst/toUsPerCm")]
    [InlineData("halogen/setPoint")]
    [InlineData("halogen/waitsFor")]
    [Trait("goal", "re-entry")]
    public void Sheet_OneLineForgotten_DoesSomethingElse(string forgotten)
    {
        // The control of the two tests above: they can fail.
        var (known, entered) = (AfterReset(), AfterReset());
        known.Settings = Umb1.Value.True;
        var lines = Umb1.Value.Sheet.Lines.Select(line => line.Setting).Where(setting => setting.Name != forgotten).ToList();
        Assert.Equal(Umb1.Value.Sheet.Lines.Count() - 1, lines.Count);
        entered.Settings = ProgrammeSettings.Enter(entered.Settings, lines, Umb1.Value.System);
        known.AdvanceTo(End);
        entered.AdvanceTo(End);

        Assert.NotEqual(State(known), State(entered));
    }

    [Fact]
    [Trait("goal", "re-entry")]
    public void Sheet_DayBeforeTheReset_SaysWhatTheProgrammeSaidAndWhereEachLineComesFrom()
    {
        var sheet = Umb1.Value.Sheet;

        Assert.Equal(
            ProgrammeSettings.Of(Umb1.Value.True, Umb1.Value.System).OrderBy(setting => setting.Name, StringComparer.Ordinal),
            sheet.Lines.Select(line => line.Setting).OrderBy(setting => setting.Name, StringComparer.Ordinal));
        Assert.Contains(sheet.Lines, line => line is { Setting.Name: "setPointUsPerCm", ReadOn: { } on } && on == new DateOnly(2026, 2, 17));
        Assert.Contains(sheet.Lines, line => line is { Setting.Name: "weekOneFrom", ReadOn: null });
        Assert.All(sheet.Lines, line => Assert.Null(line.Programme));
        Assert.All(sheet.Groups, group => Assert.Empty(group.Stops));
    }

    [Fact]
    [Trait("goal", "re-entry")]
    public void Sheet_CheckedAgainstTheNextVisit_EveryLineReadAgrees()
    {
        var next = Umb1.Value.History.Visits.First(visit => visit.At > Reset);

        var back = Umb1.Value.Sheet.Check(next.Record);

        // The technician put everything back as last left.
        Assert.True(back.Count(line => line.Agrees == true) > 20);
        Assert.DoesNotContain(back, line => line.Agrees == false);

        // As found it was something else: the same check tells that.
        var found = next.Record with { Settings = [.. next.Record.Settings.Select(setting => setting with { Left = setting.Found })] };
        Assert.True(Umb1.Value.Sheet.Check(found).Count(line => line.Agrees == false) >= 10);
    }

    private static PlantSimulation AfterReset()
    {
        var plant = Umb1.Value.Plant();
        plant.AdvanceTo(Reset);
        plant.Settings = Umb1.Value.Defaults;
        plant.AdvanceTo(NextVisit);
        return plant;
    }

    private static void AssertSame(PlantSimulation known, PlantSimulation entered)
    {
        for (var at = known.Utc; at < End; at = at.AddHours(6))
        {
            known.AdvanceTo(at);
            entered.AdvanceTo(at);
            Assert.Equal(State(known), State(entered));
        }
    }

    private static IReadOnlyList<double> State(PlantSimulation plant) =>
    [
        .. Enum.GetValues<Substance>().Select(plant.Of),
        plant.DisplayUsPerCm,
        plant.CountedL,
        .. Umb1.Value.System.Outputs.Select(output => plant.HoursRun(output.Code)),
        .. Umb1.Value.System.Drums.Select(drum => plant.DrumL(drum.Code)),
    ];

    private sealed record Case(DemoSiteFile File, DemoFirmFile Firm, ulong Seed, SystemHistory History, ReEntrySheet Sheet)
    {
        public WaterSystem System => History.System;

        public Programme True => System.Programmes[0];

        public Programme Defaults => File.Story.First(entry => entry.Act == ScenarioAct.SettingsReset).Settings!;

        public static Case Make()
        {
            var firm = DemoFiles.Firm();
            var file = DemoFiles.Sites().Single(site => site.Code == "UMB-1");
            var result = DemoFirm.Run(firm, [file], DemoFirm.DefaultSeed, new DateOnly(2026, 4, 30));
            var history = SystemHistory.From(new FirmSetUp(result.Document), "UMB-1", "CT-1", result.Document.Visits);
            return new Case(file, firm, SplitMix.For(DemoFirm.DefaultSeed, file.Code).NextBits(), history, ReEntrySheet.Of(history, DayBefore, DayBefore));
        }

        public PlantSimulation Plant() => new(
            DemoSiteBuilder.Plant(File, Firm, Seed), System, True, TimeZoneInfo.FindSystemTimeZoneById(DemoSiteBuilder.Zone), new DateTime(2026, 2, 1, 0, 0, 0, DateTimeKind.Utc), Seed);
    }
}
