using LogBook.Browser.Tests.Jobs;

namespace LogBook.Browser.Tests.Capture;

/// <summary>What a tablet forgets some days after it has arrived, and what it must not.</summary>
public sealed class ForgetsTests
{
    [Fact]
    public async Task Send_LongAfterAVisitArrived_KeepsTheAmendmentThatIsOpen()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "forgets");

        var left = await tablet.AskAsync<string[]>(
            "queue.js",
            """
            async (queue) => {
              const store = await import("/capture/store.js");
              const now = Date.now();
              const old = now - 8 * 86_400_000;
              const drafts = { amended: { closed: false }, sent: { closed: true }, thrownLately: { thrownAway: now }, thrownLongAgo: { thrownAway: old } };
              for (const [id, more] of Object.entries(drafts)) {
                await store.put("queue", { id, version: 1, site: "S", person: "RYA", photos: [], sent: [], state: "mailed", closedAt: old, receivedAt: old });
                await store.put("drafts", { id, site: "S", person: "RYA", at: now, ...more });
                await store.put("typed", { id });
                await store.put("photos", { id: "photo-" + id, visit: id });
              }
              await queue.send();
              const names = ["queue", "drafts", "typed", "photos"];
              return (await Promise.all(names.map(async (name) => (await store.all(name)).map((row) => name + " " + row.id)))).flat().sort();
            }
            """);

        Assert.Equal(
            ["drafts amended", "drafts thrownLately", "photos photo-amended", "photos photo-thrownLately", "typed amended", "typed thrownLately"],
            left);
    }
}
