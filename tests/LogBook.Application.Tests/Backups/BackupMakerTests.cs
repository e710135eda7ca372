using LogBook.Application.Audit;
using LogBook.Application.Backups;
using LogBook.Application.Data;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Backups;

public abstract class BackupMakerTests<TDatabase>
    where TDatabase : TestDatabase, new()
{
    [Fact]
    [Trait("goal", "R7")]
    public async Task Restore_OfABackupMadeWhileVisitsCameIn_IsWholeAndVerifies()
    {
        await using var database = new TDatabase();
        await database.StartWithSampleFirmAsync();
        var folder = Directory.CreateTempSubdirectory("logbook-test-").FullName;
        var admin = Viewer.System("test");
        var ids = new List<Guid>();
        async Task SaveAsync(int from, int to)
        {
            for (var i = from; i < to; i++)
            {
                var at = Moment.OfUtc(new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(i));
                ids.Add(Assert.IsType<IntakeOutcome.Stored>(await database.Get<VisitIntake>().ReceiveAsync(database.Technician, SampleFirm.Visit(arrived: at.Text), IntakeSource.Tablet)).VisitId);
            }
        }

        try
        {
            await SaveAsync(0, 20);
            var before = ids.ToList();
            var backingUp = database.Get<BackupMaker>().BackupAsync(admin, folder);
            await SaveAsync(20, 30);
            var backup = await backingUp;
            await SaveAsync(30, 35);
            await database.RestartAsync();

            await database.Get<BackupMaker>().RestoreAsync(admin, backup);

            await database.Get<LogBookStartUp>().RunAsync();
            var restored = await database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Visits.Select(v => v.VisitId).ToListAsync());
            Assert.Empty(before.Except(restored));
            Assert.Empty(restored.Except(ids));
            Assert.InRange(restored.Count, 20, 30);
            Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

public sealed class BackupMakerOnSqliteTests : BackupMakerTests<SqliteDatabase>
{
    [Fact]
    public async Task Restore_OfADamagedFile_ChangesNothing()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var damaged = Path.Combine(database.Folder, "damaged.db");
        await File.WriteAllTextAsync(damaged, "this is no database, however long the text is made to look like one");

        await Assert.ThrowsAsync<InvalidDataException>(() => database.Get<BackupMaker>().RestoreAsync(Viewer.System("test"), damaged));

        Assert.Equal(2, await database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Sites.CountAsync()));
    }
}

public sealed class BackupMakerOnPostgreSqlTests : BackupMakerTests<PostgresDatabase>;
