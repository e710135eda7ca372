using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using LogBook.Web.Components;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A walk at random over the form on the tablet, whose signal, store and page fail now and then.</summary>
public sealed class WalkTests(ITestOutputHelper output)
{
    private const string Refusal = "no room for the test's next draft";

    // The next write of a draft fails as that of a full disk does: at once, or when all was handed over.
    private const string OneWriteFails = """
        (atOnce) => {
          const real = IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = function (...given) {
            if (this.name !== "drafts") return real.apply(this, given);
            IDBObjectStore.prototype.put = real;
            globalThis.writesFailed = (globalThis.writesFailed ?? 0) + 1;
            if (atOnce) throw new DOMException("REFUSAL", "QuotaExceededError");
            const request = real.apply(this, given);
            request.addEventListener("success", () => this.transaction.abort());
            return request;
          };
          globalThis.writesFailedBefore = globalThis.writesFailed ?? 0;
        }
        """;

    [Fact]
    [Trait("goal", "U5")]
    public async Task WalkAtRandom_OnTheTablet_LosesNothingEntered()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "walk");
        await tablet.RegisterAsync();
        await tablet.GoHomeAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        var page = tablet.Page;
        var walk = new FormWalk(page, () => DraftAsync(tablet), 20250331);
        var (isCut, failsAtOnce) = (false, false);
        walk.AddAbrupt("load anew", async () =>
        {
            await page.ReloadAsync();
            await tablet.EnterPinAsync(Open(walk.Language));
        });
        walk.AddAbrupt("back and forward", async () =>
        {
            await page.GoBackAsync();
            await Expect(page.Locator("#view h2").First).ToBeVisibleAsync();
            await page.GoForwardAsync();
            await tablet.EnterPinAsync(Open(walk.Language));
        });
        walk.AddAbrupt("language", async () =>
        {
            walk.Language = walk.OtherLanguage();
            await tablet.GoHomeAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = LanguageNames.Of(walk.Language), Exact = true }).ClickAsync();
            await tablet.OpenVisitAsync(JobHost.Site, Open(walk.Language));
        });
        walk.Add("signal", 1, () =>
        {
            isCut = !isCut;
            (isCut ? (Action)link.Cut : link.Mend)();
            return Task.CompletedTask;
        });
        walk.Add("failed write", 1, async () =>
        {
            failsAtOnce = !failsAtOnce;
            await page.EvaluateAsync(OneWriteFails.Replace("REFUSAL", Refusal, StringComparison.Ordinal), failsAtOnce);
            await walk.EnterAsync();
            await page.WaitForFunctionAsync("() => globalThis.writesFailed > globalThis.writesFailedBefore");
        });

        await walk.RunAsync(output);

        // What the page throws besides the refusal itself.
        Assert.DoesNotContain(tablet.Console, line => line.StartsWith("uncaught", StringComparison.Ordinal) && !line.Contains(Refusal, StringComparison.Ordinal));
    }

    private static string Open(Language language) => language == Language.English ? "Open" : "Abrir";

    // With the keys that the device noted by themselves, as the form takes them in when it is opened again.
    private static async Task<VisitDraft?> DraftAsync(Tablet tablet)
    {
        var kept = await tablet.AskAsync<string[]?>("desk.js", """
            async (desk) => {
              const row = (await desk.drafts()).find((one) => !one.closed);
              return row ? [await desk.draft(row.id), await desk.typed(row.id)] : null;
            }
            """);
        if (kept is null)
        {
            return null;
        }

        var draft = VisitDraft.FromJson(kept[0]);
        foreach (var typed in System.Text.Json.JsonSerializer.Deserialize<TypedNote[]>(kept[1], System.Text.Json.JsonSerializerOptions.Web)!)
        {
            draft.KeepTyped(typed.Key, typed.Text, typed.Unit);
        }

        return draft;
    }

    private sealed record TypedNote(string Key, string Text, string? Unit);
}
