using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.Reviews;
using LogBook.Web.Hosting;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using Xunit.Abstractions;

namespace LogBook.Web.Tests.Stories;

/// <summary>
/// A supervisor opens Needs attention on the last acceptable day of each story of the demo and follows links only: to the finding with the
/// causes it suggests, and from there to the record in which the cause shows.
/// </summary>
public sealed class StoriesWalkedTests(ITestOutputHelper output)
{
    private const int MostTaps = 3;

    // The record in which each story's cause shows, as a part of its address; the finding's own visit shows what was invented or read off.
    private static readonly Dictionary<string, string[]> Records = new(StringComparer.Ordinal)
    {
        ["ST1"] = ["/probe"],
        ["ST2"] = ["/meters"],
        ["ST3"] = ["/pumps", "/shelf"],
        ["ST4"] = ["/re-entry", "/settings"],
        ["ST5"] = ["/meters"],
        ["ST6"] = ["/visits", "/meters"],
        ["ST7"] = ["/pumps"],
        ["ST8"] = ["/shelf/make-up"],
        ["ST9"] = ["/settings", "/dose-plan"],
        ["ST10"] = ["/clocks"],
        ["ST11"] = ["/pumps", "/visits/"],
        ["ST13"] = ["/setup/lots"],
        ["ST14"] = ["/setup/instruments"],
        ["hold"] = ["/dose-plan"],
        ["ST15"] = ["/probe", "/systems/"],
    };

    [Fact]
    [Trait("goal", "stories-walked")]
    public async Task EveryStory_FromNeedsAttentionToItsCause_InAtMostThreeTaps()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(DemoImport.FirstMoment));
        await using var app = new LogBookWebApp(isDemo: true, clock: clock);
        _ = app.Server;
        var answers = DemoFirm.Create().Answers.Lines.Where(line => line.Kinds.Count > 0).ToList();
        var supervisor = DemoAccounts.All.Single(account => account.Role == Domain.Sites.PersonRole.Supervisor);
        var problems = new List<string>();
        var walked = 0;
        foreach (var story in answers.OrderBy(line => line.Latest))
        {
            walked++;
            string? problem = null;

            // What was put right at once is over on the last acceptable day: then the weeks before it, back to the onset.
            for (var at = story.Latest; at >= story.Onset && at > story.Latest.AddDays(-35); at = at.AddDays(-7))
            {
                clock.AdjustTime(new DateTimeOffset(at.ToDateTime(new TimeOnly(23, 0)), TimeSpan.Zero));
                await app.Services.GetRequiredService<AssessmentKeeper>().AssessAllAsync(Viewer.System("test"));
                using var client = await app.SignedInAsync(supervisor.Email, supervisor.Password);
                problem = await WalkAsync(client, story);
                if (problem is null)
                {
                    break;
                }
            }

            if (problem is not null)
            {
                problems.Add($"{story.Story} at {story.Site ?? "the firm"} by {story.Latest:yyyy-MM-dd}: {problem}");
            }
        }

        Assert.Equal(Records.Keys.Order(StringComparer.Ordinal), answers.Select(line => line.Story).Distinct().Order(StringComparer.Ordinal));
        Assert.True(walked >= Records.Count);
        Assert.True(problems.Count == 0, string.Join(Environment.NewLine, problems));
    }

    // What went wrong on the way, or null.
    private async Task<string?> WalkAsync(HttpClient client, DemoAnswer story)
    {
        var taps = 1;
        var attention = await OpenAsync(client, "/attention");
        var finding = LinkOf(attention, story);
        if (finding is null && attention.QuerySelector("#second-look")?.GetAttribute("href") is { } apart)
        {
            taps++;
            finding = LinkOf(await OpenAsync(client, apart), story);
        }

        if (finding is null)
        {
            return "not on the first page of Needs attention, which shows " + string.Join(", ", attention.QuerySelectorAll("li.finding .finding-title").Select(title => title.TextContent.Trim()).Where(text => story.Site is null || text.Contains(story.Site, StringComparison.Ordinal)));
        }

        var page = await OpenAsync(client, finding);
        if (page.QuerySelector(".finding-lead") is null || (page.QuerySelectorAll("ol.numbered li").Length == 0 && page.QuerySelectorAll("tbody tr").Length == 0))
        {
            return $"{finding} says neither a cause nor its evidence";
        }

        taps++;
        var record = page.QuerySelectorAll("ul.links a").Select(link => link.GetAttribute("href")!)
            .FirstOrDefault(address => Records[story.Story].Any(part => address.Contains(part, StringComparison.Ordinal)));
        if (record is null)
        {
            return $"{finding} leads to {string.Join(", ", page.QuerySelectorAll("ul.links a").Select(link => link.GetAttribute("href")))}, not to {string.Join(" or ", Records[story.Story])}";
        }

        var shown = await OpenAsync(client, record);
        output.WriteLine($"{story.Story}: {taps} taps, {WebUtility.UrlDecode(finding)} -> {record}");
        return taps > MostTaps ? $"{taps} taps"
            : shown.QuerySelector("main h1") is null || shown.QuerySelectorAll("main table tbody tr, main dl dd, main li, main form input").Length == 0 ? $"{record} shows nothing"
            : null;
    }

    private static string? LinkOf(IDocument list, DemoAnswer story) => list.QuerySelectorAll("li.finding")
        .Where(item => item.ClassList.Contains("finding-act") || item.ClassList.Contains("finding-plan"))
        .Select(item => item.QuerySelector(".finding-title a")?.GetAttribute("href"))
        .OfType<string>()
        .FirstOrDefault(address => FindingKey.Parse(address[(address.IndexOf('?', StringComparison.Ordinal) + 1)..]) is { } key
            && story.Kinds.Contains(key.Kind)
            && (story.Site is null || key.Site is null || key.Site.Equals(story.Site, StringComparison.OrdinalIgnoreCase)));

    private static async Task<IDocument> OpenAsync(HttpClient client, string address)
    {
        using var answer = await client.GetAsync(address);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}.");
        return await new HtmlParser().ParseDocumentAsync(await answer.Content.ReadAsStreamAsync());
    }
}
