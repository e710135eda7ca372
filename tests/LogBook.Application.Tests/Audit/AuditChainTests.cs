using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit.Abstractions;

namespace LogBook.Application.Tests.Audit;

public sealed class AuditChainTests(DatabaseFixture<SqliteDatabase> fixture, ITestOutputHelper output) : IClassFixture<DatabaseFixture<SqliteDatabase>>
{
    private const int Tamperings = 1000;
    private static readonly string[] Columns = ["At", "DeviceAt", "Who", "UserId", "What", "Entity", "Key", "CustomerId", "Old", "New", "Why", "Previous", "Hash"];
    private readonly SqliteDatabase _database = fixture.Database;

    [Fact]
    [Trait("goal", "S5")]
    public async Task Verify_AfterAnyOfAThousandTamperings_FindsIt()
    {
        await _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, SampleFirm.Visit(), IntakeSource.Tablet);
        var verifier = _database.Get<Verifier>();
        Assert.Empty(await verifier.VerifyAuditAsync(_database.Supervisor));
        await using var connection = new SqliteConnection($"Data Source={_database.File}");
        await connection.OpenAsync();
        await RunAsync(connection, "PRAGMA synchronous=OFF");
        var rows = await _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.AuditTrail.OrderBy(row => row.Id).ToListAsync());
        var count = rows.Count;
        await RunAsync(connection, "CREATE TEMP TABLE Kept AS SELECT * FROM AuditTrail; CREATE TEMP TABLE KeptHead AS SELECT * FROM AuditHead");
        var random = new Random(20250303);
        var missed = new List<string>();

        for (var i = 0; i < Tamperings; i++)
        {
            var sql = Tampering(random, rows);
            await RunAsync(connection, $"""
                BEGIN IMMEDIATE;
                DROP TRIGGER "AuditTrail_NoUpdate"; DROP TRIGGER "AuditTrail_NoDelete";
                {sql};
                {string.Join('\n', AuditTriggers.Sqlite)}
                COMMIT;
                """);
            if ((await verifier.VerifyAuditAsync(_database.Supervisor)).Count == 0)
            {
                missed.Add(sql);
            }

            await RunAsync(connection, $"""
                BEGIN IMMEDIATE;
                DROP TRIGGER "AuditTrail_NoUpdate"; DROP TRIGGER "AuditTrail_NoDelete";
                DELETE FROM AuditTrail; INSERT INTO AuditTrail SELECT * FROM Kept; DELETE FROM AuditHead; INSERT INTO AuditHead SELECT * FROM KeptHead;
                {string.Join('\n', AuditTriggers.Sqlite)}
                COMMIT;
                """);
        }

        output.WriteLine($"{Tamperings} tamperings of a chain of {count} rows, {missed.Count} missed");
        Assert.Empty(missed);

        // The control: what is put back is clean again, so a finding came from the tampering and not from the test.
        Assert.Empty(await verifier.VerifyAuditAsync(_database.Supervisor));
    }

    [Fact]
    [Trait("goal", "S5")]
    public async Task Trail_UpdateOrDelete_IsRefusedByTheDatabase()
    {
        await Assert.ThrowsAsync<SqliteException>(() => _database.SqlAsync("""UPDATE "AuditTrail" SET "Who" = 'nobody'"""));
        await Assert.ThrowsAsync<SqliteException>(() => _database.SqlAsync("""DELETE FROM "AuditTrail" """));
    }

    private static string Tampering(Random random, List<AuditRow> rows)
    {
        var count = rows.Count;
        var row = random.Next(1, count + 1);
        var other = 1 + ((row + random.Next(0, count - 1)) % count);
        var column = Columns[random.Next(Columns.Length)];
        var number = random.Next(1, 1_000_000);
        return random.Next(8) switch
        {
            0 or 1 => column is "At" or "DeviceAt" or "UserId" or "CustomerId"
                ? $"UPDATE AuditTrail SET {column} = coalesce({column}, 0) + {number} WHERE Id = {row}"
                : $"UPDATE AuditTrail SET \"{column}\" = coalesce(\"{column}\", '') || '{number}' WHERE Id = {row}",
            2 => $"DELETE FROM AuditTrail WHERE Id = {row}",
            3 => $"DELETE FROM AuditTrail WHERE Id >= {row}",
            4 => $"INSERT INTO AuditTrail (Id, At, Who, What, Entity, \"Key\", Previous, Hash) SELECT {count + 1}, At, Who, What, Entity, \"Key\", Hash, Hash FROM AuditTrail WHERE Id = {count}",
            5 => row == other
                ? $"UPDATE AuditHead SET Count = Count + {number}"
                : $"UPDATE AuditTrail SET Id = -1 WHERE Id = {row}; UPDATE AuditTrail SET Id = {row} WHERE Id = {other}; UPDATE AuditTrail SET Id = {other} WHERE Id = -1",

            // Somebody who knows how a row is hashed.
            6 => $"UPDATE AuditTrail SET Who = 'x{number}', Hash = '{HashWithWho(rows[row - 1], $"x{number}")}' WHERE Id = {row}",
            _ => $"DELETE FROM AuditTrail WHERE Id = {count}; UPDATE AuditHead SET Count = {count - 1}",
        };
    }

    private static async Task RunAsync(SqliteConnection connection, string sql)
    {
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Made by this test.
        command.CommandText = sql;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    private static string HashWithWho(AuditRow row, string who)
    {
        var before = row.Who;
        row.Who = who;
        var hash = AuditChain.HashOf(row);
        row.Who = before;
        return hash;
    }
}
