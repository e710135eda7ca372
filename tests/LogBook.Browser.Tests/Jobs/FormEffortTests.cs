using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Plans;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>
/// What a routine visit of 25 readings costs in real Chromium, counted by a script of the page: taps on fields, taps on
/// everything else, keystrokes with Enter among them. Cautions and signatures are counted apart, photos are not taken.
/// </summary>
public sealed class FormEffortTests
{
    private const string Count = """
        window.effort = { fields: 0, others: 0, apart: 0, keys: 0 };
        document.addEventListener("click", event => {
          if (!event.isTrusted) return;
          const target = event.target.closest("button, input, select, textarea, summary, a");
          if (!target) return;
          const kind = target.closest(".lb-caution") || target.dataset.apart || /signatures/.test(target.id) || target.closest(".lb-phrases") ? "apart"
            : target.matches("input, select, textarea") ? "fields" : "others";
          window.effort[kind]++;
        }, true);
        document.addEventListener("keydown", event => { if (event.isTrusted) window.effort.keys++; }, true);
        """;

    // In the order of the form; the last of a step is followed by Enter, which goes on.
    private static readonly (string Key, string Text)[] Controller =
    [
        (TypedVisit.Of("probes", "C1", "asFound"), "1226"),
        (TypedVisit.Of("clockOffByMin"), "0"),
        (TypedVisit.Of("hoursRun", "bleed", "hours"), "535"),
        (TypedVisit.Of("hoursRun", "inhibitor", "hours"), "35"),
        (TypedVisit.Of("hoursRun", "biocide-1", "hours"), "10"),
        (TypedVisit.Of("settings", "setPointUsPerCm", "found"), "1350"),
        (TypedVisit.Of("settings", "differentialUsPerCm", "found"), "27"),
        (TypedVisit.Of("settings", "highAlarmUsPerCm", "found"), "1620"),
        (TypedVisit.Of("settings", "lowAlarmUsPerCm", "found"), "1013"),
        (TypedVisit.Of("settings", "longestBleedMin", "found"), "140"),
    ];

