using LogBook.Application.Demo;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using Xunit.Abstractions;

namespace LogBook.Application.Tests.Command;

[Collection("alone")]
public sealed class LargeImportCommandTests(ITestOutputHelper output)
{
    // What it takes is told, not asserted: how long one waits depends on what else the machine does.
    [Fact]
    public async Task Import_FortySystemsOverEighteenMonths_ThenFindings()
    {
        using var command = new LogbookCommand();
        var document = DemoScale.Create(40, 1.5);
        await File.WriteAllTextAsync(command.At("firm.json"), ExchangeWriter.Write(document));

        var import = await command.RunAsync("import", "firm.json");
        var list = await command.RunAsync("findings", "--format", "json");

        output.WriteLine($"{document.Systems.Count} systems, {document.Visits.Count} visits, {document.Visits.Sum(v => v.Systems.Sum(s => s.Readings.Count))} readings");
        output.WriteLine($"import: {import.WallSeconds:0.0} s, {import.ProcessorSeconds:0.0} s of processors");
        output.WriteLine($"findings: {list.WallSeconds:0.0} s, {list.ProcessorSeconds:0.0} s of processors");
        Assert.Equal((0, ""), (import.ExitCode, import.Errors));
        Assert.Contains($" {document.Visits.Count} visits written, 0 visits known before.", import.Output, StringComparison.Ordinal);
        Assert.Equal((0, ""), (list.ExitCode, list.Errors));
        var findings = ExchangeReader.Read(list.Output).Document!.Findings;
        output.WriteLine($"{findings.Count} findings of {findings.Select(f => f.Kind).Distinct().Count()} kinds");
        Assert.Equal(40, document.Systems.Count);
        Assert.InRange(document.Visits.Count, 1200, 2500);
        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.Contains(finding.Kind, FindingKinds.All));
    }
}
