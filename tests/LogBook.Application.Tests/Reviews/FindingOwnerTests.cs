using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Findings;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.Reviews;

public sealed class FindingOwnerTests(DatabaseFixture<SqliteDatabase> fixture) : IClassFixture<DatabaseFixture<SqliteDatabase>>
{
    private readonly SqliteDatabase _database = fixture.Database;

    private FindingCare Care => _database.Get<FindingCare>();

    [Fact]
    public async Task Owners_AreThePeopleOfTheFirmInUse()
    {
        await _database.Get<SetUpStore>().SaveAsync(_database.Supervisor, new Person { Code = "OUS", Name = "O. Ousel", Role = PersonRole.Technician }, 0);
        var before = (await Care.OwnersAsync(_database.Supervisor)).Select(person => person.Code).ToList();
        await _database.Get<SetUpStore>().RetireAsync(_database.Supervisor, SetUpKind.Person, "OUS", "left the firm");

        var after = (await Care.OwnersAsync(_database.Supervisor)).Select(person => person.Code).ToList();

        Assert.Equal(before.Where(code => code != "OUS"), after);
        Assert.Contains("OUS", before);
        Assert.Contains("RYA", after);
        Assert.Empty(await Care.OwnersAsync(_database.Technician));
    }

    [Fact]
    public async Task Acknowledge_ForSomebodyWhoIsNotThere_SaysWhatWasFound()
    {
        var invalid = Assert.IsType<SaveOutcome.Invalid>(await Care.AcknowledgeAsync(_database.Supervisor, [], null, "NOBODY"));

        Assert.Equal(("owner", "Owner: NOBODY was found; expected is a person of the firm who is in use."), (invalid.Issues[0].Path, Assert.Single(invalid.Issues).Message));
    }

    [Fact]
    public async Task Answer_SeveralAtOnce_TakesOnThoseNamedAndNoOthers()
    {
        foreach (var (site, day) in new[] { ("YAF-1", 3), ("PLU-1", 4) })
        {
            var visit = SampleFirm.Visit(site, $"2025-03-0{day}T09:05:00+00:00", bleedSwitch: SwitchPosition.ForcedOn);
            Assert.IsType<IntakeOutcome.Stored>(await _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, visit, IntakeSource.Tablet));
        }

        await _database.Get<AssessmentKeeper>().AssessAllAsync(_database.Supervisor);
        var rows = (await _database.Get<AttentionQuery>().ListAsync(_database.Supervisor, new AttentionFilter(Severity: Severity.Act)))!.Rows;
        var chosen = rows.GroupBy(row => row.Key.Site).Select(group => group.First().Key).ToList();

        var saved = await Care.AcknowledgeAsync(_database.Supervisor, chosen, "looked at together");

        Assert.Equal(2, chosen.Count);
        Assert.IsType<SaveOutcome.Saved>(saved);
        var after = (await _database.Get<AttentionQuery>().ListAsync(_database.Supervisor, new AttentionFilter(Severity: Severity.Act)))!.Rows;
        Assert.All(after, row => Assert.Equal(chosen.Contains(row.Key) ? FindingState.Acknowledged : FindingState.Open, row.Finding.State));
        Assert.IsType<SaveOutcome.NotFound>(await Care.CloseAsync(_database.Supervisor, [chosen[0] with { Kind = FindingKinds.WaterLoss }], "no such finding"));
    }
}
