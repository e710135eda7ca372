using System.Net;
using System.Net.Http.Json;
using System.Security.Cryptography;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Api;

/// <summary>The second key to the drafts on a tablet: who keeps it, who releases it, who gets it.</summary>
[Trait("goal", "S2")]
public sealed class TabletKeysApiTests(TabletsApiTests.Started host) : IClassFixture<TabletsApiTests.Started>
{
    private static readonly Viewer Supervisor = new(null, "supervisor@quernwath.example", "SUP", PersonRole.Supervisor, null, Language.English);

    private TabletKeyStore Keys => host.App.Services.GetRequiredService<TabletKeyStore>();

    [Fact]
    public async Task Key_LeavesTheServer_OnlyAfterItsPersonAskedAndASupervisorReleasedIt()
    {
        using var tablet = await TabletAsync();
        var (id, key) = NewKey();
        using var kept = await tablet.PutAsJsonAsync("/api/v1/tablets/keys/" + id, new { key, tablet = "Barge tablet" });
        Assert.Equal(HttpStatusCode.NoContent, kept.StatusCode);

        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(tablet, id));
        Assert.False(await Keys.ReleaseAsync(Supervisor, id));
        using var asked = await tablet.PostAsync($"/api/v1/tablets/keys/{id}/requests", null);
        Assert.Equal(HttpStatusCode.Accepted, asked.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(tablet, id));
        Assert.Contains(await Keys.AskedAsync(Supervisor), row => row.Id == id && row.Tablet == "Barge tablet" && row.Account == "technician@quernwath.example");
        var technician = Supervisor with { Role = PersonRole.Technician };
        Assert.False(await Keys.ReleaseAsync(technician, id));
        Assert.Empty(await Keys.AskedAsync(technician));

        Assert.True(await Keys.ReleaseAsync(Supervisor, id));

        Assert.Equal(key, (await tablet.GetFromJsonAsync<JsonElement>("/api/v1/tablets/keys/" + id)).GetProperty("key").GetString());
        Assert.DoesNotContain(await Keys.AskedAsync(Supervisor), row => row.Id == id);

        // Not to another person, whoever they are, and not in the clear in the database.
        using var other = await host.App.SignedInAsync("supervisor@quernwath.example");
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(other, id));
        var (document, trail) = await host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), async db => (
            await db.SetUp.Where(row => row.Kind == SetUpKind.TabletKey && row.Code == id).Select(row => row.Document).SingleAsync(),
            await db.AuditTrail.Where(row => row.Key == id).Select(row => row.What).ToListAsync()));
        Assert.DoesNotContain(key, document, StringComparison.Ordinal);
        Assert.Equal(["tablet key kept", "tablet key asked for", "tablet key released"], trail);
    }

    [Fact]
    public async Task Key_UnderAnotherName_IsRefused()
    {
        using var tablet = await TabletAsync();
        var (id, _) = NewKey();

        using var answer = await tablet.PutAsJsonAsync("/api/v1/tablets/keys/" + id, new { key = NewKey().Key, tablet = "Barge tablet" });

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task Key_ThatIsReplaced_Goes()
    {
        using var tablet = await TabletAsync();
        var (first, firstKey) = NewKey();
        var (second, secondKey) = NewKey();
        using var kept = await tablet.PutAsJsonAsync("/api/v1/tablets/keys/" + first, new { key = firstKey, tablet = "Barge tablet" });
        using var replaced = await tablet.PutAsJsonAsync("/api/v1/tablets/keys/" + second, new { key = secondKey, tablet = "Barge tablet", replaces = first });
        using var again = await tablet.PutAsJsonAsync("/api/v1/tablets/keys/" + second, new { key = secondKey, tablet = "Barge tablet", replaces = first });

        using var gone = await tablet.PostAsync($"/api/v1/tablets/keys/{first}/requests", null);
        using var there = await tablet.PostAsync($"/api/v1/tablets/keys/{second}/requests", null);

        Assert.Equal((HttpStatusCode.NoContent, HttpStatusCode.NotFound, HttpStatusCode.Accepted), (again.StatusCode, gone.StatusCode, there.StatusCode));
    }

    private async Task<HttpClient> TabletAsync()
    {
        using var person = await host.PersonAsync();
        using var answer = await person.PostAsJsonAsync("/api/v1/tablets", new { name = "Barge tablet" });
        return host.Tablet(await answer.Content.ReadFromJsonAsync<JsonElement>());
    }

    private static (string Id, string Key) NewKey()
    {
        var key = RandomNumberGenerator.GetBytes(32);
        return (Convert.ToHexStringLower(SHA256.HashData(key)), Convert.ToBase64String(key));
    }

    private static async Task<HttpStatusCode> StatusAsync(HttpClient client, string id)
    {
        using var answer = await client.GetAsync("/api/v1/tablets/keys/" + id);
        return answer.StatusCode;
    }
}
