using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Closing;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A whole visit in flight mode: entered after a cold start without signal, sent once when the signal is back.</summary>
public sealed class OfflineVisitTests
{
    [Fact]
    [Trait("goal", "R4")]
    [Trait("goal", "R10")]
    public async Task Visit_EnteredWithoutSignal_ArrivesOnceWithTheWordsThatWereTyped()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "offline-visit");
        await tablet.RegisterAsync();
        await tablet.PictureAsync("round");

        link.Cut();
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();
        await Expect(tablet.Page.Locator(".stop").Filter(new() { HasText = JobHost.Site })).ToBeVisibleAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await TypedVisit.FillAsync(tablet.Page, tablet.PictureAsync);
        var draftId = (await tablet.AskAsync<string[]>("desk.js", "async (desk) => (await desk.drafts()).map((row) => row.id)")).Single();
        await TypedVisit.CloseAsync(tablet.Page, tablet.PictureAsync);
        await Expect(tablet.Page.Locator("#form")).ToBeHiddenAsync();

        // On the device and nowhere else, and the tablet says just that.
        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "On this device" });
        await Expect(row).ToContainTextAsync(JobHost.Site);
        await tablet.PictureAsync("waiting");

        // Its draft cannot be opened again, by whatever way back.
        await tablet.Page.GotoAsync($"/capture/#/visit/{JobHost.Site}/{draftId}/RYA");
        await Expect(tablet.Page.Locator(".closed-visit")).ToContainTextAsync("1232");
        await Expect(tablet.Page.Locator(".lb-form")).ToHaveCountAsync(0);
        await tablet.GoHomeAsync();
        var visits = host.App.Services.GetRequiredService<VisitReader>();
        Assert.Null(await visits.FindAsync(host.TechnicianViewer, Guid.Parse(draftId)));
        var sent = await tablet.AskAsync<string>("queue.js", "async (queue) => { const keys = await import('/capture/keys.js'); return keys.openForDevice((await queue.visits())[0].sealed); }");

        link.Mend();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);
        await Expect(tablet.Page.Locator("#standing")).ToContainTextAsync("All is sent");
        await tablet.PictureAsync("sent");
        var stored = await visits.FindAsync(host.TechnicianViewer, Guid.Parse(draftId));
        Assert.NotNull(stored);
        Assert.Equal(1, stored.Row.CurrentVersion);
        Assert.Equal(sent, VisitDocument.Canonical(stored.Visit));

        // The form on the server makes the same document of the same entries, byte for byte.
        var draft = VisitDraft.FromJson(await tablet.AskAsync<string>("desk.js", "(desk, id) => desk.draft(id)", draftId));
        Assert.Equal(sent, VisitDocument.Canonical(VisitDocument.WithIds(await FinishedHereAsync(host, draft))));

        Assert.DoesNotContain(tablet.Console, line => line.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase) || line.StartsWith("uncaught", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Amendment_EnteredWithoutSignal_BecomesTheNextVersion()
    {
        const string Visit = "0198b000-0000-7000-8000-000000000003";
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "amendment");
        await tablet.RegisterAsync();
        link.Cut();

        await tablet.Page.GotoAsync($"/capture/#/amend/{JobHost.Site}/{Visit}");
        await Expect(tablet.Page.Locator(".lb-form")).ToContainTextAsync(EntryTexts.Amendment.En);
        await tablet.Page.StepAsync(EntryTexts.Water.En);
        await tablet.Page.EnterAsync(TypedVisit.Result(SamplePoints.Tower, TestCodes.Iron), "0.5");
        await tablet.Page.StepAsync(EntryTexts.Close.En);
        await tablet.Page.EnterAsync("visit/amendReason", "result of the laboratory");
        await tablet.Page.Locator("#close-visit").ClickAsync();
        await Expect(tablet.Page.Locator(".mark.device")).ToHaveCountAsync(1);
        link.Mend();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);

        var stored = await host.App.Services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, Guid.Parse(Visit));
        Assert.Equal(2, stored!.Row.CurrentVersion);
        Assert.Equal("result of the laboratory", stored.Visit.Reason);
        Assert.Equal(0.5, stored.Visit.Systems[0].Readings.Single(reading => reading.Test == TestCodes.Iron).Value);
    }

    [Fact]
    public async Task Amendment_WhoseVersionWasReplaced_IsKeptAndNotOverwritten()
    {
        const string Visit = "0198b000-0000-7000-8000-000000000003";
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "replaced");
        await tablet.RegisterAsync();
        await tablet.Page.GotoAsync($"/capture/#/amend/{JobHost.Site}/{Visit}");
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync("visit/notes", "read from the dial by hand");
        await tablet.GoHomeAsync();
        var services = host.App.Services;
        var stored = (await services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, Guid.Parse(Visit)))!.Visit;
        var newer = stored with { Version = 2, Amends = 1, AmendedBy = "RYA", AmendedAt = stored.Arrived, Reason = "typed at the office" };
        Assert.IsType<IntakeOutcome.Stored>(await services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, newer, IntakeSource.Page));
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Bring the round" }).ClickAsync();
        await tablet.BroughtAsync(JobHost.Site, newer.Reason);

        await tablet.Page.GotoAsync($"/capture/#/amend/{JobHost.Site}/{Visit}");

        await Expect(tablet.Page.Locator("#form .problem")).ToContainTextAsync("another version of the visit has come");
        Assert.Contains("read from the dial by hand", await tablet.AskAsync<string>("desk.js", "(desk, id) => desk.draft(id)", Visit), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Typing_AsksNoServer()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "typing");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await Expect(tablet.Page.Locator(".lb-form .lb-body")).ToBeVisibleAsync();
        var asked = new List<string>();
        tablet.Page.Request += (_, request) => asked.Add(request.Url);

        await TypedVisit.FillAsync(tablet.Page, tablet.PictureAsync);
        await Expect(tablet.Page.Locator(".kept")).ToContainTextAsync("Kept on this device");

        Assert.Empty(asked);
    }

    private static async Task<Visit> FinishedHereAsync(JobHost host, VisitDraft draft)
    {
        var firm = await host.App.Services.GetRequiredService<SetUpStore>().FirmAsync(host.TechnicianViewer);
        var form = new FormState(draft, firm, firm.Sites[JobHost.Site], host.Clock, () => { }, () => { }) { Me = "RYA" };
        form.Renew();
        return CloseGate.Finish(form);
    }
}
