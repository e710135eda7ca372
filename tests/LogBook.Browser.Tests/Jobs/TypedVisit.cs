using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>What the technician types at the due site, step by step.</summary>
public static class TypedVisit
{
    private static readonly string Top = DraftKey.Of(DraftKey.Systems, "CT-1");

    /// <summary>The controller as found. The display stands 2.6 % under the hand meter.</summary>
    public static IReadOnlyList<(string Key, string Text)> Controller { get; } =
    [
        (Of("probes", "C1", "asFound"), "1200"),
        (Of("clockOffByMin"), "3"),
        (Of("maOutput", "found"), "11.68"),
        (Of("hoursRun", "bleed", "hours"), "535"),
        (Of("hoursRun", "inhibitor", "hours"), "34.8"),
        (Of("hoursRun", "biocide-1", "hours"), "10"),
        (Of("settings", "setPointUsPerCm", "found"), "1350"),
        (Of("settings", "differentialUsPerCm", "found"), "27"),
    ];

    /// <summary>The hand meter beside the probe.</summary>
    public static IReadOnlyList<(string Key, string Text)> Reference { get; } =
    [
        (Of("probes", "C1", "settledMin"), "6"),
        (Of("probes", "C1", "reference"), "1232"),
    ];

    /// <summary>Water tests; pH is above its range of 7.5 to 9.</summary>
    public static IReadOnlyList<(string Key, string Text)> Water { get; } =
    [
        (Result(SamplePoints.MakeUp, TestCodes.Conductivity, ReadingSource.Reference), "300"),
        (Result(SamplePoints.MakeUp, TestCodes.Chloride), "23"),
        (Result(SamplePoints.MakeUp, TestCodes.Calcium), "82"),
        (Result(SamplePoints.MakeUp, TestCodes.Alkalinity), "75"),
        (Result(SamplePoints.Tower, TestCodes.Ph), "9.3"),
        (Result(SamplePoints.Tower, TestCodes.Inhibitor), "100"),
        (Result(SamplePoints.Tower, TestCodes.Chloride), "103.5"),
        (Result(SamplePoints.Tower, TestCodes.Calcium), "365"),
        (Result(SamplePoints.Tower, TestCodes.Alkalinity), "320"),
        (Result(SamplePoints.Tower, TestCodes.Iron), "0.4"),
        (Result(SamplePoints.Tower, TestCodes.Temperature), "27"),
    ];

    /// <summary>Counters and drums; 25 L of inhibitor are filled in.</summary>
    public static IReadOnlyList<(string Key, string Text)> Stock { get; } =
    [
        (Of("meters", "MU", "dial"), "3180000"),
        (Of("meters", "MU", "total"), "2980000"),
        (Of("drums", "D-INH", "level"), "31.5"),
        (Of("drums", "D-INH", "addedL"), "25"),
        (Of("drums", "D-INH", "spareL"), "25"),
        (Of("drums", "D-B1", "level"), "27"),
        (Of("drums", "D-B1", "spareL"), "25"),
        (Of("pumps", "P-INH", "strokeFound"), "60"),
        (Of("pumps", "P-INH", "speedFound"), "100"),
        (Of("pumps", "P-B1", "strokeFound"), "80"),
        (Of("pumps", "P-B1", "speedFound"), "100"),
    ];

    /// <summary>Enters all of it by its keys, as far as the close.</summary>
    /// <param name="page">The form at its first step.</param>
    /// <param name="picture">Keeps a picture.</param>
    public static async Task FillAsync(IPage page, Func<string, Task> picture)
    {
        await page.Locator($"#{DraftKey.ElementId(Of("running"))}").GetByText(EntryTexts.Yes.En, new() { Exact = true }).ClickAsync();
        await page.StepAsync(EntryTexts.Controller.En);
        await page.EnterAllAsync(Controller);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.AllAutomaticFound.En, Exact = true }).ClickAsync();
        await WalkAsync(page);
        await page.StepAsync(EntryTexts.Reference.En);
        await page.Field(Of("probes", "C1", "instrument")).SelectOptionAsync("HM-1");
        await page.EnterAllAsync(Reference);
        await page.StepAsync(EntryTexts.Water.En);
        await page.EnterAllAsync(Water);
        await picture("water");
        await page.StepAsync(EntryTexts.Stock.En);
        await page.EnterAllAsync(Stock);
        await page.StepAsync(EntryTexts.Adjust.En);
        await page.GetByRole(AriaRole.Button, new() { Name = EventWords.OutputsTested.En, Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.AllAutomaticLeft.En, Exact = true }).ClickAsync();
    }

    /// <summary>Answers what is open, signs and closes.</summary>
    /// <param name="page">The form.</param>
    /// <param name="picture">Keeps a picture.</param>
    /// <param name="name">Name of whoever signs.</param>
    public static async Task CloseAsync(IPage page, Func<string, Task> picture, string name = "R. Yaffle")
    {
        await page.StepAsync(EntryTexts.Close.En);
        await page.GetByRole(AriaRole.Button, new() { Name = EntryTexts.Add.In(Language.English, StepTexts.Action.En), Exact = true }).First.ClickAsync();
        var action = page.GetByLabel(StepTexts.ActionFor.En.Replace("{0}", string.Empty, StringComparison.Ordinal)).First;
        await action.FillAsync("Test pH again within a week");
        await action.BlurAsync();
        await SayWhoAndWhenAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.SignAs.In(Language.English, name), Exact = true }).ClickAsync();
        await page.EnterAsync("visit/signatures/Customer/absentReason", "nobody in the office");
        await Expect(page.GetByText(EntryTexts.NothingOpen.En)).ToBeVisibleAsync();
        await picture("close");
        await page.Locator("#close-visit").ClickAsync();
    }

    /// <summary>Says of the one action who does it and by when.</summary>
    /// <param name="page">The form at its close.</param>
    public static async Task SayWhoAndWhenAsync(IPage page)
    {
        await page.GetByLabel(StepTexts.Owner.En, new() { Exact = true }).First.FillAsync("RYA");
        await page.GetByLabel(StepTexts.Due.En, new() { Exact = true }).First.FillAsync("2025-04-07");
    }

    /// <summary>Every other setting stands as the programme has it; the full walk is due at this site. Further ones may still be on their way.</summary>
    /// <param name="page">The form at the controller.</param>
    public static async Task WalkAsync(IPage page)
    {
        var same = page.Locator(".lb-setting > button");
        var done = page.Locator(".lb-step.lb-chosen small", new() { HasText = EntryTexts.AllDone.En });
        while (!await done.IsVisibleAsync())
        {
            await Expect(same.Or(done).First).ToBeVisibleAsync();
            if (await same.CountAsync() > 0)
            {
                var button = await same.First.ElementHandleAsync();
                await button.ClickAsync();
                await button.WaitForElementStateAsync(ElementState.Hidden);
            }
        }
    }

    /// <summary>Key of a part of the tower.</summary>
    public static string Of(params string[] parts) => DraftKey.Under(Top, parts);

    /// <summary>Key of the value of a test.</summary>
    public static string Result(string at, string test, ReadingSource? source = null) => DraftKey.Under(new ReadingKey(at, test, source).In("CT-1"), "value");
}