    private static readonly (string Key, string Text)[] Water =
    [
        (TypedVisit.Result(SamplePoints.MakeUp, TestCodes.Conductivity, ReadingSource.Reference), "300"),
        (TypedVisit.Result(SamplePoints.MakeUp, TestCodes.Chloride), "23"),
        (TypedVisit.Result(SamplePoints.MakeUp, TestCodes.Calcium), "82"),
        (TypedVisit.Result(SamplePoints.MakeUp, TestCodes.Alkalinity), "75"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Inhibitor), "100"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Ph), "8.6"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Chloride), "105"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Calcium), "365"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Alkalinity), "320"),
        (TypedVisit.Result(SamplePoints.Tower, TestCodes.Temperature), "27"),
    ];

    private static readonly (string Key, string Text)[] Stock =
    [
        (TypedVisit.Of("meters", "MU", "dial"), "3180000"),
        (TypedVisit.Of("meters", "MU", "total"), "2980000"),
        (TypedVisit.Of("drums", "D-B1", "level"), "27"),
        (TypedVisit.Of("drums", "D-INH", "level"), "31.5"),
    ];

    [Fact]
    [Trait("goal", "U4")]
    public async Task RoutineVisit_Of25Readings_TakesFewTapsAndKeys()
    {
        var readings = Controller.Length + 1 + Water.Length + Stock.Length;
        Assert.Equal(25, readings);
        await using var host = await JobHost.StartAsync();
        await ReadSettingsAsync(host);
        await using var browser = await TestBrowser.StartAsync("effort");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync("/visit/" + JobHost.Site);
        await page.EvaluateAsync(Count);

        await page.Locator("fieldset", new() { HasText = EntryTexts.Running.En }).GetByText(EntryTexts.Yes.En).ClickAsync();
        await page.Locator(".lb-next").ClickAsync();
        await IsAtAsync(page, EntryTexts.Controller);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.AllAutomaticFound.En }).ClickAsync();
        await TypeAsync(page, Controller);
        await page.Keyboard.PressAsync("Enter");
        await IsAtAsync(page, EntryTexts.Reference);
        await TypeAsync(page, [(TypedVisit.Of("probes", "C1", "reference"), "1232")]);
        for (var box = 0; box < 3; box++)
        {
            await page.Keyboard.PressAsync("Enter");
        }

        await IsAtAsync(page, EntryTexts.Water);
        await TypeAsync(page, Water);
        await page.Keyboard.PressAsync("Enter");
        await IsAtAsync(page, EntryTexts.Stock);
        await TypeAsync(page, Stock);
        await page.StepAsync(EntryTexts.Close.En);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.TestedAllAutomatic.En }).ClickAsync();
        var sign = page.GetByRole(AriaRole.Button, new() { Name = StepTexts.SignAs.In(Language.English, "R. Yaffle") });
        await sign.EvaluateAsync("button => button.dataset.apart = 'yes'");
        await sign.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "office closed" }).ClickAsync();
        await Expect(page.Locator(".lb-open")).ToContainTextAsync(EntryTexts.NothingOpen.En);
        await browser.PictureAsync(page, "close");
        await page.Locator("#close-visit").EvaluateAsync("button => button.addEventListener('click', () => sessionStorage.setItem('effort', JSON.stringify(window.effort)))");
        await page.Locator("#close-visit").ClickAsync();
        await page.WaitForURLAsync("**/visits/*");

        var effort = System.Text.Json.JsonDocument.Parse(await page.EvaluateAsync<string>("sessionStorage.getItem('effort')")).RootElement;
        int Of(string name) => effort.GetProperty(name).GetInt32();
        var told = $"field taps {Of("fields")}, other taps {Of("others")}, keys {Of("keys")}, apart {Of("apart")}";
        Assert.True(Of("fields") is > 20 and <= 25, told);
        Assert.True(Of("others") is > 3 and <= 6, told);
        Assert.True(Of("keys") is > 60 and <= 90, told);
        var stored = await host.App.Services.GetRequiredService<VisitReader>().FindAsync(host.TechnicianViewer, Guid.Parse(page.Url[^36..]));
        var system = stored!.Visit.Systems.Single();
        Assert.Equal("HM-1", system.Probes.Single().Instrument);
        Assert.Equal(25, system.Probes.Count * 2 + 1 + system.HoursRun.Count + system.Settings.Count + system.Readings.Count(r => r.Source is not ReadingSource.Controller && !(r.At == SamplePoints.Tower && r.Source == ReadingSource.Reference)) + (system.Meters.Count * 2) + system.Drums.Count);
        await File.WriteAllTextAsync(Path.Combine(browser.Pictures, "effort.txt"), told);
    }

    // The quarter's walk through the settings was made at the last visit: today is a usual day.
    private static async Task ReadSettingsAsync(JobHost host)
    {
        var firm = await host.App.Services.GetRequiredService<SetUpStore>().FirmAsync(host.TechnicianViewer);
        var system = firm.SystemsOf(JobHost.Site).Single();
        var visit = new Visit
        {
            Id = Guid.Parse("0198b000-0000-7000-8000-000000000009"),
            Site = JobHost.Site,
            Technician = "RYA",
            Kind = VisitKind.Audit,
            Arrived = Moment.Of(new DateTimeOffset(2025, 3, 3, 10, 30, 0, TimeSpan.Zero)),
            Left = Moment.Of(new DateTimeOffset(2025, 3, 3, 10, 50, 0, TimeSpan.Zero)),
            Systems =
            [
                new VisitedSystem
                {
                    System = system.Code,
                    Settings = [.. SettingList.Of(system.Programmes[^1], system).Select(s => new SettingReading { Name = s.Name, Found = s.Programme is double number ? SettingValue.Of(number) : SettingValue.Of((string)s.Programme) })],
                },
            ],
        };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
    }

    private static Task IsAtAsync(IPage page, Text step) => Expect(page.Locator(".lb-step", new() { HasText = step.En })).ToHaveAttributeAsync("aria-current", "step");

    private static async Task TypeAsync(IPage page, IReadOnlyList<(string Key, string Text)> fields)
    {
        foreach (var (key, text) in fields)
        {
            var box = page.Field(key);
            await box.ClickAsync();
            await page.Keyboard.TypeAsync(text);
            await Expect(box).ToHaveValueAsync(text);
        }
    }
}
