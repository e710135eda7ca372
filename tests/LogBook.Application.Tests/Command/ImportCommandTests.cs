using System.Text.Json;
using Json.Schema;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;

namespace LogBook.Application.Tests.Command;

public sealed class ImportCommandTests : IDisposable
{
    private readonly LogbookCommand _command = new();

    [Fact]
    public async Task Import_TheExamplesOneAfterTheOther_AreTakenInAndFoundAgain()
    {
        Assert.Contains(" 0 visits written", await _command.MustAsync("import", LogbookCommand.Example("set-up")), StringComparison.Ordinal);
        Assert.StartsWith("0 set-up records, 1 visits written, 0 visits known before.", await _command.MustAsync("import", LogbookCommand.Example("visit")), StringComparison.Ordinal);
        Assert.StartsWith("0 set-up records, 0 visits written, 1 visits known before.", await _command.MustAsync("import", LogbookCommand.Example("visit")), StringComparison.Ordinal);

        // Findings in an import are checked for form and otherwise ignored.
        Assert.StartsWith("0 set-up records, 0 visits written", await _command.MustAsync("import", LogbookCommand.Example("finding")), StringComparison.Ordinal);

        var json = await _command.MustAsync("findings", "--format", "json");
        using var document = JsonDocument.Parse(json);
        Assert.True(JsonSchema.FromText(ExchangeSchema.Json()).Evaluate(document.RootElement).IsValid);
        var findings = ExchangeReader.Read(json).Document!.Findings;
        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.Contains(finding.Kind, FindingKinds.All));
        Assert.Contains(findings, finding => finding.Kind == FindingKinds.ProbeReadsOff);
        Assert.Contains($"{findings.Count} findings, ", await _command.MustAsync("findings"), StringComparison.Ordinal);
        Assert.Equal("1 systems assessed.\n", await _command.MustAsync("assess", "--all"));
        Assert.EndsWith(" 0 faults.\n", await _command.MustAsync("verify"), StringComparison.Ordinal);

        var export = await _command.MustAsync("export");
        await File.WriteAllTextAsync(_command.At("export.json"), export);
        await _command.MustAsync("import", "export.json", "--database", "second.db");
        Assert.Equal(export, await _command.MustAsync("export", "--database", "second.db"));
    }

    [Fact]
    public async Task Import_TwentyErrors_SaysEachInOneLineAndChangesNothing()
    {
        await _command.MustAsync("demo", "--systems", "1", "--years", "0.1");
        var before = await _command.MustAsync("export");

        var refused = await _command.RunAsync("import", LogbookCommand.Example("twenty-errors"), "--database", "empty.db");
        var refusedHere = await _command.RunAsync("import", LogbookCommand.Example("twenty-errors"));

        Assert.Equal(1, refused.ExitCode);
        Assert.Equal("", refused.Output);
        Assert.Equal(20, refused.ErrorLines.Length);
        Assert.All(refused.ErrorLines, line => Assert.Matches("^[a-z][A-Za-z0-9.\\[\\]]*: .+$", line));
        Assert.Contains(refused.ErrorLines, line => line.StartsWith("sites[0].timeZone: ", StringComparison.Ordinal));
        Assert.Equal(1, refusedHere.ExitCode);
        Assert.Equal(before, await _command.MustAsync("export"));
    }

    [Fact]
    public async Task Import_Partial_WritesTheGoodAndListsTheRefused()
    {
        await _command.MustAsync("import", LogbookCommand.Example("set-up"));
        var visit = ExchangeReader.Read(await File.ReadAllTextAsync(LogbookCommand.Example("visit"))).Document!;
        var two = visit with { Visits = [visit.Visits[0] with { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2aff"), Site = "NOWHERE", Photos = [] }, visit.Visits[0]] };
        await File.WriteAllTextAsync(_command.At("two.json"), JsonSerializer.Serialize(two, ExchangeJson.Default.ExchangeDocument));

        var whole = await _command.RunAsync("import", "two.json");
        var partial = await _command.RunAsync("import", "two.json", "--partial");

        Assert.Equal((1, ""), (whole.ExitCode, whole.Output));
        Assert.Equal(1, partial.ExitCode);
        Assert.StartsWith("0 set-up records, 1 visits written", partial.Output, StringComparison.Ordinal);
        Assert.All(partial.ErrorLines, line => Assert.StartsWith("visits[0].", line, StringComparison.Ordinal));
        Assert.NotEmpty(partial.ErrorLines);
    }

    [Fact]
    public async Task Import_OtherSetUpUnderAKnownCode_NeedsUpdate()
    {
        await _command.MustAsync("import", LogbookCommand.Example("set-up"));
        var setUp = ExchangeReader.Read(await File.ReadAllTextAsync(LogbookCommand.Example("set-up"))).Document!;
        var changed = setUp with { Sites = [.. setUp.Sites.Select(site => site with { VisitEveryDays = 14 })] };
        await File.WriteAllTextAsync(_command.At("changed.json"), JsonSerializer.Serialize(changed, ExchangeJson.Default.ExchangeDocument));

        var refused = await _command.RunAsync("import", "changed.json");

        Assert.Equal(1, refused.ExitCode);
        Assert.StartsWith("sites[0]", Assert.Single(refused.ErrorLines), StringComparison.Ordinal);
        Assert.StartsWith("1 set-up records, 0 visits written", await _command.MustAsync("import", "changed.json", "--update"), StringComparison.Ordinal);
        Assert.Contains("\"visitEveryDays\":14", await _command.MustAsync("export"), StringComparison.Ordinal);
    }

    public void Dispose() => _command.Dispose();
}
