using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Domain.Sites;
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
        var invalid = Assert.IsType<SaveOutcome.Invalid>(await Care.AcknowledgeAsync(_database.Supervisor, 1, null, "NOBODY"));

        Assert.Equal(("owner", "Owner: NOBODY was found; expected is a person of the firm who is in use."), (invalid.Issues[0].Path, Assert.Single(invalid.Issues).Message));
    }
}
