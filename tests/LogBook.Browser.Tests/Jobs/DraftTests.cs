using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>A visit that is broken off: nothing that was typed may be missing afterwards.</summary>
public sealed class DraftTests
{
    private const string Form = "/visit/" + JobHost.Site;

    private static readonly TimeSpan KeptWithin = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Draft_ReloadThenKilledBrowser_HoldsEveryTypedValue()
    {
        await using var host = await JobHost.StartAsync();
        await using (var browser = await TestBrowser.StartAsync("draft"))
        {
            var page = await browser.OpenAsync(host.Address);
            await page.SignInAsync(JobHost.Technician);
            await page.GoAsync(Form);
            await page.StepAsync(EntryTexts.Controller.En);
            await page.EnterAllAsync(TypedVisit.Controller);
            await page.StepAsync(EntryTexts.Water.En);
            await page.EnterAllAsync(TypedVisit.Water);
            await KeptAsync(host, [.. TypedVisit.Controller, .. TypedVisit.Water]);

            await page.ReloadAsync();
            await page.IsLiveAsync();
            await HoldsAsync(page, EntryTexts.Controller.En, TypedVisit.Controller);
            await HoldsAsync(page, EntryTexts.Water.En, TypedVisit.Water);

            await page.StepAsync(EntryTexts.Stock.En);
            await page.EnterAllAsync([.. TypedVisit.Stock.SkipLast(1)]);

            // The last box is never left: its keys alone must be kept.
            var (key, text) = TypedVisit.Stock[^1];
            await page.Field(key).PressSequentiallyAsync(text);
            await KeptAsync(host, TypedVisit.Stock);
            await browser.KillAsync();
        }

        await using var another = await TestBrowser.StartAsync("draft-after");
        var again = await another.OpenAsync(host.Address);
        await again.SignInAsync(JobHost.Technician);
        await again.GoAsync(Form);
        await HoldsAsync(again, EntryTexts.Controller.En, TypedVisit.Controller);
        await HoldsAsync(again, EntryTexts.Water.En, TypedVisit.Water);
        await HoldsAsync(again, EntryTexts.Stock.En, TypedVisit.Stock);
    }

    private static async Task HoldsAsync(IPage page, string step, IReadOnlyList<(string Key, string Text)> fields)
    {
        await page.StepAsync(step);
        await page.HoldsAsync(fields);
    }

    // Waits until the server has the draft; looks again at intervals because a database calls nobody.
    private static async Task KeptAsync(JobHost host, IReadOnlyList<(string Key, string Text)> fields)
    {
        var drafts = host.App.Services.GetRequiredService<DraftStore>();
        using var within = new CancellationTokenSource(KeptWithin);
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        while (true)
        {
            var draft = (await drafts.ListAsync(host.TechnicianViewer, within.Token)).Select(kept => VisitDraft.FromJson(kept.Document)).SingleOrDefault();
            if (draft is not null && fields.All(field => draft.Text(field.Key) == field.Text))
            {
                return;
            }

            await timer.WaitForNextTickAsync(within.Token);
        }
    }
}
