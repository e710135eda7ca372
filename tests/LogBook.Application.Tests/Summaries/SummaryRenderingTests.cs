using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using LogBook.Application.Summaries;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;

namespace LogBook.Application.Tests.Summaries;

public sealed partial class SummaryRenderingTests
{
    // What concerns the firm's own instruments, records and mail.
    private static readonly string[] OwnMatters = ["second-look", "value-suspect", "summary-undelivered", "not-measured", "instrument-shift", "lot-shift"];

    [Theory]
    [InlineData(Language.English, "en")]
    [InlineData(Language.Spanish, "es")]
    [InlineData(Language.Portuguese, "pt")]
    [Trait("goal", "U6")]
    public async Task Render_RichVisit_IsTheGoldenFile(Language language, string code)
    {
        var summary = SummaryBuilder.Build(await RichVisit.SourceAsync(language), language);

        GoldenFile.Equal($"rich-visit.{code}.html", SummaryHtml.Render(summary));
        GoldenFile.Equal($"rich-visit.{code}.txt", SummaryPlainText.Render(summary));
    }

    [Theory]
    [InlineData(Language.English, "en")]
    [InlineData(Language.Spanish, "es")]
    [InlineData(Language.Portuguese, "pt")]
    [Trait("goal", "U7")]
    public async Task Render_Html_NeedsNothingFromElsewhereAndSaysNothingThatThePlainPartDoesNot(Language language, string code)
    {
        var summary = SummaryBuilder.Build(await RichVisit.SourceAsync(language), language);

        var html = SummaryHtml.Render(summary);
        var plain = Squeezed(SummaryPlainText.Render(summary));

        Assert.Contains($"<html lang=\"{code}\">", html, StringComparison.Ordinal);
        Assert.All(["http:", "https:", "src=", "href=", "url(", "@import", "<link", "<img", "<script"], remote => Assert.DoesNotContain(remote, html, StringComparison.OrdinalIgnoreCase));
        Assert.InRange(Encoding.UTF8.GetByteCount(html), 2_000, 100 * 1024);
        var values = ValuesOf(html);
        Assert.InRange(values.Count, 60, 200);
        Assert.All(values, value => Assert.Contains(value, plain, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Render_OtherCultureOfTheMachine_IsTheSame()
    {
        var source = await RichVisit.SourceAsync(Language.English);
        var expected = SummaryPlainText.Render(SummaryBuilder.Build(source, Language.English));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Equal(expected, SummaryPlainText.Render(SummaryBuilder.Build(source, Language.English)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task Build_FindingOfEachKind_TellsTheCustomerAllButTheFirmsOwnMatters()
    {
        var source = await RichVisit.SourceAsync(Language.English);

        foreach (var kind in FindingKinds.All)
        {
            var summary = SummaryBuilder.Build(source with { Findings = [RichVisit.FindingOf(kind, Severity.Act, "told")] }, Language.English);

            Assert.True(summary.Systems[0].Found.Count == (OwnMatters.Contains(kind) ? 0 : 1), kind);
        }

        Assert.Subset(FindingKinds.All.ToHashSet(), OwnMatters.ToHashSet());
    }

    [Fact]
    public async Task Build_FindingThatIsNotOpenOrNotYetKnown_IsNotTold()
    {
        var source = await RichVisit.SourceAsync(Language.English);
        var open = RichVisit.FindingOf(FindingKinds.WaterLoss, Severity.Plan, "told");
        int Told(Finding finding) => SummaryBuilder.Build(source with { Findings = [finding] }, Language.English).Systems[0].Found.Count;

        Assert.Equal(1, Told(open));
        Assert.Equal(1, Told(open with { State = FindingState.Closed, ClosedOn = new DateOnly(2025, 3, 20) }));
        Assert.Equal(0, Told(open with { State = FindingState.Closed, ClosedOn = new DateOnly(2025, 3, 4) }));
        Assert.Equal(0, Told(open with { State = FindingState.Withdrawn }));
        Assert.Equal(0, Told(open with { FirstSeen = new DateOnly(2025, 3, 5) }));
        Assert.Equal(0, Told(open with { System = "CT-2" }));
        Assert.Equal(0, Told(open with { Severity = Severity.Watch }));
    }

    private static string Squeezed(string text) => White().Replace(text, " ").Trim();

    // The words between the tags of the body, without the headings of columns: those name no value.
    private static List<string> ValuesOf(string html) =>
    [
        .. Between().Matches(Heading().Replace(html[html.IndexOf("<body>", StringComparison.Ordinal)..], ""))
            .Select(match => Squeezed(WebUtility.HtmlDecode(match.Groups[1].Value)).TrimStart(':', '–', ' ')).Where(value => value.Length > 0),
    ];

    [GeneratedRegex(@"\s+")]
    private static partial Regex White();

    [GeneratedRegex("<th [^>]*>[^<]*</th>")]
    private static partial Regex Heading();

    [GeneratedRegex(">([^<]+)<")]
    private static partial Regex Between();
}
