using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Capture;
using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using LogBook.Web.Components;
using LogBook.Web.Features.VisitForms;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>A walk at random over the form on the server's page, whose line breaks and whose database refuses now and then.</summary>
public sealed class ServerWalkTests(ITestOutputHelper output)
{
    private const string Form = "/visit/" + JobHost.Site;

    private const string RefuseDrafts = """
        CREATE TRIGGER NoNewDraft BEFORE INSERT ON Drafts BEGIN SELECT RAISE(ABORT, 'no room'); END;
        CREATE TRIGGER NoDraft BEFORE UPDATE ON Drafts BEGIN SELECT RAISE(ABORT, 'no room'); END;
        """;

    private const string TakeDrafts = "DROP TRIGGER NoNewDraft; DROP TRIGGER NoDraft;";

    [Fact]
    [Trait("goal", "U5")]
    public async Task WalkAtRandom_OnTheServersPage_LosesNothingEntered()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var browser = await TestBrowser.StartAsync("server-walk");
        var page = await browser.OpenAsync(link.Address);
        await page.SignInAsync(JobHost.Technician);
        await OpenAsync(page);
        var drafts = host.App.Services.GetRequiredService<DraftStore>();
        var walk = new FormWalk(page, async () => (await drafts.ListAsync(host.TechnicianViewer)).Select(kept => VisitDraft.FromJson(kept.Document)).SingleOrDefault(), 20250331);
        walk.AddAbrupt("load anew", async () =>
        {
            await page.ReloadAsync();
            await IsOpenAsync(page);
        });
        walk.AddAbrupt("back and forward", async () =>
        {
            await page.GoBackAsync();
            await Expect(page.Locator("h1").First).ToBeVisibleAsync();
            await page.GoForwardAsync();
            await IsOpenAsync(page);
        });
        walk.AddAbrupt("language", async () =>
        {
            walk.Language = walk.OtherLanguage();
            await page.GotoAsync("/account");
            await page.Locator("#language").SelectOptionAsync(LanguageCodes.Of(walk.Language));
            await page.Locator("form", new() { Has = page.Locator("#language") }).GetByRole(AriaRole.Button).ClickAsync();
            await Expect(page.Locator($"html[lang={LanguageCodes.Of(walk.Language)}]")).ToHaveCountAsync(1);
            await OpenAsync(page);
        });
        // The page stays: what it holds, the server must hear of.
        walk.Add("line lost", 1, async () =>
        {
            await walk.EnterAsync();
            var dialog = page.Locator("#components-reconnect-modal[open]");
            link.Cut();
            await Expect(dialog).ToHaveCountAsync(1);
            link.Mend();
            await Expect(dialog).ToHaveCountAsync(0);
            await IsOpenAsync(page);
        });
        walk.Add("failed save", 1, async () =>
        {
            await OnDatabaseAsync(host, RefuseDrafts);
            await walk.EnterAsync();
            await Expect(page.GetByText(VisitTexts.NotSaved.In(walk.Language))).ToBeVisibleAsync();
            await OnDatabaseAsync(host, TakeDrafts);
        });

        await walk.RunAsync(output);

        // Besides the runtime's own word that its line is down.
        Assert.DoesNotContain(browser.Console, line => line.StartsWith("uncaught", StringComparison.Ordinal) && !line.Contains("Cannot send data", StringComparison.Ordinal));
    }

    private static async Task OnDatabaseAsync(JobHost host, string script)
    {
        await using var connection = new SqliteConnection($"Data Source={Path.Combine(host.App.Folder, "logbook.db")};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = script;
        await command.ExecuteNonQueryAsync();
    }

    private static async Task OpenAsync(IPage page)
    {
        await page.GotoAsync(Form);
        await IsOpenAsync(page);
    }

    private static async Task IsOpenAsync(IPage page)
    {
        await page.IsLiveAsync();
        await Expect(page.Locator(".lb-form")).ToBeVisibleAsync();
    }
}
