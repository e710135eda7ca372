using LogBook.Application.Data;
using LogBook.Testing.Databases;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Data;

public sealed class MigrationTests
{
    [Theory]
    [InlineData("design.db")]
    [InlineData("Host=127.0.0.1;Database=none")]
    public void Model_AndItsMigrations_SayTheSame(string database)
    {
        var builder = new DbContextOptionsBuilder<LogBookDb>();
        builder.UseLogBook(new LogBookOptions { Database = database });
        using var db = new LogBookDb(builder.Options);

        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task CreatedSchema_OnSqlite_IsTheReviewedOne()
    {
        await using var database = new SqliteDatabase();
        await database.StartAsync();
        await using var connection = new SqliteConnection($"Data Source={database.File}");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY tbl_name, CASE type WHEN 'table' THEN 0 WHEN 'index' THEN 1 ELSE 2 END, name";
        await using var reader = await command.ExecuteReaderAsync();
        var statements = new List<string>();
        while (await reader.ReadAsync())
        {
            statements.Add(reader.GetString(0).ReplaceLineEndings("\n").Trim().TrimEnd(';') + ";\n");
        }

        var created = string.Join('\n', statements);
        var file = Path.Combine(Root(), "db", "schema.sql");

        // One deliberate switch; the difference is then read in review.
        if (Environment.GetEnvironmentVariable("LOGBOOK_UPDATE") == "1")
        {
            await File.WriteAllTextAsync(file, created);
        }

        Assert.Equal((await File.ReadAllTextAsync(file)).ReplaceLineEndings("\n"), created);
    }

    [Fact]
    public async Task Start_OnADatabaseOfANewerLogBook_IsRefused()
    {
        await using var database = new SqliteDatabase();
        await database.StartAsync();
        await database.SqlAsync("""INSERT INTO "__EFMigrationsHistory" VALUES ('29990101000000_FromTheFuture', '99.0.0')""");

        var refusal = await Assert.ThrowsAsync<NewerSchemaException>(() => database.Get<LogBookStartUp>().RunAsync());

        Assert.Contains("FromTheFuture", refusal.Message, StringComparison.Ordinal);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "LogBook.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
