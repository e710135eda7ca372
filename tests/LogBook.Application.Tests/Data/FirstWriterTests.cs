using LogBook.Application.Data;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Data;

/// <summary>On PostgreSQL two units of work run beside each other: both may find nothing under a code and add it.</summary>
public sealed class FirstWriterTests(DatabaseFixture<PostgresDatabase> fixture) : IClassFixture<DatabaseFixture<PostgresDatabase>>
{
    private const string Code = "twice";

    private readonly PostgresDatabase _database = fixture.Database;

    [Fact]
    public async Task Write_SomebodyElseAddedTheSameMeanwhile_IsDoneAgainAndFindsIt()
    {
        var store = _database.Get<LogBookStore>();
        var attempts = 0;

        await store.WriteAsync(_database.Supervisor, async db =>
        {
            attempts++;
            var row = await FindAsync(db);
            if (attempts == 1)
            {
                Assert.Null(row);
                await FromElsewhereAsync(() => store.WriteAsync(_database.Technician, async other => Put(other, await FindAsync(other), "first")));
            }

            Put(db, row, "second");
        });

        var kept = await store.ReadAsync(_database.Supervisor, db => db.SetUp.Where(row => row.CodeKey == "TWICE").Select(row => row.Name).ToListAsync());
        Assert.Equal((2, "second"), (attempts, Assert.Single(kept)));
    }

    private static Task<SetUpRow?> FindAsync(LogBookDb db) => db.SetUp.AsTracking().SingleOrDefaultAsync(row => row.Kind == SetUpKind.SheetMapping && row.CodeKey == "TWICE");

    private static void Put(LogBookDb db, SetUpRow? row, string name)
    {
        if (row is null)
        {
            row = new SetUpRow { Kind = SetUpKind.SheetMapping, Code = Code, CodeKey = "TWICE", Document = "{}" };
            db.SetUp.Add(row);
        }

        row.Name = name;
    }

    // Another request: it shares nothing with the unit of work that waits here.
    private static Task FromElsewhereAsync(Func<Task> act)
    {
        using (ExecutionContext.SuppressFlow())
        {
            return Task.Run(act);
        }
    }
}
