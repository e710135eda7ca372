using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Application.Tokens;
using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Domain.Sites;
using LogBook.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Api;

/// <summary>Registering a tablet, what it asks for, and how its credential ends.</summary>
public sealed class TabletsApiTests(TabletsApiTests.Started host) : IClassFixture<TabletsApiTests.Started>
{
    [Fact]
    public async Task Register_SignedInPerson_GetsCredentialOfOwnName()
    {
        using var person = await host.PersonAsync();

        var given = await RegisterAsync(person, "Barge tablet");

        Assert.Equal("TEC", given.GetProperty("person").GetString());
        Assert.Equal("T. Technician", given.GetProperty("name").GetString());
        Assert.Equal("en", given.GetProperty("language").GetString());
        using var tablet = host.Tablet(given);
        using var answer = await tablet.GetAsync("/api/v1/round/stops");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task Register_ByAnotherTablet_IsRefused()
    {
        using var person = await host.PersonAsync();
        using var tablet = host.Tablet(await RegisterAsync(person, "First tablet"));

        using var answer = await tablet.PostAsJsonAsync("/api/v1/tablets", new { name = "Second tablet" });

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task Register_FromAnotherSite_IsRefused()
    {
        using var person = await host.PersonAsync();
        person.DefaultRequestHeaders.Remove("Origin");
        person.DefaultRequestHeaders.Add("Origin", "https://elsewhere.example");

        using var answer = await person.PostAsJsonAsync("/api/v1/tablets", new { name = "Barge tablet" });

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public async Task Register_WithoutName_SaysWhatIsExpected(string name)
    {
        using var person = await host.PersonAsync();

        using var answer = await person.PostAsJsonAsync("/api/v1/tablets", new { name });

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("1 to 100 characters", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "/api/v1/round", HttpStatusCode.OK)]
    [InlineData("GET", "/api/v1/export", HttpStatusCode.Forbidden)]
    [InlineData("GET", "/api/v1/findings", HttpStatusCode.Forbidden)]
    [InlineData("POST", "/api/v1/imports", HttpStatusCode.Forbidden)]
    public async Task Credential_OpensTheRound_AndNothingElse(string method, string path, HttpStatusCode expected)
    {
        using var person = await host.PersonAsync();
        using var tablet = host.Tablet(await RegisterAsync(person, "Barge tablet"));
        using var request = new HttpRequestMessage(new HttpMethod(method), path);

        using var answer = await tablet.SendAsync(request);

        Assert.Equal(expected, answer.StatusCode);
    }

    [Fact]
    public async Task Stops_TellTheServersMoment()
    {
        using var person = await host.PersonAsync();

        var round = await person.GetFromJsonAsync<JsonElement>("/api/v1/round/stops");

        Assert.InRange(round.GetProperty("now").GetDateTimeOffset(), DateTimeOffset.UtcNow.AddMinutes(-1), DateTimeOffset.UtcNow.AddMinutes(1));
        Assert.Equal(JsonValueKind.Array, round.GetProperty("stops").ValueKind);
    }

    [Fact]
    public async Task Stops_BringTheFirmsPhrases()
    {
        var phrases = host.App.Services.GetRequiredService<PhraseStore>();
        var supervisor = Viewer.System("test");
        var own = new QuickPhrases(new Dictionary<PhraseUse, IReadOnlyList<Text>> { [PhraseUse.Seen] = [new("moss", "musgo", "limo verde")] });
        Assert.IsType<SaveOutcome.Saved>(await phrases.SaveAsync(supervisor, own, (await phrases.FindAsync(supervisor))!.Version));
        using var person = await host.PersonAsync();

        var round = await person.GetFromJsonAsync<JsonElement>("/api/v1/round/stops");

        Assert.Equal(own.Write(), QuickPhrases.Read(round.GetProperty("phrases").GetRawText()).Write());
    }

    [Fact]
    public async Task Round_Whole_HoldsEverySite()
    {
        using var person = await host.PersonAsync();

        var round = await person.GetFromJsonAsync<JsonElement>("/api/v1/round?whole=true&visits=1");

        Assert.Equal(["SIT-A", "SIT-B"], round.GetProperty("sites").EnumerateArray().Select(site => site.GetProperty("code").GetString()));
        Assert.Equal(2, round.GetProperty("visits").GetArrayLength());
    }

    [Fact]
    public async Task Standing_TellsVersionAndHash_OnlyOfAKnownVisit()
    {
        using var person = await host.PersonAsync();

        var standing = await person.GetFromJsonAsync<JsonElement>($"/api/v1/visits/{TwoCustomers.VisitA}/standing");
        using var unknown = await person.GetAsync($"/api/v1/visits/{Guid.CreateVersion7()}/standing");

        Assert.Equal(1, standing.GetProperty("version").GetInt32());
        Assert.Matches("^[0-9a-f]{64}$", standing.GetProperty("sha256").GetString()!);
        Assert.Equal(0, standing.GetProperty("mailsAccepted").GetInt32());
        Assert.Equal(HttpStatusCode.NotFound, unknown.StatusCode);
    }

    [Fact]
    [Trait("goal", "S4")]
    public async Task Revoke_BySupervisor_EndsTheTablet_ByColleagueDoesNot()
    {
        using var person = await host.PersonAsync();
        var given = await RegisterAsync(person, "Lost tablet");
        using var tablet = host.Tablet(given);
        var tokens = host.Tokens;
        var supervisor = new Viewer(await host.UserAsync("supervisor@quernwath.example"), "supervisor", "SUP", PersonRole.Supervisor, null, Language.English);
        var colleague = supervisor with { Role = PersonRole.Technician };
        var entry = Assert.Single((await tokens.TabletsAsync(supervisor))!, entry => entry.Name == "Lost tablet");

        Assert.Null(await tokens.TabletsAsync(colleague));
        Assert.False(await tokens.RevokeAsync(colleague, entry.Id));
        Assert.True(await tokens.RevokeAsync(supervisor, entry.Id));

        using var answer = await tablet.GetAsync("/api/v1/round/stops");
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.DoesNotContain((await tokens.TabletsAsync(supervisor))!, left => left.Id == entry.Id);
    }

    [Fact]
    public async Task Revoke_OtherToken_OfAnotherPerson_IsRefused()
    {
        var technician = new Viewer(await host.UserAsync("technician@quernwath.example"), "technician", "TEC", PersonRole.Technician, null, Language.English);
        var supervisor = new Viewer(await host.UserAsync("supervisor@quernwath.example"), "supervisor", "SUP", PersonRole.Supervisor, null, Language.English);
        var token = await host.Tokens.CreateAsync(technician, "a program", [TokenScopes.Read], 30);

        Assert.False(await host.Tokens.RevokeAsync(supervisor, token!.Id));
    }

    private static async Task<JsonElement> RegisterAsync(HttpClient person, string name)
    {
        using var answer = await person.PostAsJsonAsync("/api/v1/tablets", new { name });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>();
    }

    /// <summary>A host with two customers.</summary>
    public sealed class Started : IAsyncLifetime
    {
        /// <summary>The host.</summary>
        public LogBookWebApp App { get; } = new();

        public Task InitializeAsync() => TwoCustomers.AddAsync(App);

        public async Task DisposeAsync() => await App.DisposeAsync();

        /// <summary>The store of credentials.</summary>
        public TokenStore Tokens => App.Services.GetRequiredService<TokenStore>();

        /// <summary>Key of an account.</summary>
        public Task<int> UserAsync(string email) => App.Services.GetRequiredService<LogBookStore>().ReadAsync(
            Viewer.System("test"), db => db.Users.Where(user => user.Email == email).Select(user => user.Id).SingleAsync());

        /// <summary>A technician in a browser, on a page of this installation.</summary>
        public async Task<HttpClient> PersonAsync()
        {
            var client = await App.SignedInAsync("technician@quernwath.example");
            client.DefaultRequestHeaders.Add("Sec-Fetch-Site", "same-origin");
            client.DefaultRequestHeaders.Add("Origin", "https://localhost");
            return client;
        }

        /// <summary>A tablet with its credential and nobody signed in.</summary>
        public HttpClient Tablet(JsonElement given)
        {
            var client = App.CreateClient();
            client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", given.GetProperty("token").GetString());
            return client;
        }
    }
}
