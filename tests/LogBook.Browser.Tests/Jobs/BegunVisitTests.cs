using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using LogBook.Web.Features.VisitForms;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>A visit that was begun on another day is no part of today's unless its person says so; one without an entry is none.</summary>
public sealed class BegunVisitTests
{
    private const string Form = "/visit/" + JobHost.Site;
    private const string Notes = "visit/notes";

    [Fact]
    public async Task Form_FindsAVisitOfAnotherDay_AsksNamingIt_AndKeepsItUntilItIsThrownAway()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("begun-visit");
        var drafts = host.App.Services.GetRequiredService<DraftStore>();
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);

        // Opened, looked at and left: nothing is kept.
        await page.GoAsync(Form);
        await page.StepAsync(EntryTexts.Water.En);
        await page.GoAsync("/sites");
        Assert.Empty(await drafts.ListAsync(host.TechnicianViewer));

        await page.GoAsync(Form);
        await page.EnterAsync(Notes, "noise in the fan");
        await KeptAsync(drafts, host, "noise in the fan");
        await page.GoAsync(Form);
        await Expect(page.Field(Notes)).ToHaveValueAsync("noise in the fan");
        await Expect(page.Locator("#begun")).ToHaveCountAsync(0);

        host.Clock.Start(new DateTime(2025, 4, 1, 7, 30, 0, DateTimeKind.Utc));
        await page.GoAsync(Form);
        await Expect(page.Locator("#begun")).ToContainTextAsync("noise in the fan");
        await Expect(page.Locator("#begun")).ToContainTextAsync("31 Mar 2025");
        await Expect(page.Locator(".lb-form")).ToHaveCountAsync(0);
        await browser.PictureAsync(page, "asks");

        await page.Locator("#begin-anew").ClickAsync();
        await Expect(page.Field(Notes)).ToHaveValueAsync("");
        await page.EnterAsync(Notes, "the day after");
        await KeptAsync(drafts, host, "the day after");
        Assert.Equal(2, (await drafts.ListAsync(host.TechnicianViewer)).Count);

        // The old one stands beside the new one, which goes on by itself.
        await page.GoAsync(Form);
        await Expect(page.Field(Notes)).ToHaveValueAsync("the day after");
        await browser.PictureAsync(page, "beside");
        await page.Locator("#begun li button").First.ClickAsync();
        await Expect(page.Field(Notes)).ToHaveValueAsync("noise in the fan");
        await Expect(page.Locator("#begun")).ToContainTextAsync("the day after");

        await page.GoAsync(Form);
        await page.Locator("#begun li button").Nth(1).ClickAsync();
        await Expect(page.Locator("#begun .confirm")).ToContainTextAsync(VisitTexts.ThrowAwayAsk.En);
        Assert.Equal(2, (await drafts.ListAsync(host.TechnicianViewer)).Count);
        await browser.PictureAsync(page, "confirm");
        await page.GetByRole(AriaRole.Button, new() { Name = VisitTexts.ThrowAwayYes.En, Exact = true }).ClickAsync();
        await Expect(page.Locator("#begun")).ToHaveCountAsync(0);
        await Expect(page.Field(Notes)).ToHaveValueAsync("the day after");
        Assert.Equal("the day after", VisitDraft.FromJson(Assert.Single(await drafts.ListAsync(host.TechnicianViewer)).Document).Text(Notes));
    }

    [Fact]
    public async Task Amendment_WhoseVersionWasReplaced_AsksBeforeItIsThrownAway()
    {
        const string Visit = "0198b000-0000-7000-8000-000000000003";
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("replaced-amendment");
        var services = host.App.Services;
        var drafts = services.GetRequiredService<DraftStore>();
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync($"/visits/{Visit}/amend");
        await page.EnterAsync(Notes, "read from the dial by hand");
        await KeptAsync(drafts, host, "read from the dial by hand");
        var stored = (await services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, Guid.Parse(Visit)))!.Visit;
        var newer = stored with { Version = 2, Amends = 1, AmendedBy = "RYA", AmendedAt = stored.Arrived, Reason = "typed at the office", Notes = "read by telephone" };
        Assert.IsType<IntakeOutcome.Stored>(await services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, newer, IntakeSource.Page));

        await page.GoAsync($"/visits/{Visit}/amend");
        await Expect(page.GetByText(VisitTexts.Outdated.En)).ToBeVisibleAsync();
        await Expect(page.Field(Notes)).ToHaveValueAsync("read from the dial by hand");

        // Asked, and answered with no: all stays.
        await page.Locator("#start-over").ClickAsync();
        await Expect(page.GetByText(VisitTexts.ThrowAwayAsk.En)).ToBeVisibleAsync();
        await browser.PictureAsync(page, "confirm");
        await page.GetByRole(AriaRole.Button, new() { Name = VisitTexts.Keep.En, Exact = true }).ClickAsync();
        await Expect(page.GetByText(VisitTexts.ThrowAwayAsk.En)).ToHaveCountAsync(0);
        await Expect(page.Field(Notes)).ToHaveValueAsync("read from the dial by hand");
        Assert.Single(await drafts.ListAsync(host.TechnicianViewer));

        await page.Locator("#start-over").ClickAsync();
        await page.Locator("#start-over-yes").ClickAsync();
        await Expect(page.Field(Notes)).ToHaveValueAsync("read by telephone");
        await Expect(page.GetByText(VisitTexts.Outdated.En)).ToHaveCountAsync(0);
        Assert.Empty(await drafts.ListAsync(host.TechnicianViewer));
    }

    // Looks again at intervals because a database calls nobody.
    private static async Task KeptAsync(DraftStore drafts, JobHost host, string notes)
    {
        using var within = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        while (!(await drafts.ListAsync(host.TechnicianViewer, within.Token)).Any(kept => VisitDraft.FromJson(kept.Document).Text(Notes) == notes))
        {
            await timer.WaitForNextTickAsync(within.Token);
        }
    }
}
