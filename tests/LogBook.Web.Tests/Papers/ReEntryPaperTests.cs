using System.Diagnostics;
using LogBook.Application.Demo;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Application.Settings;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Settings;
using LogBook.Web.Features.Settings;
using Severity = LogBook.Domain.Findings.Severity;

namespace LogBook.Web.Tests.Papers;

/// <summary>The sheet of UMB-1 in the invented firm, which loses its settings on 3 March 2026, read back from its PDF by poppler.</summary>
public sealed class ReEntryPaperTests
{
    private static readonly DateOnly DayBefore = new(2026, 3, 2);
    private static readonly DateOnly Today = new(2026, 3, 17);

    private static readonly Lazy<SystemHistory> Umb1 = new(() =>
    {
        var result = DemoFirm.Run(DemoFiles.Firm(), [DemoFiles.Sites().Single(site => site.Code == "UMB-1")], DemoFirm.DefaultSeed, Today.AddDays(1));
        return SystemHistory.From(new FirmSetUp(result.Document), "UMB-1", "CT-1", result.Document.Visits);
    });

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    [InlineData(Language.Portuguese)]
    [Trait("goal", "re-entry")]
    public async Task Of_Umb1_IsOnePageWithBoxesSignaturesAndFindingsBesideTheirLines(Language language)
    {
        var view = View(language);

        var page = Assert.Single(await PagesAsync(ReEntryPaper.Of(view, "Quernwath Cooling Water Services", language, Today.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc))));

        var words = Plain(page);
        Assert.All([SettingsTexts.Supervisor, SettingsTexts.EnteredBy, SettingsTexts.ReadBackBy], line => Assert.Contains(Plain(line.In(language)), words, StringComparison.Ordinal));
        Assert.All(
            view.Sheet.Lines.SelectMany(line => SettingWords.Value(line.Setting, language).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.All(view.Findings.Where(row => row.Finding.Severity != Severity.Watch), row => Assert.Contains(Plain(FindingTexts.NameOf(row.Key.Kind).In(language)), words, StringComparison.Ordinal));

        // A finding about a feed stands under the heading of that feed, after what stands on top.
        var placed = view.Placed.First(pair => pair.Group?.Output is not null);
        var heading = words.IndexOf(Plain(SettingWords.Heading(placed.Group!, language)), StringComparison.Ordinal);
        Assert.True(heading > 0);
        Assert.True(words.IndexOf(Plain(FindingTexts.NameOf(placed.Row.Key.Kind).In(language)), heading, StringComparison.Ordinal) > heading);
    }

    // The longest programme of the firm: four feeds, two of them by a probe. Three findings of the whole stand on top of it.
    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    [InlineData(Language.Portuguese)]
    [Trait("goal", "re-entry")]
    public async Task Of_TheLongestProgramme_IsStillOnePageWithEveryLine(Language language)
    {
        var result = DemoFirm.Run(DemoFiles.Firm(), [DemoFiles.Sites().Single(site => site.Code == "WEN-1")], DemoFirm.DefaultSeed, new DateOnly(2025, 9, 1));
        var history = SystemHistory.From(new FirmSetUp(result.Document), "WEN-1", "CT-1", result.Document.Visits);
        var today = new DateOnly(2025, 8, 31);
        var sheet = ReEntrySheet.Of(history, today, today);
        var rows = Enumerable.Range(0, 3).Select(place => new Finding
        {
            Kind = FindingKinds.All.Order(StringComparer.Ordinal).ElementAt(place), About = new About(), Severity = Severity.Plan, FirstSeen = today, LastSeen = today, State = FindingState.Open,
            Text = "The hardness of the make-up is 195 ± 20 mg/L where it is 15 mg/L as a rule (limit 10 mg/L above).", Evidence = [],
        }).Select(finding => (new AttentionRow(new FindingKey("WEN-1", "CT-1", finding.Kind, About.Key(finding.About), today), "Wendlequay", "Cooling tower 1", null, finding, 0), (ReEntryGroup?)null)).ToList();
        var view = new ReEntryView(new SystemHeading("WEN-1", "Wendlequay", "CT-1", "Cooling tower 1", "Europe/London"), today, sheet, [.. rows.Select(row => row.Item1)], null, [], 1) { Placed = rows };

        var page = Assert.Single(await PagesAsync(ReEntryPaper.Of(view, "Quernwath Cooling Water Services", language, today.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc))));

        Assert.True(sheet.Lines.Count() > 30);
        var words = Plain(page);
        Assert.All(
            sheet.Lines.SelectMany(line => SettingWords.Value(line.Setting, language).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.Contains(Plain(SettingsTexts.Supervisor.In(language)), words, StringComparison.Ordinal);
    }

    private static ReEntryView View(Language language)
    {
        var history = Umb1.Value;
        var sheet = ReEntrySheet.Of(history, DayBefore, Today);

        // What an assessment finds there, and a pump and a drum that want something, which is what a person must know beside their line.
        var output = sheet.Groups.First(group => group.Output is not null).Output!;
        var pump = history.System.Pumps.First(one => one.Output == output);
        Finding Made(string kind, About about, string text) => new() { Kind = kind, About = about, Severity = Severity.Plan, FirstSeen = Today.AddDays(-10), LastSeen = Today, State = FindingState.Open, Text = text, Evidence = [] };
        List<Finding> findings =
        [
            .. Assessment.Of(history, Today.ToDateTime(new TimeOnly(18, 0), DateTimeKind.Utc)).Findings.Select(finding => finding.In(language)).Where(finding => finding.State == FindingState.Open),
            Made(FindingKinds.PumpOutput, new About { Pump = pump.Code, Drum = pump.Drum }, "The pump gives 20 % less than at first."),
            Made(FindingKinds.RunsOut, new About { Drum = pump.Drum }, "Empty in about 9 days."),
        ];
        List<AttentionRow> rows =
        [
            .. findings.OrderBy(finding => finding.Severity).Select(finding => new AttentionRow(new FindingKey("UMB-1", "CT-1", finding.Kind, About.Key(finding.About), finding.FirstSeen), "Umberscombe", "Cooling tower 1", null, finding, 10)),
        ];
        return new ReEntryView(new SystemHeading("UMB-1", "Umberscombe", "CT-1", "Cooling tower 1", "Europe/London"), Today, sheet, rows, null, [], 1)
        {
            Placed = [.. rows.Select(row => (row, SettingSubjects.GroupOf(sheet, history.System, row.Finding.About)))],
        };
    }

    // A line of the page or of a cell may end anywhere between words.
    private static string Plain(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    private static async Task<string[]> PagesAsync(byte[] pdf)
    {
        var path = Path.Combine(Path.GetTempPath(), Guid.NewGuid().ToString("N") + ".pdf");
        await File.WriteAllBytesAsync(path, pdf);
        try
        {
            var start = new ProcessStartInfo("pdftotext") { RedirectStandardOutput = true };
            foreach (var argument in new[] { "-layout", "-enc", "UTF-8", path, "-" })
            {
                start.ArgumentList.Add(argument);
            }

            using var process = Process.Start(start) ?? throw new InvalidOperationException("pdftotext did not start.");
            var text = await process.StandardOutput.ReadToEndAsync();
            await process.WaitForExitAsync();
            Assert.Equal(0, process.ExitCode);
            return text.Split('\f')[..^1];
        }
        finally
        {
            File.Delete(path);
        }
    }
}
