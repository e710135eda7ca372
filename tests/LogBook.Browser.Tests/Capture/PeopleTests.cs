using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Two people at one tablet, a wrong PIN, and a credential that was revoked.</summary>
public sealed class PeopleTests
{
    private const string Notes = "visit/notes";
    private const string OtherPin = "975310";

    [Fact]
    [Trait("goal", "S2")]
    public async Task SecondPerson_OpensNoDraftOfTheFirst_AndARevokedTabletKeepsWhatWaits()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "people");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();

        await tablet.RegisterAnotherAsync(JobHost.Supervisor, OtherPin);
        await Expect(tablet.Page.Locator("#who")).ToContainTextAsync("At the tablet: I. Wendle");
        var draft = tablet.Page.Locator(".stop").Filter(new() { HasText = "of R. Yaffle" });
        await draft.GetByRole(AriaRole.Link, new() { Name = "Go on" }).ClickAsync();
        await PinAsync(tablet, OtherPin);
        await Expect(tablet.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "This is not the PIN." })).ToBeVisibleAsync();
        await Expect(tablet.Page.Locator(".lb-form")).ToHaveCountAsync(0);
        await PinAsync(tablet, Tablet.Pin);
        await Expect(tablet.Page.Locator(".lb-form")).ToBeVisibleAsync();
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await Expect(tablet.Page.Field(Notes)).ToHaveValueAsync("noise in the fan");
        await tablet.GoHomeAsync();

        await RevokeAsync(host);
        var visit = VisitDocument.WithIds(SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00"));
        await tablet.AskAsync<object?>(
            "queue.js",
            """
            async (queue, [id, document]) => {
              await queue.enqueue({ id, version: 1, site: "YAF-1", siteName: "Yaffleford College", person: "RYA", document, photos: [] });
              await queue.send();
            }
            """,
            new object[] { visit.Id.ToString("D"), VisitDocument.Canonical(visit) });
        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "The server does not know this tablet any more" });
        await Expect(row.Locator(".mark.device")).ToHaveTextAsync("On this device");
        await tablet.PictureAsync("revoked");

        // After some wrong tries each further one waits, also over a reload.
        await tablet.Page.GotoAsync("/capture/#/who/RYA");
        for (var tries = 0; tries < 5; tries++)
        {
            await PinAsync(tablet, "000000");
        }

        await Expect(tablet.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Too many tries." })).ToBeVisibleAsync();
        await tablet.Page.ReloadAsync();
        await PinAsync(tablet, Tablet.Pin);
        await Expect(tablet.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Too many tries." })).ToBeVisibleAsync();
    }

    private static async Task PinAsync(Tablet tablet, string pin)
    {
        var box = tablet.Page.Locator("#pin");
        await box.FillAsync(pin);
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Open", Exact = true }).ClickAsync();

        // A wrong one is told by an emptied box; a right one takes the box away.
        await tablet.Page.WaitForFunctionAsync("(pin) => document.getElementById('pin')?.value !== pin", pin);
    }

    private static async Task RevokeAsync(JobHost host)
    {
        var tokens = host.App.Services.GetRequiredService<TokenStore>();
        var supervisor = new Viewer(null, JobHost.Supervisor, "IWE", PersonRole.Supervisor, null, Language.English);
        var own = (await tokens.TabletsAsync(supervisor))!.Single(entry => entry.Account == JobHost.Technician);
        Assert.True(await tokens.RevokeAsync(supervisor, own.Id));
    }
}
