using LogBook.Browser.Tests.Jobs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A photo that will never arrive does not hold its visit on the tablet for ever.</summary>
public sealed class StuckPhotoTests
{
    [Theory]
    [InlineData("lost")]
    [InlineData("forbidden")]
    public async Task Photo_ThatWillNeverArrive_IsLeftOutWhenThePersonSaysSo(string why)
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "without-" + why);
        await tablet.RegisterAsync();

        // The server takes the visit and the other photo.
        await tablet.AskAsync<object?>(
            "queue.js",
            """
            async (queue, why) => {
              const store = await import("/capture/store.js");
              const keys = await import("/capture/keys.js");
              const real = window.fetch;
              const answer = (status, body) => new Response(JSON.stringify(body), { status, headers: { "Content-Type": "application/json" } });
              window.arrived = [];
              window.fetch = async (address, more = {}) => {
                if (String(address).endsWith("/standing")) return answer(404, {});
                if (String(address).includes("/photos/stuck")) return answer(403, {});
                if (String(address).includes("/photos/")) { window.arrived.push(String(address).split("/").pop()); return answer(201, {}); }
                if (String(address).endsWith("/visits") && more.method === "POST") return answer(201, { sha256: await keys.sha256(more.body) });
                return real(address, more);
              };
              const photo = async (id) => store.put("photos", { id, visit: "v", type: "image/jpeg", sealed: await keys.sealForDevice("picture") });
              if (why === "forbidden") await photo("stuck");
              await photo("other");
              await queue.enqueue({ id: "v", version: 1, site: "S", siteName: "Site", person: "RYA", document: "{}", photos: ["stuck", "other"] });
              await queue.send();
            }
            """,
            why);
        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "S Site" });
        await row.GetByRole(AriaRole.Button, new() { Name = "Go on without this photo" }).ClickAsync();
        await Expect(tablet.Page.Locator("#notices")).ToContainTextAsync("missing from the record");
        Assert.Empty(await tablet.Page.EvaluateAsync<string[]>("() => window.arrived"));

        await tablet.Page.Locator("#notices").GetByRole(AriaRole.Button).ClickAsync();

        await Expect(row.Locator(".mark.server")).ToHaveCountAsync(1);
        await Expect(row).ToContainTextAsync("without 1 of its photos");
        Assert.Equal("other", Assert.Single(await tablet.Page.EvaluateAsync<string[]>("() => window.arrived")));
        await tablet.PictureAsync("without");
    }
}
