using System.Net;
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
/// A supervisor opens Needs attention on the last acceptable day of each story of the demo and follows links that are on the page only: to
/// the finding, and from there to the very line of the record in which the cause stands (<see cref="StoryCauses"/>).
/// </summary>
public sealed class StoriesWalkedTests(ITestOutputHelper output)
{
    private const int MostTaps = 3;
    private const string NotThere = "not on the first page of Needs attention";

    [Fact]
    [Trait("goal", "stories-walked")]
    public async Task EveryStory_FromNeedsAttentionToItsCause_InAtMostThreeTaps()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(DemoImport.FirstMoment));
        await using var app = new LogBookWebApp(isDemo: true, clock: clock);
        _ = app.Server;
        var demo = DemoFirm.Create();
        var causes = new StoryCauses(demo);
        var answers = demo.Answers.Lines.Where(line => line.Kinds.Count > 0).ToList();
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
                problem = await WalkAsync(client, causes, story);
                if (problem?.StartsWith(NotThere, StringComparison.Ordinal) != true)
                {
                    break;
                }
            }

            if (problem is not null)
            {
                problems.Add($"{story.Story} at {story.Site ?? "the firm"} by {story.Latest:yyyy-MM-dd}: {problem}");
            }
        }

        // All fault stories of the firm (ST12 is the quiet one) and the hold that was copied.
        Assert.Equal(15, answers.Select(line => line.Story).Distinct().Count());
        Assert.Equal(answers.Count, walked);
        Assert.True(problems.Count == 0, string.Join(Environment.NewLine, problems));
    }

    // What went wrong on the way, or null.
    private async Task<string?> WalkAsync(HttpClient client, StoryCauses causes, DemoAnswer story)
    {
        var taps = 1;
        var attention = await OpenAsync(client, "/attention");
        var finding = LinkOf(attention, story);
        if (finding is null && attention.Main.QuerySelector("#second-look")?.GetAttribute("href") is { } apart)
        {
            taps++;
            finding = LinkOf(await OpenAsync(client, apart), story);
        }

        if (finding is null)
        {
            return NotThere + ", which shows " + string.Join(", ", attention.Main.QuerySelectorAll("li.finding .finding-title").Select(title => title.TextContent.Trim()).Where(text => story.Site is null || text.Contains(story.Site, StringComparison.Ordinal)));
        }

        var page = await OpenAsync(client, finding);
        if (page.Main.QuerySelector(".finding-lead") is null || (page.Main.QuerySelectorAll("ol.numbered li").Length == 0 && page.Main.QuerySelectorAll("tbody tr").Length == 0))
        {
            return $"{finding} says neither a cause nor its evidence";
        }

        if (causes.RestsOn(page, story) is { } missing)
        {
            return $"{finding} {missing}";
        }

        // The links of the finding in their order; the navigation around it leads everywhere and proves nothing.
        taps++;
        var (record, fault) = causes.Of(story);
        var faults = new List<string>();
        foreach (var link in page.Links.Where(link => link.Contains(record, StringComparison.Ordinal) && !link.StartsWith("/attention", StringComparison.Ordinal)))
        {
            if (fault(await OpenAsync(client, link)) is not { } wrong)
            {
                output.WriteLine($"{story.Story}: {taps} taps, {WebUtility.UrlDecode(finding)} -> {link}");
                return taps > MostTaps ? $"{taps} taps" : null;
            }

            faults.Add($"{link}: {wrong}");
        }

        return faults.Count > 0 ? string.Join("; ", faults) : $"{finding} leads to {string.Join(", ", page.Links)}, not to {record}";
    }

    private static string? LinkOf(ShownPage list, DemoAnswer story) => list.Main.QuerySelectorAll("li.finding")
        .Where(item => item.ClassList.Contains("finding-act") || item.ClassList.Contains("finding-plan"))
        .Select(item => item.QuerySelector(".finding-title a")?.GetAttribute("href"))
        .OfType<string>()
        .FirstOrDefault(address => FindingKey.Parse(address[(address.IndexOf('?', StringComparison.Ordinal) + 1)..]) is { } key
            && story.Kinds.Contains(key.Kind)
            && (story.Site is null || key.Site is null || key.Site.Equals(story.Site, StringComparison.OrdinalIgnoreCase)));

    private static async Task<ShownPage> OpenAsync(HttpClient client, string address)
    {
        using var answer = await client.GetAsync(address);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}.");
        return new ShownPage(address, await new HtmlParser().ParseDocumentAsync(await answer.Content.ReadAsStreamAsync()));
    }
}
