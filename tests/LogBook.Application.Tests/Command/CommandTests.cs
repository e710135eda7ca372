using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Testing;
using Microsoft.Data.Sqlite;

namespace LogBook.Application.Tests.Command;

public sealed class CommandTests : IDisposable
{
    private const string VisitId = "01955b40-5e60-7c77-9a57-0a6f8a0d2a11";

    private readonly LogbookCommand _command = new();

    [Fact]
    public async Task Summary_KnownVisit_WritesBothFormsInTheLanguage()
    {
        await ImportExamplesAsync();

        var subject = await _command.MustAsync("summary", VisitId, "--language", "es", "--out", "out");
        var unknown = await _command.RunAsync("summary", "01955b40-5e60-7c77-9a57-0a6f8a0d2aff", "--out", "out");

        Assert.StartsWith("Resumen de la visita: Yaffleford College", subject, StringComparison.Ordinal);
        Assert.Contains("<html lang=\"es\">", await File.ReadAllTextAsync(_command.At($"out/{VisitId}.html")), StringComparison.Ordinal);
        Assert.Contains("Lo que encontramos", await File.ReadAllTextAsync(_command.At($"out/{VisitId}.txt")), StringComparison.Ordinal);
        Assert.Equal(1, unknown.ExitCode);
        Assert.StartsWith("visit: there is no visit ", unknown.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFiles(_command.At("out")).Length);
    }

    [Fact]
    [Trait("goal", "S5")]
    public async Task Verify_AfterATampering_SaysWhatAndExitsWithOne()
    {
        await ImportExamplesAsync();
        await _command.MustAsync("verify");
        await SqlAsync("UPDATE Readings SET Value = 59 WHERE Test = 'inhibitor'");

        var found = await _command.RunAsync("verify");

        Assert.Equal(1, found.ExitCode);
        Assert.Equal($"visit {VisitId}: the stored readings are not what the document says\n", found.Errors);
        Assert.EndsWith("; 1 faults.\n", found.Output, StringComparison.Ordinal);
    }

    // The picture is put there as the server keeps it: only the server takes pictures in.
    [Fact]
    [Trait("goal", "record-pack")]
    public async Task Records_WithPhotos_TakesThePictureFromItsFolder_AndRefusesAFolderThatIsNot()
    {
        await ImportExamplesAsync();
        string[] records = ["records", "--site", "YAF-1", "--from", "2025-03-01", "--to", "2025-03-31", "--language", "pt", "--out", "out"];
        Assert.EndsWith(" 0 pictures, 1 pictures missing.\n", await _command.MustAsync(records), StringComparison.Ordinal);
        var picture = SamplePicture.Jpeg(64, 48, 1);
        Directory.CreateDirectory(_command.At("pictures"));
        await File.WriteAllBytesAsync(_command.At("pictures/one.jpg"), picture);
        await SqlAsync($"UPDATE Photos SET StoredAt = 1741000000000, FileName = 'one.jpg', MediaType = 'image/jpeg', Bytes = {picture.Length}, FileSha256 = '{Convert.ToHexStringLower(SHA256.HashData(picture))}'");

        var beside = await _command.RunAsync(records);
        var nowhere = await _command.RunAsync([.. records, "--photos", "nowhere"]);
        var made = await _command.MustAsync([.. records, "--photos", "pictures"]);
        var verified = await _command.RunAsync("verify", "--photos", "pictures");

        Assert.Equal((1, $"--photos: there is no folder '{_command.At("photos")}'.\n"), (beside.ExitCode, beside.Errors));
        Assert.Equal((1, $"--photos: there is no folder '{_command.At("nowhere")}'.\n"), (nowhere.ExitCode, nowhere.Errors));
        Assert.EndsWith(" 1 pictures, 0 pictures missing.\n", made, StringComparison.Ordinal);
        using var zip = ZipFile.OpenRead(_command.At("out/YAF-1_2025-03-01_2025-03-31.zip"));
        using var content = new MemoryStream();
        await using (var entry = await Assert.Single(zip.Entries, entry => entry.FullName.StartsWith("photos/", StringComparison.Ordinal)).OpenAsync())
        {
            await entry.CopyToAsync(content);
        }

        Assert.Equal(picture, content.ToArray());
        Assert.Contains(", 1 pictures, ", verified.Output, StringComparison.Ordinal);
        Assert.Single(verified.ErrorLines, line => line.EndsWith("the audit trail does not know this hash", StringComparison.Ordinal));
    }

