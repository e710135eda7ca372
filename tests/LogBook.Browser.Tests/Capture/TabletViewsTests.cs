using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Every view of the tablet, light and dark: axe finds nothing and leaves nothing undecided, thumbs hit, and no screen is too narrow.</summary>
public sealed class TabletViewsTests
{
    private const string Notes = "visit/notes";

    private static readonly Text[] Steps =
    [
        EntryTexts.Arrive, EntryTexts.Controller, EntryTexts.Reference, EntryTexts.Water, EntryTexts.Stock, EntryTexts.Tower, EntryTexts.Samples, EntryTexts.Adjust, EntryTexts.Close,
    ];

    [Fact]
    [Trait("goal", "U3")]
    public async Task Form_EveryStep_Sheet_AndStop()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "views-form");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        var found = new List<string>();
        await tablet.Page.StepAsync(EntryTexts.Water.En);
        await tablet.Page.EnterAsync(TypedVisit.Result(SamplePoints.Tower, TestCodes.Ph), "9.3");
        foreach (var step in Steps)
        {
            await StepAsync(tablet, step);
            await TabletLook.InBothSchemesAsync(tablet, step.En, found);
        }

        // What is open is told once closing was tried.
        await tablet.Page.Locator("#close-visit").ClickAsync();
        await Expect(tablet.Page.GetByText(EntryTexts.CloseFirst.En)).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "close tried", found);
        await tablet.Page.Locator("#show-sheet").ClickAsync();
        await Expect(tablet.Page.Locator(".lb-paper")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "sheet", found);
        await tablet.Page.Locator("#sheet-back").ClickAsync();
        await Expect(tablet.Page.Locator("#close-visit")).ToBeVisibleAsync();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = EntryTexts.CannotWork.En }).ClickAsync();
        await Expect(tablet.Page.Locator(".lb-stopped")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "stopped", found);

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found.Distinct()));
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task Shell_EveryView()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "views-shell");
        await tablet.RegisterAsync();
        var found = new List<string>();
        await ViewAsync(tablet, "register", found);
        await ViewAsync(tablet, "pin", found);

        // A visit that waits, one that stands twice, and one that was begun. The fields of a new PIN must be gone: they look like the question for it.
        await tablet.GoHomeAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();
        var twice = await EnqueueTwiceAsync(host, tablet);
        await tablet.Page.GotoAsync($"/capture/#/closed/{twice:D}");
        await Expect(tablet.Page.Locator(".closed-visit")).ToContainTextAsync("differs");
        await TabletLook.InBothSchemesAsync(tablet, "side by side", found);
        var waits = VisitDocument.WithIds(SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00"));
        await EnqueueAsync(tablet, waits);
        await tablet.Page.GotoAsync($"/capture/#/closed/{waits.Id:D}");
        await Expect(tablet.Page.Locator(".closed-visit")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "closed", found);
        await tablet.GoHomeAsync();
        await tablet.Page.RunAndWaitForDownloadAsync(() => tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Rescue file", Exact = true }).ClickAsync());
        await Expect(tablet.Page.Locator("#notices .note")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "rescue", found);

        await tablet.AskAsync<object?>("store.js", "async (store) => { const [row] = (await store.all('drafts')).filter((one) => !one.closed); await store.change('drafts', row.id, (one) => ({ ...one, at: one.at - 3 * 86400000 })); }");
        await tablet.Page.GotoAsync("/capture/#/visit/" + JobHost.Site);
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Go on with that visit" })).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "begun long ago", found);

        await ViewAsync(tablet, "who", found);
        await tablet.Page.FillAsync("#pin", "000000");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Open", Exact = true }).ClickAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "This is not the PIN." })).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "wrong PIN", found);
        await ForgottenAsync(host, tablet, found);

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found.Distinct()));
    }

    private static async Task ForgottenAsync(JobHost host, Tablet tablet, List<string> found)
    {
        await tablet.UntilAsync("async () => (await (await import('/capture/people.js')).person('RYA')).seconds?.some((one) => one.held)");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "I forgot the PIN" }).ClickAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Ask the supervisor" })).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "forgotten", found);
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Ask the supervisor" }).ClickAsync();
        await Expect(tablet.Page.GetByText("this page goes on by itself")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "forgotten, asked", found);
        var keys = host.App.Services.GetRequiredService<TabletKeyStore>();
        var supervisor = new Viewer(null, JobHost.Supervisor, "IWE", PersonRole.Supervisor, null, Language.English);
        Assert.True(await keys.ReleaseAsync(supervisor, Assert.Single(await keys.AskedAsync(supervisor)).Id));
        await Expect(tablet.Page.Locator("#pin-again")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, "forgotten, released", found);
    }

    private static async Task ViewAsync(Tablet tablet, string view, List<string> found)
    {
        await tablet.Page.GotoAsync("/capture/#/" + view);
        await Expect(tablet.Page.Locator("#view h1")).ToBeVisibleAsync();
        await TabletLook.InBothSchemesAsync(tablet, view, found);
    }

    // The step and all of its parts.
    private static async Task StepAsync(Tablet tablet, Text step)
    {
        await tablet.Page.StepAsync(step.En);
        await Expect(tablet.Page.Locator(step == EntryTexts.Close ? "#close-visit" : ".lb-next")).ToBeVisibleAsync();
    }

    private static async Task<Guid> EnqueueTwiceAsync(JobHost host, Tablet tablet)
    {
        var standing = SampleFirm.Visit(JobHost.Site) with { Notes = "typed at the office", EnteredAt = null };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, standing, IntakeSource.Page));
        await EnqueueAsync(tablet, VisitDocument.WithIds(standing with { Notes = "typed at the tower" }));
        await tablet.AskAsync<object?>("queue.js", "(queue) => queue.send()");
        await Expect(tablet.Page.Locator("#standing")).ToHaveTextAsync("1 to be settled");
        return standing.Id;
    }

    private static Task EnqueueAsync(Tablet tablet, Visit visit) => tablet.AskAsync<object?>(
        "queue.js",
        "(queue, [id, site, document]) => queue.enqueue({ id, version: 1, site, siteName: 'Pludworth Mouldings', person: 'RYA', document, photos: [] })",
        new object[] { visit.Id.ToString("D"), visit.Site, VisitDocument.Canonical(visit) });
}
