using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A visit that the server does not take as it is: nothing of it is lost, and the person sees why.</summary>
public sealed class ComesBackTests
{
    [Fact]
    public async Task Refused_ComesBackToItsForm_WithWhatTheServerSaid()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "refused");
        await tablet.RegisterAsync();
        var draft = await BeginAsync(tablet);

        await EnqueueAsync(tablet, draft.ToVisit() with { Notes = "sent too early", Systems = [SampleFirm.Visit().Systems[0] with { System = "CT-9" }] });
        await tablet.GoHomeAsync();
        await tablet.AskAsync<object?>("queue.js", "(queue) => queue.send()");

        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "Came back: to be corrected" });
        await row.GetByRole(AriaRole.Link, new() { Name = "Go on" }).ClickAsync();
        await Expect(tablet.Page.Locator("#visit-problems")).ToContainTextAsync("CT-9");
        await Expect(tablet.Page.Field("visit/notes")).ToHaveValueAsync("new shift pattern");
        await tablet.PictureAsync("came-back");
    }

    [Fact]
    public async Task Conflict_IsShownSideBySide_AndStays()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "conflict");
        await tablet.RegisterAsync();
        var draft = await BeginAsync(tablet);
        var other = SampleFirm.Visit(JobHost.Site) with { Id = draft.Id, Notes = "typed at the office", EnteredAt = null };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, other, IntakeSource.Page));

        await EnqueueAsync(tablet, draft.ToVisit());
        await tablet.GoHomeAsync();
        await tablet.AskAsync<object?>("queue.js", "(queue) => queue.send()");

        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "Stands twice on the server" });
        await row.GetByRole(AriaRole.Link, new() { Name = "See both side by side" }).ClickAsync();
        var notes = tablet.Page.Locator(".closed-visit tr").Filter(new() { HasText = "typed at the office" });
        await Expect(notes).ToContainTextAsync("new shift pattern");
        await Expect(notes).ToContainTextAsync("differs");
        await tablet.PictureAsync("side-by-side");
        Assert.Equal("conflict", await tablet.AskAsync<string>("queue.js", "async (queue) => (await queue.visits())[0].state"));
    }

    private static async Task<VisitDraft> BeginAsync(Tablet tablet)
    {
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync("visit/notes", "new shift pattern");
        return VisitDraft.FromJson(await tablet.AskAsync<string>(
            "desk.js",
            """
            async (desk) => {
              for (;;) {
                const [row] = await desk.drafts();
                const json = row && await desk.draft(row.id);
                if (json && JSON.parse(json).fields["visit/notes"]?.text === "new shift pattern") return json;
                await new Promise(requestAnimationFrame);
              }
            }
            """));
    }

    private static Task EnqueueAsync(Tablet tablet, Visit visit) => tablet.AskAsync<object?>(
        "queue.js",
        "(queue, [id, site, document]) => queue.enqueue({ id, version: 1, site, siteName: 'Pludworth Mouldings', person: 'RYA', document, photos: [] })",
        new object[] { visit.Id.ToString("D"), visit.Site, VisitDocument.Canonical(VisitDocument.WithIds(visit)) });
}
