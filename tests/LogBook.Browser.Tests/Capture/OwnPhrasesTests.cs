using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Domain.Sites;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A phrase that a supervisor set up is one tap in both forms, also without signal.</summary>
public sealed class OwnPhrasesTests
{
    private static readonly Text Gate = new("gate code changed", "cambió el código del portón", "mudou o código do portão");

    [Fact]
    public async Task Phrase_OfTheFirm_IsOfferedOnTheServerAndWithoutSignal()
    {
        await using var host = await JobHost.StartAsync();
        var supervisor = new Viewer(null, JobHost.Supervisor, "IWE", PersonRole.Supervisor, null, Language.English);
        var saved = await host.App.Services.GetRequiredService<PhraseStore>().SaveAsync(
            supervisor, new QuickPhrases(new Dictionary<PhraseUse, IReadOnlyList<Text>> { [PhraseUse.Changed] = [Gate] }), 0);
        Assert.IsType<SaveOutcome.Saved>(saved);
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "own-phrases");
        await tablet.RegisterAsync();

        await tablet.Page.GoAsync("/visit/" + JobHost.Site);
        await TapAsync(tablet.Page, Gate.En);
        link.Cut();
        await tablet.Page.GotoAsync("/capture/");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Español", Exact = true }).ClickAsync();
        await tablet.OpenVisitAsync(JobHost.Site, "Abrir");
        await tablet.Page.StepAsync(EntryTexts.Arrive.Es);
        await TapAsync(tablet.Page, Gate.Es, isThere: true);
        await tablet.PictureAsync("phrase");
    }

    private static async Task TapAsync(IPage page, string words, bool isThere = false)
    {
        if (!isThere)
        {
            await page.StepAsync(EntryTexts.Arrive.En);
        }

        // The firm's own stand first, the built-in ones after them.
        var row = page.Locator(".lb-phrases").Filter(new() { HasText = words });
        await Expect(row.Locator("button").First).ToHaveTextAsync(words);
        Assert.True(await row.Locator("button").CountAsync() > 3);
        await row.Locator("button").First.ClickAsync();
        await Expect(page.Field("visit/notes")).ToHaveValueAsync(words);
    }
}
