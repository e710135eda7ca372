using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Application.Sites;
using LogBook.Entry.Looks;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Every step on the tablet in three languages and every look, in every size: nothing is cut off, thumbs hit, and pictures are kept for whoever looks.</summary>
public sealed class StepPicturesTests
{
    private static readonly (int Width, int Height)[] Sizes = [(320, 640), (1180, 820), (820, 1180), (390, 844)];

    [Theory]
    [InlineData("English", "Open", "plain", false, false, null, false)]
    [InlineData("Español", "Abrir", "gloves-left-hand", true, true, null, false)]
    [InlineData("Português", "Abrir", "dark-side-by-side", false, false, true, true)]
    [Trait("goal", "U3")]
    public async Task EveryStep_FitsEverySize_AndThumbsHit(string language, string open, string name, bool gloves, bool leftHand, bool? dark, bool sideBySide)
    {
        await using var host = await JobHost.StartAsync();
        await AddSecondTowerAsync(host);
        await using var tablet = await Tablet.StartAsync(host.Address, "steps-" + name);
        await tablet.RegisterAsync();
        await tablet.GoHomeAsync();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = language, Exact = true }).ClickAsync();
        var looks = new FormLooks { Gloves = gloves, LeftHand = leftHand, Dark = dark, SideBySide = sideBySide };
        await tablet.Page.EvaluateAsync("(looks) => localStorage.setItem('logbook.entry.looks', looks)", looks.Write());
        await tablet.OpenVisitAsync(JobHost.Site, open);
        await tablet.Page.Locator(".lb-step").Nth(3).ClickAsync();
        await tablet.Page.EnterAsync(TypedVisit.Result(SamplePoints.Tower, TestCodes.Ph), language == "English" ? "9.3" : "9,3");

        var cut = new List<string>();
        var seen = 0;
        var steps = tablet.Page.Locator(".lb-step");
        var count = await steps.CountAsync();
        for (var step = 0; step < count; step++)
        {
            await steps.Nth(step).ClickAsync();
            await Expect(steps.Nth(step)).ToHaveAttributeAsync("aria-current", "step");
            foreach (var (width, height) in Sizes)
            {
                await tablet.Page.SetViewportSizeAsync(width, height);
                if (await tablet.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"))
                {
                    cut.Add($"step {step + 1} is wider than {width} px");
                }

                var targets = await tablet.Page.EvaluateAsync<object[]>(FormTargetsTests.TooSmallOrClose, new[] { gloves ? 64 : 48, 8 });
                seen += Convert.ToInt32(targets[0], CultureInfo.InvariantCulture);
                cut.AddRange(targets.Skip(1).Select(target => $"step {step + 1}, {width} px: {target}"));
                if (width is 820 or 390)
                {
                    await tablet.PictureAsync($"step-{step + 1}-{width}");
                }
            }
        }

        Assert.True(cut.Count == 0, string.Join(Environment.NewLine, cut.Distinct()));
        Assert.True(count >= 8, $"Only {count} steps were seen.");
        Assert.True(seen > 100 * Sizes.Length, $"Only {seen} targets were seen.");
    }

    // A second tower like the first, so that tests can stand side by side.
    private static async Task AddSecondTowerAsync(JobHost host)
    {
        var firm = await host.App.Services.GetRequiredService<SetUpStore>().FirmAsync(host.TechnicianViewer);
        var second = JsonNode.Parse(ExchangeWriter.CanonicalOf(firm.System(JobHost.Site, "CT-1")!))!.AsObject();
        second["code"] = "CT-2";
        second["name"] = "Press tower";
        var document = new JsonObject { ["format"] = ExchangeReader.Format, ["version"] = ExchangeReader.Version, ["systems"] = new JsonArray(second) };
        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(document.ToJsonString()));
        Assert.DoesNotContain((await host.App.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues, issue => issue.Blocks);
    }
}
