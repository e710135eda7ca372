using System.Text;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Summaries;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The summary that is shown and signed without signal says what the server says later.</summary>
public sealed class OfflineSummaryTests
{
    private const string Rows = "(table) => [...table.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent.trim()).join(' | '))";

    [Fact]
    public async Task Summary_WithoutSignal_IsSignedMadeAPdf_AndTellsTheServersResults()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "offline-summary");
        await tablet.RegisterAsync();
        link.Cut();
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        var page = tablet.Page;
        await page.StepAsync(EntryTexts.Water.En);
        await page.EnterAllAsync(TypedVisit.Water);
        await page.StepAsync(EntryTexts.Stock.En);
        await page.EnterAllAsync(TypedVisit.Stock);
        await page.StepAsync(EntryTexts.Close.En);
        await page.Locator("#show-sheet").ClickAsync();

        // The customer reads Spanish. What only the whole record tells is said to follow, not to be missing.
        var sheet = page.Locator(".lb-paper");
        await Expect(sheet).ToHaveAttributeAsync("lang", "es");
        await Expect(sheet).ToContainTextAsync(SummaryTexts.FoundLater.Es);
        await Expect(sheet).Not.ToContainTextAsync(SummaryTexts.NothingFound.Es);
        await Expect(sheet).ToContainTextAsync("Quernwath Cooling Water Services");
        var results = await sheet.Locator("table").EvaluateAsync<string[]>(Rows);
        await tablet.PictureAsync("sheet");
        await page.SetViewportSizeAsync(390, 844);
        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"));
        await tablet.PictureAsync("sheet-390");
        await page.SetViewportSizeAsync(820, 1180);

        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator("#sheet-pdf").ClickAsync());
        var pdf = await File.ReadAllBytesAsync((await download.PathAsync())!);
        Assert.EndsWith(".pdf", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(pdf, 0, 5));
        Assert.Contains("%%EOF", Encoding.ASCII.GetString(pdf, pdf.Length - 16, 16), StringComparison.Ordinal);
        await download.SaveAsAsync(Path.Combine(AppContext.BaseDirectory, "TestResults", "offline-summary", "summary.pdf"));

        await page.EnterAsync("visit/signatures/Customer/name", "M. Plud");
        await Expect(sheet).ToContainTextAsync("M. Plud");
        await page.Locator("#sheet-back").ClickAsync();
        await page.EnterAsync("visit/leaveOpen", "called away");
        await page.Locator("#close-visit").ClickAsync();
        await Expect(page.Locator(".mark.device")).ToHaveCountAsync(1);
        var id = await tablet.AskAsync<string>("queue.js", "async (queue) => (await queue.visits())[0].id");
        link.Mend();
        await page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);

        // The dead battery ended the sign-in to the pages; the tablet itself sends by its own credential.
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync($"/visits/{id}/summary?language=es");
        Assert.Equal(await page.Locator(".visit-summary table").EvaluateAsync<string[]>(Rows), results);
        Assert.Contains(results, row => row.Contains("9,3", StringComparison.Ordinal));
    }
}
