using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Clocks that are wrong, that are set, that jump in spring and autumn, and a tablet that travels: no visit ends before it began.</summary>
[Trait("goal", "R9")]
public sealed class ClockTests
{
    private static readonly TimeSpan Slack = TimeSpan.FromMinutes(10);

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public async Task DeviceClock_ADayOff_ThenSetRight_DatesByTheServer_AndNeverBackwards(int days)
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, days > 0 ? "clock-ahead" : "clock-behind", host.Clock.GetUtcNow().AddDays(days));
        await tablet.RegisterAsync();
        await tablet.GoHomeAsync();
        await Expect(tablet.Page.Locator("#view .note").First).ToContainTextAsync("The clock of this tablet is");
        link.Cut();
        var began = host.Clock.GetUtcNow();
        await tablet.OpenVisitAsync(JobHost.Site);
        await NoteAsync(tablet, "the clock is set now");

        await tablet.SetClockAsync(host.Clock.GetUtcNow());
        await CloseAsync(tablet);
        var visit = await SendAsync(host, link, tablet);

        Assert.Equal("the clock is set now", FirstLine(visit));
        Assert.InRange(visit.Arrived.Utc, began.UtcDateTime - Slack, began.UtcDateTime + Slack);
        Assert.True(visit.Left is null || visit.Left.Value.Utc >= visit.Arrived.Utc, $"Left {visit.Left} before {visit.Arrived}.");
        if (days > 0)
        {
            // Set back by a day, it looks as if the visit had ended yesterday: the time since its beginning counts.
            Assert.InRange(visit.Left!.Value.Utc - visit.Arrived.Utc, TimeSpan.Zero, Slack);
        }
    }

    [Theory]
    [InlineData("spring", "2025-03-30T00:50:00Z", "2025-03-30T00:50", "+00:00", "2025-03-30T02:30", "+01:00")]
    [InlineData("autumn", "2025-10-26T00:40:00Z", "2025-10-26T01:40", "+01:00", "2025-10-26T01:20", "+00:00")]
    public async Task Visit_WhileTheClocksChange_OnATabletThatTravels_TakesTheTimeItTook(string name, string now, string arrived, string arrivedOffset, string left, string leftOffset)
    {
        var moment = DateTimeOffset.Parse(now, System.Globalization.CultureInfo.InvariantCulture);
        await using var host = await JobHost.StartAsync(moment.UtcDateTime);
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "clocks-change-" + name, host.Clock.GetUtcNow(), zone: null);
        await tablet.SetZoneAsync("Europe/London");
        await tablet.RegisterAsync();
        link.Cut();
        await tablet.SetClockAsync(moment);
        await tablet.OpenVisitAsync(JobHost.Site);
        await NoteAsync(tablet, "before the change");

        await tablet.SetZoneAsync("America/Sao_Paulo");
        await tablet.SetClockAsync(moment.AddMinutes(40));
        await CloseAsync(tablet);
        var visit = await SendAsync(host, link, tablet);

        Assert.Equal("before the change", FirstLine(visit));
        Assert.InRange(visit.Left!.Value.Utc - visit.Arrived.Utc, TimeSpan.FromMinutes(39), TimeSpan.FromMinutes(40) + Slack);
        Assert.StartsWith(arrived[..^1], visit.Arrived.Text, StringComparison.Ordinal);
        Assert.EndsWith(arrivedOffset, visit.Arrived.Text.Replace("Z", "+00:00", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.StartsWith(left[..^1], visit.Left.Value.Text, StringComparison.Ordinal);
        Assert.EndsWith(leftOffset, visit.Left.Value.Text.Replace("Z", "+00:00", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(-30)]
    public async Task Visit_ThatArrivedWhileTheClockWasWrong_IsNotForgottenWhenItIsSetRight(int days)
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, days > 0 ? "keeps-clock-ahead" : "keeps-clock-behind", host.Clock.GetUtcNow().AddDays(days));
        await tablet.RegisterAsync();
        link.Cut();
        await tablet.OpenVisitAsync(JobHost.Site);
        await NoteAsync(tablet, "kept for its days");
        await CloseAsync(tablet);
        await SendAsync(host, link, tablet);

        await tablet.SetClockAsync(host.Clock.GetUtcNow());
        Assert.Equal(1, await KeptAsync(tablet));
        await tablet.AskAsync<bool>("round.js", "async (round) => { await round.bring((await import('/capture/people.js')).at()); return true; }");

        Assert.Equal(1, await KeptAsync(tablet));
        Assert.True(await tablet.AskAsync<bool>("queue.js", "async (queue) => (await queue.visits())[0].receivedAt >= Date.now() - 600_000"));
    }

    // How many visits stand after another round of sending and forgetting.
    private static Task<int> KeptAsync(Tablet tablet) => tablet.AskAsync<int>("queue.js", "async (queue) => { await queue.send(); return (await queue.visits()).length; }");

    private static string FirstLine(Visit visit) => visit.Notes!.Split('\n')[0];

    private static async Task NoteAsync(Tablet tablet, string text)
    {
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync("visit/notes", text);
    }

    private static async Task CloseAsync(Tablet tablet)
    {
        await tablet.Page.StepAsync(EntryTexts.Close.En);
        await tablet.Page.EnterAsync("visit/leaveOpen", "called away");
        await tablet.Page.Locator("#close-visit").ClickAsync();
        await Expect(tablet.Page.Locator(".mark.device")).ToHaveCountAsync(1);
    }

    private static async Task<Visit> SendAsync(JobHost host, Link link, Tablet tablet)
    {
        link.Mend();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);
        var id = await tablet.AskAsync<string>("queue.js", "async (queue) => (await queue.visits())[0].id");
        return (await host.App.Services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, Guid.Parse(id)))!.Visit;
    }
}