    [Fact]
    public async Task User_AddDisableReset_TakesPasswordsFromTheInputAndRefusesShortOnes()
    {
        const string Email = "r.yaffle@quernwath.example";
        string[] add = ["user", "add", Email, "--role", "supervisor", "--person", "RYA"];
        await ImportExamplesAsync();

        var tooShort = await _command.RunWithInputAsync("short", add);
        var none = await _command.RunAsync(add);
        var added = await _command.RunWithInputAsync("heron-over-the-weir", add);
        var twice = await _command.RunWithInputAsync("heron-over-the-weir", add);
        var stranger = await _command.RunWithInputAsync("heron-over-the-weir", "user", "add", "x@quernwath.example", "--role", "technician", "--person", "NOBODY");
        var ofNobody = await _command.RunWithInputAsync("heron-over-the-weir", "user", "add", "x@quernwath.example", "--role", "customer");

        Assert.Equal(1, tooShort.ExitCode);
        Assert.StartsWith("password: Passwords must be at least 12 characters.", tooShort.Errors, StringComparison.Ordinal);
        Assert.Equal(1, none.ExitCode);
        Assert.Equal((0, "r.yaffle@quernwath.example: account added.\n", ""), (added.ExitCode, added.Output, added.Errors));
        Assert.Equal(1, twice.ExitCode);
        Assert.All(twice.ErrorLines, line => Assert.StartsWith("email: ", line, StringComparison.Ordinal));
        Assert.Equal((1, "--person: there is no person 'NOBODY'.\n"), (stranger.ExitCode, stranger.Errors));
        Assert.Equal((1, "--customer: an account of a customer or of their staff needs the code of the customer.\n"), (ofNobody.ExitCode, ofNobody.Errors));
        Assert.Equal(1, await AskAsync("SELECT count(*) FROM AspNetUsers"));

        Assert.Equal(1, (await _command.RunAsync("user", "disable", "nobody@quernwath.example")).ExitCode);
        Assert.Equal("r.yaffle@quernwath.example: account disabled.\n", await _command.MustAsync("user", "disable", Email));
        Assert.Equal(1, await AskAsync("SELECT count(*) FROM AspNetUsers WHERE DisabledAt IS NOT NULL"));
        Assert.Equal(1, (await _command.RunWithInputAsync("short", "user", "reset", Email)).ExitCode);
        Assert.Equal(1, await AskAsync("SELECT count(*) FROM AspNetUsers WHERE DisabledAt IS NOT NULL"));
        Assert.Equal(0, (await _command.RunWithInputAsync("egret-under-the-bridge", "user", "reset", Email)).ExitCode);
        Assert.Equal(0, await AskAsync("SELECT count(*) FROM AspNetUsers WHERE DisabledAt IS NOT NULL"));
        Assert.Equal(3, await AskAsync("SELECT count(*) FROM AuditTrail WHERE What LIKE 'account-%'"));
    }

    [Fact]
    public async Task Restore_OfABackup_BringsTheRecordsBackAndKeepsWhatWasThere()
    {
        await ImportExamplesAsync();
        var before = await _command.MustAsync("export");
        var backup = (await _command.MustAsync("backup", "backups")).Trim();
        await _command.MustAsync("demo", "--systems", "1", "--years", "0.1", "--out", "more.json");
        await _command.MustAsync("import", "more.json", "--update");
        Assert.NotEqual(before, await _command.MustAsync("export"));

        var said = await _command.MustAsync("restore", backup);

        Assert.Matches("^Restored; what was there is kept as logbook\\.db\\.before-\\S+Z\\.$", said.Trim());
        Assert.Equal(before, await _command.MustAsync("export"));
        Assert.EndsWith(" 0 faults.\n", await _command.MustAsync("verify"), StringComparison.Ordinal);
        await File.WriteAllTextAsync(_command.At("damaged.db"), "no database");
        var damaged = await _command.RunAsync("restore", "damaged.db");
        Assert.Equal((1, 1), (damaged.ExitCode, damaged.ErrorLines.Length));
        Assert.Equal(before, await _command.MustAsync("export"));
    }

    [Fact]
    public async Task Simulate_ASetUp_TellsDosesAndTheHoldThatPassesTheAlarm()
    {
        await _command.MustAsync("demo", "--out", "firm.json");

        var several = await _command.RunAsync("simulate", "firm.json");
        var text = await _command.MustAsync("simulate", "firm.json", "--site", "TOL-1");
        var json = JsonDocument.Parse(await _command.MustAsync("simulate", "firm.json", "--site", "YAF-1", "--format", "json")).RootElement;

        Assert.Equal((1, "systems: 12 systems fit; name one by --site and --system.\n"), (several.ExitCode, several.Errors));
        Assert.Contains("(high alarm 1813 uS/cm: passed).", text, StringComparison.Ordinal);
        Assert.Contains("Clashes: none.", text, StringComparison.Ordinal);
        Assert.Equal((8, 672), (json.GetProperty("doses").GetArrayLength(), json.GetProperty("hours").GetArrayLength()));
        Assert.Empty(Directory.GetFiles(_command.Folder, "*.db"));
    }

