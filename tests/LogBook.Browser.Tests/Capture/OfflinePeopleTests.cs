using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using LogBook.Entry.Texts;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Two people at one tablet without signal: who comes sees the own round, who goes leaves a sealed draft, and a site is taken over.</summary>
public sealed class OfflinePeopleTests(ITestOutputHelper output)
{
    private const string Notes = "visit/notes";
    private const string Other = "p.umber@quernwath.example";
    private const string OtherPin = "975310";
    private const string OtherSite = "YAF-1";

    // A hand types for about a second; what is longer than this was the tablet.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task Switch_WithoutSignal_ShowsTheOwnRound_AndTheDraftStaysSealedUntilItsPersonIsBack()
    {
        await using var host = await JobHost.StartAsync();
        await AddOtherAsync(host);
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "people-offline");
        await RegisterBothAsync(tablet);
        link.Cut();
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();

        await tablet.Page.GotoAsync("/capture/#/who/RYA");
        await UnlockAsync(tablet, Tablet.Pin);
        await Expect(tablet.Page.Locator("#who")).ToContainTextAsync("At the tablet: R. Yaffle");
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();

        var there = await SwitchAsync(tablet, "P. Umber", OtherPin, OtherSite);
        await Expect(Today(tablet)).ToHaveCountAsync(1);
        await Expect(Today(tablet)).ToContainTextAsync("Yaffleford College");
        await tablet.PictureAsync("other-round");
        var draft = tablet.Page.Locator(".stop").Filter(new() { HasText = "of R. Yaffle" });
        await Expect(draft).ToHaveCountAsync(1);
        Assert.True(await tablet.AskAsync<bool>(
            "desk.js", "async (desk) => { const [row] = await desk.drafts(); return desk.draft(row.id).then(() => false, (error) => error.name === 'OperationError'); }"));
        await draft.GetByRole(AriaRole.Link, new() { Name = "Go on" }).ClickAsync();
        await UnlockAsync(tablet, OtherPin);
        await Expect(tablet.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "This is not the PIN." })).ToBeVisibleAsync();
        await Expect(tablet.Page.Locator(".lb-form")).ToHaveCountAsync(0);
        await tablet.GoHomeAsync();

        var back = await SwitchAsync(tablet, "R. Yaffle", Tablet.Pin, JobHost.Site);
        await tablet.OpenVisitAsync(JobHost.Site);
        await Expect(tablet.Page.Field(Notes)).ToHaveValueAsync("noise in the fan");
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"From the tap on changing the person to the own round, without signal: {there.TotalSeconds:0.0} s there, {back.TotalSeconds:0.0} s back"));
        Assert.InRange(there, TimeSpan.Zero, Longest);
        Assert.InRange(back, TimeSpan.Zero, Longest);
    }

    [Fact]
    [Trait("goal", "R4")]
    public async Task TakenOver_WithoutSignal_ArrivesOnceAsTheVisitOfWhoeverMadeIt()
    {
        await using var host = await JobHost.StartAsync();
        await AddOtherAsync(host);
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "taken-over");
        await RegisterBothAsync(tablet);
        link.Cut();
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();

        // The colleague has begun at this site; the one who takes over makes a visit of their own.
        await tablet.Page.GotoAsync("/capture/#/who/RYA");
        await UnlockAsync(tablet, Tablet.Pin);
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();
        await SwitchAsync(tablet, "P. Umber", OtherPin, OtherSite);
        await tablet.Page.GetByText("All other sites").ClickAsync();
        await tablet.Page.GetByRole(AriaRole.Link, new() { Name = JobHost.Site }).ClickAsync();
        await Expect(tablet.Page.Locator(".lb-form")).ToBeVisibleAsync();
        await Expect(tablet.Page.Field(Notes)).ToHaveValueAsync(string.Empty);
        await TypedVisit.FillAsync(tablet.Page, tablet.PictureAsync);
        await TypedVisit.CloseAsync(tablet.Page, tablet.PictureAsync, "P. Umber");
        await Expect(tablet.Page.Locator(".mark.device")).ToHaveCountAsync(1);

        // The first answer is lost on its way back.
        link.LosesAnswers = 1;
        link.Mend();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await tablet.UntilAsync("async () => (await (await import('/capture/queue.js')).visits())[0].problem === 'no-signal'");
        await LostAsync(link);
        link.LosesAnswers = 0;
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);

        var today = await host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(
            Viewer.System("test"), db => db.Visits.Where(visit => visit.ArrivedAt > new DateTime(2025, 3, 31, 0, 0, 0, DateTimeKind.Utc)).Select(visit => new { visit.VisitId, visit.Technician, visit.CurrentVersion }).ToListAsync());
        var arrived = Assert.Single(today);
        Assert.Equal(("PUM", 1), (arrived.Technician, arrived.CurrentVersion));
        var stored = await host.App.Services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, arrived.VisitId);
        Assert.Equal(JobHost.Site, stored!.Visit.Site);
        Assert.Equal("P. Umber", stored.Visit.Signatures.Single(signature => signature.Name is not null).Name);

        // What the colleague has begun is still theirs.
        await SwitchAsync(tablet, "R. Yaffle", Tablet.Pin, JobHost.Site);
        await tablet.OpenVisitAsync(JobHost.Site);
        await Expect(tablet.Page.Field(Notes)).ToHaveValueAsync("noise in the fan");
    }

    private static ILocator Today(Tablet tablet) => tablet.Page.Locator(".stop").Filter(new() { Has = tablet.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Start the visit") }) });

    // From the tap until the round of the one who came can be read.
    private static async Task<TimeSpan> SwitchAsync(Tablet tablet, string name, string pin, string site)
    {
        var watch = Stopwatch.StartNew();
        await tablet.Page.Locator("#who button").ClickAsync();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
        await UnlockAsync(tablet, pin);
        await Expect(tablet.Page.GetByRole(AriaRole.Link, new() { Name = "Start the visit " + site })).ToBeVisibleAsync();
        watch.Stop();
        await Expect(tablet.Page.Locator("#who")).ToContainTextAsync("At the tablet: " + name);
        return watch.Elapsed;
    }

    private static async Task UnlockAsync(Tablet tablet, string pin)
    {
        await Expect(tablet.Page.Locator("#pin")).ToBeFocusedAsync();
        await tablet.Page.Keyboard.TypeAsync(pin);
        await tablet.Page.Keyboard.PressAsync("Enter");
        await tablet.Page.WaitForFunctionAsync("(pin) => document.getElementById('pin')?.value !== pin", pin);
    }

    private static async Task RegisterBothAsync(Tablet tablet)
    {
        await tablet.RegisterAsync();
        await tablet.RegisterAnotherAsync(Other, OtherPin);
        await tablet.BroughtAsync(JobHost.Site, JobHost.Site);
    }

    private static async Task LostAsync(Link link)
    {
        using var within = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        while (link.Lost == 0)
        {
            await timer.WaitForNextTickAsync(within.Token);
        }
    }

    // A second technician, who has one of the two sites.
    private static async Task AddOtherAsync(JobHost host)
    {
        var services = host.App.Services;
        var firm = await services.GetRequiredService<SetUpStore>().FirmAsync(host.TechnicianViewer);
        var site = JsonNode.Parse(ExchangeWriter.CanonicalOf(firm.Sites[OtherSite]))!.AsObject();
        site["assignedTo"] = "PUM";
        var document = new JsonObject
        {
            ["format"] = ExchangeReader.Format,
            ["version"] = ExchangeReader.Version,
            ["people"] = new JsonArray(new JsonObject { ["code"] = "PUM", ["name"] = "P. Umber", ["role"] = "technician" }),
            ["sites"] = new JsonArray(site),
        };
        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(document.ToJsonString()));
        Assert.DoesNotContain((await services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), json, update: true)).Issues, issue => issue.Blocks);
        await host.App.AddUserAsync(Other, PersonRole.Technician, person: "PUM");
    }
}
