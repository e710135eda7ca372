using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using LogBook.Web.Features.VisitForms;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>Spot check of numbers in a real browser whose own language differs: no key is swallowed, nothing is stored otherwise than typed without a question.</summary>
public sealed class FormNumbersTests
{
    private const string Dial = "systems/CT-1/meters/MU/dial";

    // What is typed, and the number that is meant; null where it must be asked or told to be none.
    private static readonly (string Typed, double? Meant)[] Sequences =
    [
        ("2,5", 2.5), ("2.5", 2.5), ("1.234", null), ("1,234", null), ("1.234,5", 1234.5), ("1,234.5", 1234.5), ("7..4", null), ("12O", null), ("1e3", null), ("48211", 48211),
        ("1 234 567", 1234567), ("12 5", null), ("0,05", 0.05), ("9990075,5", 9990075.5),
    ];

    [Theory]
    [InlineData("en-US")]
    [InlineData("es-MX")]
    [InlineData("es-ES")]
    [InlineData("pt-BR")]
    [Trait("goal", "U1")]
    public async Task Number_TypedKeyByKey_IsKeptAndSaidOrAsked(string locale)
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("numbers-" + locale);
        var page = await browser.OpenAsync(host.Address, locale);
        await page.GotoAsync("/account/sign-in");
        await page.FillAsync("#email", JobHost.Technician);
        await page.FillAsync("#password", LogBookWebApp.Password);
        await page.ClickAsync("button.main");
        await page.IsLiveAsync();
        await page.GoAsync("/visit/" + JobHost.Site);
        var language = await page.Locator(".lb-form").GetAttributeAsync("lang") switch
        {
            "es" => Language.Spanish,
            "pt" => Language.Portuguese,
            _ => Language.English,
        };
        await page.StepAsync(EntryTexts.Stock.In(language));
        var box = page.Field(Dial);
        var field = page.Locator(".lb-field", new() { Has = box }).Last;

        foreach (var (typed, meant) in Sequences)
        {
            await box.ClickAsync();
            await box.FillAsync(string.Empty);
            await box.PressSequentiallyAsync(typed);
            await Expect(box).ToHaveValueAsync(typed);
            await box.BlurAsync();
            await SaysAsync(field, meant, language);
            await Expect(box).ToHaveValueAsync(typed);
        }

        // An arrow or a wheel changes no number.
        await box.ClickAsync();
        await box.FillAsync("48211");
        await box.PressAsync("ArrowUp");
        await page.Mouse.WheelAsync(0, -120);
        await box.BlurAsync();
        await SaysAsync(field, 48211, language);

        // Waits for the draft that the server keeps: the text is the one in the box.
        await Expect(page.Locator("[role=status]", new() { HasText = VisitTexts.SavedAt.In(language, "").Trim() })).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.IsLiveAsync();
        await page.StepAsync(EntryTexts.Stock.In(language));
        await Expect(page.Field(Dial)).ToHaveValueAsync("48211");
        var draft = (await host.App.Services.GetRequiredService<DraftStore>().ListAsync(host.TechnicianViewer)).Select(kept => VisitDraft.FromJson(kept.Document)).Single();
        Assert.Equal(48211, draft.Number(Dial));
    }

    private static async Task SaysAsync(ILocator field, double? meant, Language language)
    {
        if (meant is { } number)
        {
            await Expect(field.Locator(".lb-echo")).ToHaveTextAsync(EntryTexts.Understood.In(language, Shown.Entered(number, "L", language)));
        }
        else
        {
            await Expect(field.Locator(".lb-echo")).ToHaveCountAsync(0);
            await Expect(field.Locator(".lb-note .lb-row button, .lb-note .lb-problem").First).ToBeVisibleAsync();
        }
    }
}
