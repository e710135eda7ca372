using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Sites;
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

        await Expect(tablet.Page.Locator("#standing")).ToHaveTextAsync("1 came back");
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

        await Expect(tablet.Page.Locator("#standing")).ToHaveTextAsync("1 to be settled");
        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "Stands twice on the server" });
        await row.GetByRole(AriaRole.Link, new() { Name = "See both side by side" }).ClickAsync();
        var notes = tablet.Page.Locator(".closed-visit tr").Filter(new() { HasText = "typed at the office" });
        await Expect(notes).ToContainTextAsync("new shift pattern");
        await Expect(notes).ToContainTextAsync("differs");
        await tablet.PictureAsync("side-by-side");

        // The same in Spanish, on a tablet and on a phone.
        await tablet.GoHomeAsync();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Español", Exact = true }).ClickAsync();
        await tablet.Page.GetByRole(AriaRole.Link, new() { Name = "Ver las dos lado a lado" }).ClickAsync();
        await Expect(notes).ToContainTextAsync("distinto");
        foreach (var (width, height) in new[] { (820, 1180), (390, 844) })
        {
            await tablet.Page.SetViewportSizeAsync(width, height);
            Assert.False(await tablet.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"), $"Wider than {width} px.");
            await tablet.PictureAsync($"lado-a-lado-{width}");
        }

        Assert.Equal("conflict", await tablet.AskAsync<string>("queue.js", "async (queue) => (await queue.visits())[0].state"));
    }

    [Fact]
    public async Task Closed_WhoseDraftIsGone_IsReadFromWhatIsSent()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "read-closed");
        await tablet.RegisterAsync();
        var draft = await BeginAsync(tablet);
        await tablet.GoHomeAsync();
        await EnqueueAsync(tablet, draft.ToVisit());
        await tablet.AskAsync<object?>("store.js", "(store, id) => store.remove('drafts', id)", draft.Id.ToString("D"));

        await tablet.Page.GotoAsync($"/capture/#/closed/{draft.Id:D}");

        await Expect(tablet.Page.Locator(".closed-visit")).ToContainTextAsync("new shift pattern");
    }

    [Theory]
    [InlineData(ConflictChoice.TakeOther, "server")]
    [InlineData(ConflictChoice.KeepStanding, "settled")]
    public async Task Conflict_WithAPhoto_IsSettledWithItsPicture_AndTheTabletHearsOfIt(ConflictChoice choice, string state)
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "conflict-photo");
        await tablet.RegisterAsync();
        var standing = SampleFirm.Visit(JobHost.Site) with { EnteredAt = null };
        var photo = Guid.CreateVersion7();
        var hash = await tablet.AskAsync<string>(
            "photos.js",
            """
            async (photos, [id, visit]) => {
              const canvas = new OffscreenCanvas(64, 48);
              canvas.getContext("2d").fillRect(0, 0, 64, 48);
              return photos.keep(id, visit, new Uint8Array(await (await canvas.convertToBlob({ type: "image/png" })).arrayBuffer()));
            }
            """,
            new object[] { photo.ToString("D"), standing.Id.ToString("D") });
        var services = host.App.Services;
        Assert.IsType<IntakeOutcome.Stored>(await services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, standing, IntakeSource.Page));
        await EnqueueAsync(tablet, standing with { Notes = "with a picture", Photos = [new Photo { Id = photo, Of = "display", Sha256 = hash }] }, photo);

        await tablet.AskAsync<object?>("queue.js", "(queue) => queue.send()");

        Assert.Equal("conflict", await StateAsync(tablet));
        Assert.NotNull(await services.GetRequiredService<PhotoStore>().FindAsync(host.TechnicianViewer, photo, small: false));
        var supervisor = host.TechnicianViewer with { Role = PersonRole.Supervisor };
        var conflict = Assert.Single(await services.GetRequiredService<ConflictCare>().ListAsync(supervisor));
        Assert.IsType<SaveOutcome.Saved>(await services.GetRequiredService<ConflictCare>().SettleAsync(supervisor, conflict.Id, choice, VisitDocument.Sha256(conflict.Standing), "looked at both"));

        await tablet.AskAsync<object?>("queue.js", "(queue) => queue.send()");

        Assert.Equal(state, await StateAsync(tablet));
        await tablet.GoHomeAsync();
        await tablet.PictureAsync(state);
        var view = await services.GetRequiredService<VisitQuery>().OfAsync(host.TechnicianViewer, standing.Id);
        Assert.Equal(choice == ConflictChoice.TakeOther ? [(photo, "display", true)] : [], view!.Photos);
    }

    private static Task<string> StateAsync(Tablet tablet) => tablet.AskAsync<string>("queue.js", "async (queue) => (await queue.visits())[0].state");

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

    private static Task EnqueueAsync(Tablet tablet, Visit visit, params Guid[] photos) => tablet.AskAsync<object?>(
        "queue.js",
        "(queue, [id, site, document, photos]) => queue.enqueue({ id, version: 1, site, siteName: 'Pludworth Mouldings', person: 'RYA', document, photos })",
        new object[] { visit.Id.ToString("D"), visit.Site, VisitDocument.Canonical(VisitDocument.WithIds(visit)), photos.Select(id => id.ToString("D")).ToArray() });
}
