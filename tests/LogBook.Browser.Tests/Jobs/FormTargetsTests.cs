using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Languages;
using LogBook.Entry.Looks;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The visit form in gloves, on a narrow screen and without a pointer (quality.md, U3).</summary>
public sealed class FormTargetsTests
{
    /// <summary>How many targets a form has, and those smaller or closer than asked for.</summary>
    // A checkbox counts with its label, a hidden file box with the label that stands for it.
    public const string TooSmallOrClose = """
        ([least, gap]) => {
          const shown = box => box.checkVisibility({ visibilityProperty: true }) && box.getBoundingClientRect().width > 1;
          const targets = [...new Set([...document.querySelectorAll(".lb-form :is(button, input, select, textarea, summary, a[href])")]
            .filter(shown).map(box => box.closest(".lb-check, .lb-photo-add") ?? box))];
          const name = box => `${box.tagName} ${box.id || box.className} "${(box.getAttribute("aria-label") ?? box.textContent ?? "").trim().slice(0, 40)}"`;
          const rects = targets.map(box => box.getBoundingClientRect());
          const found = [];
          targets.forEach((box, i) => {
            const a = rects[i];
            if (a.width < least - 0.5 || a.height < least - 0.5) found.push(`${Math.round(a.width)}x${Math.round(a.height)} ${name(box)}`);
            targets.forEach((other, j) => {
              if (j <= i || box.contains(other) || other.contains(box)) return;
              const b = rects[j];
              const across = Math.max(a.left - b.right, b.left - a.right), down = Math.max(a.top - b.bottom, b.top - a.bottom);
              if (across < gap - 0.5 && down < gap - 0.5) found.push(`${Math.round(across)},${Math.round(down)} apart: ${name(box)} and ${name(other)}`);
            });
          });
          return [targets.length, ...found];
        }
        """;

    private static readonly Text[] Steps =
    [
        EntryTexts.Arrive, EntryTexts.Controller, EntryTexts.Reference, EntryTexts.Water, EntryTexts.Stock, EntryTexts.Tower, EntryTexts.Samples, EntryTexts.Adjust, EntryTexts.Close,
    ];

    [Fact]
    [Trait("goal", "U3")]
    public async Task Targets_OnEveryStep_AreLargeAndApart_LargerInGloves_AndNothingLeavesANarrowScreen()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("targets");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync("/visit/" + JobHost.Site);
        var found = new List<string>();
        var targets = 0;

        foreach (var (width, height, gloves) in new[] { (820, 1180, false), (1180, 820, false), (390, 844, false), (820, 1180, true), (320, 640, true) })
        {
            await page.SetViewportSizeAsync(width, height);
            var box = page.GetByLabel(LooksTexts.Gloves.En);
            if (await box.IsCheckedAsync() != gloves)
            {
                await page.GetByText(LooksTexts.Title.En).ClickAsync();
                await box.SetCheckedAsync(gloves);
                await Expect(page.Locator(gloves ? ".lb-form[data-gloves=on]" : ".lb-form:not([data-gloves])")).ToBeVisibleAsync();
                await page.GetByText(LooksTexts.Title.En).ClickAsync();
            }

            foreach (var step in Steps)
            {
                await page.StepAsync(step.En);
                var seen = await page.EvaluateAsync<object[]>(TooSmallOrClose, gloves ? new[] { 64, 8 } : new[] { 48, 8 });
                targets += Convert.ToInt32(seen[0], System.Globalization.CultureInfo.InvariantCulture);
                found.AddRange(seen.Skip(1).Select(line => $"{width} {(gloves ? "gloves " : "")}{step.En}: {line}"));
                if (await page.EvaluateAsync<int>("Math.max(...[...document.querySelectorAll('.lb-form, .lb-form *:not(.lb-wide *)')].map(e => Math.ceil(e.getBoundingClientRect().right))) - innerWidth") is > 0 and var beyond)
                {
                    found.Add($"{width} {step.En}: {beyond} px beyond the screen");
                }
            }

            await page.StepAsync(EntryTexts.Tower.En);
            await page.GetByRole(AriaRole.Button, new() { Name = EntryTexts.CannotWork.En }).ClickAsync();
            await Expect(page.Locator(".lb-stopped")).ToBeVisibleAsync();
            found.AddRange((await page.EvaluateAsync<object[]>(TooSmallOrClose, gloves ? new[] { 64, 8 } : new[] { 48, 8 })).Skip(1).Select(line => $"{width} {(gloves ? "gloves " : "")}stopped: {line}"));
            await page.GetByRole(AriaRole.Button, new() { Name = EntryTexts.CanWork.En }).ClickAsync();
            await Expect(page.Locator(".lb-stopped")).ToHaveCountAsync(0);
            await browser.PictureAsync(page, $"{width}{(gloves ? "-gloves" : "")}");
        }

        Assert.True(targets > 500, $"{targets} targets");
        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found.Distinct()));
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task Keyboard_Alone_EntersChoosesAndMovesOn()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("keyboard");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync("/visit/" + JobHost.Site);

        await TabToAsync(page, "e => e.closest('fieldset')?.textContent.includes('Is the system running?') && e.textContent.includes('Yes')");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator("fieldset", new() { HasText = "Is the system running?" }).Locator("button[aria-pressed=true]")).ToContainTextAsync("Yes");
        await TabToAsync(page, "e => e.matches('.lb-next')");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#visit-step")).ToHaveTextAsync(EntryTexts.Controller.En);
        await Expect(page.Locator("#visit-step")).ToBeFocusedAsync();
        await TabToAsync(page, "e => e.dataset.key?.endsWith('asFound')");
        await page.Keyboard.TypeAsync("1226");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".lb-echo").First).ToContainTextAsync("1226");
        Assert.NotEqual("BODY", await page.EvaluateAsync<string>("document.activeElement.tagName"));
        await TabToAsync(page, "e => e.matches('.lb-stop')", back: true);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Field("visit/reason")).ToBeFocusedAsync();
    }

    // Every focus must be visible: an outline, or the label's own.
    private static async Task TabToAsync(IPage page, string wanted, bool back = false)
    {
        for (var presses = 0; presses < 120; presses++)
        {
            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
            var at = await page.EvaluateAsync<string>($"() => {{ const e = document.activeElement; return ({wanted})(e) ? 'there' : e.closest('.lb-form') && getComputedStyle(e.closest('.lb-photo-add')?.querySelector('label') ?? e).outlineStyle === 'none' ? 'unseen ' + e.outerHTML.slice(0, 200) : ''; }}");
            Assert.False(at.StartsWith("unseen", StringComparison.Ordinal), at);
            if (at == "there")
            {
                return;
            }
        }

        Assert.Fail("not reached by the tabulator: " + wanted);
    }
}
