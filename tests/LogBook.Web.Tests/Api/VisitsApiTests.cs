using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Api;

public sealed class VisitsApiTests : IClassFixture<VisitsApiTests.Started>
{
    private readonly Started _host;

    public VisitsApiTests(Started host) => _host = host;

    [Fact]
    public async Task Post_SentTwice_IsOneVisitWithTheSameReceipt()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.ClientAsync(TokenScopes.Visits, TokenScopes.Read);

        using var first = await PostAsync(client, Visit(id), $"{id}/1");
        using var second = await PostAsync(client, Visit(id), $"{id}/1");

        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        Assert.Equal(HttpStatusCode.OK, second.StatusCode);
        var receipt = await first.Content.ReadFromJsonAsync<JsonElement>();
        var again = await second.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal(receipt.GetProperty("sha256").GetString(), again.GetProperty("sha256").GetString());
        Assert.True(again.GetProperty("alreadyKnown").GetBoolean());
        var stored = await client.GetFromJsonAsync<JsonElement>($"/api/v1/visits/{id}");
        Assert.Equal("SIT-A", stored.GetProperty("site").GetString());
    }

    [Fact]
    public async Task Post_OtherContentUnderTheSameKey_IsAConflict()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.ClientAsync(TokenScopes.Visits);

        using var first = await PostAsync(client, Visit(id), $"{id}/1");
        using var other = await PostAsync(client, Visit(id, notes: "other"), $"{id}/1");

        Assert.Equal(HttpStatusCode.Conflict, other.StatusCode);
        await AssertProblemAsync(other);
    }

    [Fact]
    public async Task Post_WithoutOrWithAnotherKey_IsRefused()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.ClientAsync(TokenScopes.Visits);

        using var without = await PostAsync(client, Visit(id), null);
        using var another = await PostAsync(client, Visit(id), $"{Guid.CreateVersion7()}/1");

        Assert.Equal(HttpStatusCode.BadRequest, without.StatusCode);
        await AssertProblemAsync(without);
        Assert.Equal(HttpStatusCode.BadRequest, another.StatusCode);
        await AssertProblemAsync(another);
    }

    [Fact]
    public async Task Post_FaultyDocument_ListsItsIssues()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.ClientAsync(TokenScopes.Visits);

        using var answer = await PostAsync(client, Visit(id).Replace("uS/cm", "furlong", StringComparison.Ordinal), $"{id}/1");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var problem = await AssertProblemAsync(answer);
        Assert.Contains(problem.GetProperty("issues").EnumerateArray(), issue => issue.GetProperty("path").GetString()!.Contains("readings[0]", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Token_WithoutTheScope_IsForbidden()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.ClientAsync(TokenScopes.Read);

        using var answer = await PostAsync(client, Visit(id), $"{id}/1");

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        await AssertProblemAsync(answer);
    }

    [Fact]
    public async Task Token_Revoked_IsRefused()
    {
        var tokens = _host.App.Services.GetRequiredService<TokenStore>();
        var token = (await tokens.CreateAsync(_host.Technician, "one", [TokenScopes.Read], 1))!;
        using var client = _host.Client(token.Text);
        using var before = await client.GetAsync("/api/v1/round");

        Assert.True(await tokens.RevokeAsync(_host.Technician, token.Id));

        using var after = await client.GetAsync("/api/v1/round");
        Assert.Equal(HttpStatusCode.OK, before.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, after.StatusCode);
        await AssertProblemAsync(after);
    }

    [Fact]
    public async Task Token_InTheDatabase_IsOnlyAHash()
    {
        var token = (await _host.App.Services.GetRequiredService<TokenStore>().CreateAsync(_host.Technician, "hashed", [TokenScopes.Read], 1))!;

        var row = await _host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), db => db.Tokens.SingleAsync(kept => kept.Id == token.Id));

        Assert.Equal(64, row.Hash.Length);
        Assert.DoesNotContain(token.Text[TokenStore.Prefix.Length..], JsonSerializer.Serialize(row), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("https://evil.example", null)]
    [InlineData(null, null)]
    [InlineData("https://localhost", "cross-site")]
    public async Task Post_OnACookieFromElsewhere_IsForbidden(string? origin, string? site)
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.App.SignedInAsync("technician@quernwath.example");
        if (origin is not null)
        {
            client.DefaultRequestHeaders.Add("Origin", origin);
        }

        if (site is not null)
        {
            client.DefaultRequestHeaders.Add("Sec-Fetch-Site", site);
        }

        using var answer = await PostAsync(client, Visit(id), $"{id}/1");

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task Post_OnACookieFromAnOwnPage_IsReceived()
    {
        var id = Guid.CreateVersion7();
        using var client = await _host.App.SignedInAsync("technician@quernwath.example");
        client.DefaultRequestHeaders.Add("Origin", "https://localhost");
        client.DefaultRequestHeaders.Add("Sec-Fetch-Site", "same-origin");

        using var answer = await PostAsync(client, Visit(id), $"{id}/1");

        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
    }

    [Fact]
    public async Task Round_Technician_HasSetUpAndLastVisits()
    {
        using var client = await _host.ClientAsync(TokenScopes.Read);

        var round = await client.GetFromJsonAsync<JsonElement>("/api/v1/round");

        Assert.Equal(2, round.GetProperty("sites").GetArrayLength());
        Assert.Contains(round.GetProperty("visits").EnumerateArray(), visit => visit.GetProperty("id").GetGuid() == TwoCustomers.VisitA);
    }

    [Theory]
    [InlineData("/api/v1/findings?asOf=yesterday", HttpStatusCode.BadRequest)]
    [InlineData("/api/v1/export?site=NO-SUCH", HttpStatusCode.NotFound)]
    [InlineData("/api/v1/visits/0198a000-0000-7000-8000-0000000000ff", HttpStatusCode.NotFound)]
    [InlineData("/api/v1/no-such-call", HttpStatusCode.NotFound)]
    public async Task Get_Refusals_AreProblems(string path, HttpStatusCode expected)
    {
        using var client = await _host.ClientAsync(TokenScopes.Read);

        using var answer = await client.GetAsync(path);

        Assert.Equal(expected, answer.StatusCode);
        await AssertProblemAsync(answer);
    }

    [Fact]
    public async Task OpenApi_Document_NamesEveryCall()
    {
        using var client = _host.App.CreateClient();

        var document = await client.GetFromJsonAsync<JsonElement>("/api/v1/openapi.json");

        var paths = document.GetProperty("paths").EnumerateObject().Select(path => path.Name).ToList();
        Assert.Superset(
            new HashSet<string> { "/api/v1/visits", "/api/v1/visits/{id}", "/api/v1/round", "/api/v1/findings", "/api/v1/imports", "/api/v1/export", "/api/v1/photos/{id}", "/api/v1/tablets", "/api/v1/round/stops", "/api/v1/visits/{id}/standing" },
            paths.ToHashSet());
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string json, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/visits") { Content = new StringContent(json, Encoding.UTF8, "application/json") };
        if (key is not null)
        {
            request.Headers.Add("Idempotency-Key", key);
        }

        return await client.SendAsync(request);
    }

    private static async Task<JsonElement> AssertProblemAsync(HttpResponseMessage answer)
    {
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal((int)answer.StatusCode, problem.GetProperty("status").GetInt32());
        Assert.False(string.IsNullOrEmpty(problem.GetProperty("title").GetString()));
        return problem;
    }

    private static string Visit(Guid id, string notes = "as usual") => $$"""
        {"id": "{{id}}", "site": "SIT-A", "technician": "TEC", "arrived": "2025-07-02T08:00:00+01:00", "left": "2025-07-02T09:00:00+01:00",
         "notes": "{{notes}}",
         "systems": [{"system": "CT1", "readings": [{"at": "tower", "test": "conductivity", "value": 1410, "unit": "uS/cm"}]}]}
        """;

    public sealed class Started : IAsyncLifetime
    {
        public LogBookWebApp App { get; } = new();

        public Viewer Technician { get; private set; } = default!;

        public async Task InitializeAsync()
        {
            await TwoCustomers.AddAsync(App);
            var id = await App.AddUserAsync("program@quernwath.example", PersonRole.Technician);
            Technician = new(id, "program@quernwath.example", null, PersonRole.Technician, null, Language.English);
        }

        public async Task DisposeAsync() => await App.DisposeAsync();

        public HttpClient Client(string token)
        {
            var client = App.CreateClient();
            client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", token);
            return client;
        }

        public async Task<HttpClient> ClientAsync(params string[] scopes) =>
            Client((await App.Services.GetRequiredService<TokenStore>().CreateAsync(Technician, "test", scopes, 30))!.Text);
    }
}