    [Fact]
    public async Task AssessReplay_AsJson_ScoresTheFirmThatDemoWritesWithItsAnswers()
    {
        await _command.MustAsync("demo", "--seed", "3", "--out", "firm.json");
        var score = JsonDocument.Parse(await _command.MustAsync("assess", "--replay", "--seed", "3", "--format", "json")).RootElement;
        var answers = JsonDocument.Parse(await File.ReadAllTextAsync(_command.At("firm.answers.json"))).RootElement;

        Assert.Equal((3, 3), (score.GetProperty("seed").GetInt32(), answers.GetProperty("seed").GetInt32()));
        var asked = answers.GetProperty("answers").EnumerateArray().Where(a => a.GetProperty("kinds").GetArrayLength() > 0)
            .Select(a => (a.GetProperty("story").GetString(), a.GetProperty("latest").GetString()));
        Assert.Equal(asked, score.GetProperty("lines").EnumerateArray().Select(l => (l.GetProperty("story").GetString(), l.GetProperty("latest").GetString())));
        Assert.Contains(score.GetProperty("lines").EnumerateArray(), l => l.GetProperty("isInTime").GetBoolean());
        Assert.Empty(Directory.GetFiles(_command.Folder, "*.db"));
    }

    [Fact]
    public async Task Demo_WithOut_WritesTheSameBytesEachTimeAndTouchesNoDatabase()
    {
        await _command.MustAsync("demo", "--systems", "4", "--years", "0.5", "--out", "first.json");
        await _command.MustAsync("demo", "--systems", "4", "--years", "0.5", "--out", "second.json");
        await _command.MustAsync("demo", "--systems", "4", "--years", "0.5", "--seed", "7", "--out", "third.json");

        var first = await File.ReadAllTextAsync(_command.At("first.json"));
        Assert.Equal(first, await File.ReadAllTextAsync(_command.At("second.json")));
        Assert.NotEqual(first, await File.ReadAllTextAsync(_command.At("third.json")));
        var document = ExchangeReader.ReadAndCheck(first, Domain.History.FirmSetUp.Empty).Document!;
        Assert.Equal(4, document.Systems.Count);
        Assert.InRange(document.Visits.Count, 20, 200);
        Assert.Empty(Directory.GetFiles(_command.Folder, "*.db"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("inport x.json")]
    [InlineData("import")]
    [InlineData("import missing.json")]
    [InlineData("import --nonsense x.json")]
    [InlineData("findings --format xml")]
    [InlineData("findings --as-of 3/3/2025")]
    [InlineData("findings --language fr")]
    [InlineData("summary not-an-id --out out")]
    [InlineData("summary 01955b40-5e60-7c77-9a57-0a6f8a0d2a11")]
    [InlineData("user add x@quernwath.example --role king")]
    [InlineData("demo --systems 0")]
    [InlineData("assess --replay --seeds 0")]
    [InlineData("simulate missing.json")]
    [InlineData("assess --replay --format xml")]
    [InlineData("demo --systems 2 --years 0")]
    [InlineData("restore missing.db")]
    public async Task WrongUse_ExitsWithTwoAndTouchesNothing(string arguments)
    {
        var wrong = await _command.RunAsync(arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(2, wrong.ExitCode);
        Assert.Equal("", wrong.Output);
        Assert.InRange(wrong.ErrorLines.Length, 1, 8);
        Assert.DoesNotContain("   at ", wrong.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_command.Folder));
    }

    [Fact]
    public async Task Database_OutOfReachOrOfANewerVersion_IsSaidInOneLine()
    {
        await ImportExamplesAsync();
        await SqlAsync("INSERT INTO __EFMigrationsHistory (MigrationId, ProductVersion) VALUES ('29990101000000_Later', '99.0.0')");

        var newer = await _command.RunAsync("findings");
        var away = await _command.RunAsync("findings", "--database", "no/such/folder/logbook.db");

        Assert.Equal((1, 1), (newer.ExitCode, newer.ErrorLines.Length));
        Assert.Equal((1, 1), (away.ExitCode, away.ErrorLines.Length));
    }

    [Fact]
    public async Task Demo_Interrupted_SaysSoInOneLineAndKeepsNothing()
    {
        var stopped = await _command.InterruptAsync("logbook.db", "demo");

        // Refused by the command itself or cut off by its host when it does not end within two seconds.
        Assert.Equal(130, stopped.ExitCode);
        Assert.DoesNotContain("   at ", stopped.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", stopped.Errors, StringComparison.Ordinal);
        Assert.True(stopped.ErrorLines.Length <= 1, stopped.Errors);

        Assert.Equal(0, await AskAsync("SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = 'Visits'") is 0 ? 0 : await AskAsync("SELECT count(*) FROM Visits"));
    }

    public void Dispose() => _command.Dispose();

    private async Task ImportExamplesAsync()
    {
        await _command.MustAsync("import", LogbookCommand.Example("set-up"));
        await _command.MustAsync("import", LogbookCommand.Example("visit"));
    }

    // Past all guards, as an intruder would.
    private Task SqlAsync(string sql) => OpenAsync(async command =>
    {
        command.CommandText = sql;
        return await command.ExecuteNonQueryAsync();
    });

    private Task<long> AskAsync(string sql) => OpenAsync(async command =>
    {
        command.CommandText = sql;
        return (long)(await command.ExecuteScalarAsync())!;
    });

    private async Task<T> OpenAsync<T>(Func<SqliteCommand, Task<T>> act)
    {
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = _command.At("logbook.db"), Pooling = false }.ToString());
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        return await act(command);
    }
}
