using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Domain.Clocks;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.Clocks;

public sealed class RuleAdopterTests(DatabaseFixture<SqliteDatabase> fixture) : IClassFixture<DatabaseFixture<SqliteDatabase>>
{
    private static readonly RuleTemplate Template = RuleTemplates.All.Single(template => template.Rule.Code == "VIC-LEG");

    private readonly SqliteDatabase _database = fixture.Database;

    private RuleAdopter Adopter => _database.Get<RuleAdopter>();

    [Fact]
    public async Task Adopt_TwiceWithLaterDay_MakesTwoVersionsAndPutsTheSystemUnderIt()
    {
        Assert.DoesNotContain((await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor)).Rules, rule => rule.Code == "VIC-LEG");

        Assert.IsType<SaveOutcome.Saved>(await Adopter.AdoptAsync(_database.Supervisor, Template, new DateOnly(2025, 1, 1), "I. Wendle, 20 December", [("YAF-1", "CT-1")]));
        Assert.IsType<SaveOutcome.Saved>(await Adopter.AdoptAsync(_database.Supervisor, Template, new DateOnly(2025, 6, 1), "I. Wendle, 20 May", [("YAF-1", "CT-1")]));

        var firm = await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor);
        Assert.Equal(
            [(new DateOnly(2025, 1, 1), new DateOnly(2025, 5, 31)), (new DateOnly(2025, 6, 1), (DateOnly?)null)],
            firm.Rules.Where(rule => rule.Code == "VIC-LEG").OrderBy(rule => rule.From).Select(rule => (rule.From, rule.To)));
        Assert.Single(firm.System("YAF-1", "CT-1")!.Rules, code => code == "VIC-LEG");
        Assert.IsType<SaveOutcome.Invalid>(await Adopter.AdoptAsync(_database.Supervisor, Template, new DateOnly(2025, 5, 1), "I. Wendle", []));
    }

    [Fact]
    public async Task Adopt_NotChecked_NotAllowedOrNotThere_IsRefused()
    {
        var other = RuleTemplates.All.Single(template => template.Rule.Code == "HK-LEG");

        Assert.Equal("checkedWith", Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await Adopter.AdoptAsync(_database.Supervisor, other, new DateOnly(2025, 1, 1), " ", [])).Issues).Path);
        Assert.IsType<SaveOutcome.NotAllowed>(await Adopter.AdoptAsync(_database.Technician, other, new DateOnly(2025, 1, 1), "x", []));
        Assert.IsType<SaveOutcome.NotFound>(await Adopter.AdoptAsync(_database.Supervisor, other, new DateOnly(2025, 1, 1), "x", [("ZZZ-1", "CT-1")]));
        Assert.DoesNotContain((await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor)).Rules, rule => rule.Code == "HK-LEG");
    }

    [Fact]
    public async Task Adopt_OutsideTheTemplatesOwnDates_IsRefusedAndNamesThem()
    {
        var dated = RuleTemplates.All.First(template => template.Rule.To is not null && template.Rule.From > DateOnly.MinValue);
        var (first, last) = (dated.Rule.From, dated.Rule.To!.Value);

        foreach (var day in new[] { first.AddDays(-1), last.AddDays(1) })
        {
            var issue = Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await Adopter.AdoptAsync(_database.Supervisor, dated, day, "I. Wendle", [])).Issues);
            Assert.Equal(("from", "outside-its-dates"), (issue.Path, issue.Code));
        }

        Assert.DoesNotContain((await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor)).Rules, rule => rule.Code == dated.Rule.Code && rule.From == first.AddDays(-1));
        Assert.IsType<SaveOutcome.Saved>(await Adopter.AdoptAsync(_database.Supervisor, dated, last, "I. Wendle", []));
    }

    [Fact]
    public async Task Promise_IsKeptWithTheSites()
    {
        Assert.IsType<SaveOutcome.Saved>(await Adopter.PromiseAsync(_database.Supervisor, 120, ["PLU-1"]));

        var firm = await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor);
        Assert.Equal((120.0, 24.0), (firm.Sites["PLU-1"].SummaryWithinHours!.Value, firm.Sites["YAF-1"].SummaryWithinHours!.Value));
        Assert.IsType<SaveOutcome.Saved>(await Adopter.PromiseAsync(_database.Supervisor, null, ["PLU-1"], 10));
        var changed = (await _database.Get<SetUpStore>().FirmAsync(_database.Supervisor)).Sites["PLU-1"];
        Assert.Equal((null, 10), (changed.SummaryWithinHours, changed.SummaryByMonthDay));
        Assert.IsType<SaveOutcome.NotAllowed>(await Adopter.PromiseAsync(_database.Technician, 1, ["PLU-1"]));
        Assert.IsType<SaveOutcome.NotFound>(await Adopter.PromiseAsync(_database.Supervisor, 1, ["ZZZ-1"]));
    }
}
