using System.Net;
using LogBook.Web.Security;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Security;

/// <summary>Every route there is, asked by every role, for its own records and for those of the other customer.</summary>
[Trait("goal", "S1")]
public sealed class CustomerWallTests : IClassFixture<CustomerWallTests.Started>
{
    // Open to people who are not signed in; a new one is a decision, taken here.
    private static readonly string[] OpenToAll =
    [
        "/account/sign-in", "/account/sign-out", "/account/not-here", "/account/fault", "/account/language", "/account/invited", "/not-found", "/first-run",
        "/help", "/help/{Screen}", "/health/live", "/health/ready", "/api/v1/openapi.json",
        "/capture/{*path:nonfile}",
    ];

    private static readonly string[] People =
        ["technician@quernwath.example", "supervisor@quernwath.example", "administrator@quernwath.example", "a@alder.example", "b@birch.example"];

    private readonly Started _host;

    public CustomerWallTests(Started host) => _host = host;

    [Fact]
    public void EveryRoute_HasAnAuthorizationEntry()
    {
        var without = Routes()
            .Where(route => route.Metadata.GetMetadata<IAllowAnonymous>() is null && !route.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(data => !string.IsNullOrEmpty(data.Policy)))
            .Select(Pattern);

        Assert.Empty(without);
    }

    [Fact]
    public void OpenRoutes_AreThoseThatWereDecided()
    {
        var open = Routes().Where(route => route.Metadata.GetMetadata<IAllowAnonymous>() is not null).Select(Pattern).Distinct().Order(StringComparer.Ordinal);

        Assert.Equal(OpenToAll.Order(StringComparer.Ordinal), open);
    }

    [Fact]
    public async Task NobodySignedIn_ClosedRoutes_AreRefused()
    {
        using var client = _host.App.CreateClient();
        foreach (var route in Gettable().Where(route => route.Metadata.GetMetadata<IAllowAnonymous>() is null))
        {
            using var answer = await client.GetAsync(Fill(Pattern(route), "B", TwoCustomers.VisitB));

            Assert.True(answer.StatusCode is HttpStatusCode.Redirect or HttpStatusCode.Unauthorized, $"{Pattern(route)} answered {answer.StatusCode} to nobody.");
        }
    }

    [Fact]
    public async Task EveryRole_EveryRoute_ShowsNothingOfAnotherCustomer()
    {
        var asked = 0;
        foreach (var email in People)
        {
            using var client = await _host.App.SignedInAsync(email);
            foreach (var route in Gettable())
            {
                foreach (var (letter, visit) in new[] { ("A", TwoCustomers.VisitA), ("B", TwoCustomers.VisitB) })
                {
                    using var answer = await client.GetAsync(Fill(Pattern(route), letter, visit));
                    var text = await answer.Content.ReadAsStringAsync();
                    asked++;

                    Assert.True((int)answer.StatusCode < 500, $"{Pattern(route)} answered {answer.StatusCode} to {email}.");
                    if (email == "a@alder.example")
                    {
                        Assert.False(text.Contains(TwoCustomers.CanaryB, StringComparison.OrdinalIgnoreCase), $"{Pattern(route)} shows customer B to {email}.");
                    }
                    else if (email == "b@birch.example")
                    {
                        Assert.False(text.Contains(TwoCustomers.CanaryA, StringComparison.OrdinalIgnoreCase), $"{Pattern(route)} shows customer A to {email}.");
                    }
                }
            }
        }

        Assert.True(asked >= People.Length * 2 * 10, $"Only {asked} requests were made.");
    }

    // Without this the one above could be green because nobody sees anything.
    [Fact]
    public async Task Owner_OwnVisit_IsSeen()
    {
        using var client = await _host.App.SignedInAsync("a@alder.example");

        var own = await client.GetStringAsync($"/api/v1/visits/{TwoCustomers.VisitA}");
        using var foreign = await client.GetAsync($"/api/v1/visits/{TwoCustomers.VisitB}");

        Assert.Contains(TwoCustomers.CanaryA, own, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, foreign.StatusCode);
    }

    [Fact]
    public async Task Customer_RoutesOfTheFirm_AreNotThere()
    {
        using var client = await _host.App.SignedInAsync("a@alder.example");
        foreach (var route in Gettable().Where(route => route.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(data => data.Policy is Policies.Firm or Policies.Supervisor or Policies.Administrator)))
        {
            using var answer = await client.GetAsync(Fill(Pattern(route), "A", TwoCustomers.VisitA));

            Assert.NotEqual(HttpStatusCode.OK, answer.StatusCode);
        }
    }

    [Theory]
    [InlineData("a@alder.example", HttpStatusCode.Forbidden)]
    [InlineData("technician@quernwath.example", HttpStatusCode.Forbidden)]
    public async Task Import_ByThoseWhoMayNot_IsRefused(string email, HttpStatusCode expected)
    {
        using var client = await _host.App.SignedInAsync(email);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/imports");
        request.Headers.Add("Origin", "https://localhost");
        request.Content = new StringContent("{}", System.Text.Encoding.UTF8, "application/json");

        using var answer = await client.SendAsync(request);

        Assert.Equal(expected, answer.StatusCode);
    }

    private static string Pattern(RouteEndpoint route) => "/" + (route.RoutePattern.RawText ?? string.Empty).TrimStart('/');

    private static string Fill(string pattern, string letter, Guid visit)
    {
        var parts = pattern.Split('/').Select(part => !part.StartsWith('{') ? part : part.ToUpperInvariant() switch
        {
            var name when name.Contains(":GUID", StringComparison.Ordinal) => visit.ToString("D"),
            var name when name.Contains(":INT", StringComparison.Ordinal) => letter == "A" ? "1" : "2",
            var name when name.Contains("SYSTEM", StringComparison.Ordinal) => "CT1",
            var name when name.Contains("SCREEN", StringComparison.Ordinal) => "help",
            var name when name.Contains("CUSTOMER", StringComparison.Ordinal) => "CUS-" + letter,
            _ => "SIT-" + letter,
        });
        return string.Join('/', parts);
    }

    // Pages and calls; files of the frame and the circuit's own addresses carry nobody's records.
    private IEnumerable<RouteEndpoint> Routes() => _host.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        .Where(route => !Pattern(route).StartsWith("/_", StringComparison.Ordinal) && !IsFile(route));

    private static bool IsFile(RouteEndpoint route) =>
        route.Metadata.Any(item => item.GetType().Name.Contains("StaticAsset", StringComparison.Ordinal))
        || Pattern(route).EndsWith(":file}", StringComparison.Ordinal)
        || (Path.HasExtension(Pattern(route)) && !Pattern(route).StartsWith("/api/", StringComparison.Ordinal));

    private IEnumerable<RouteEndpoint> Gettable() => Routes().Where(route =>
        route.Metadata.GetMetadata<HttpMethodMetadata>() is not { } methods || methods.HttpMethods.Contains("GET"));

    public sealed class Started : IAsyncLifetime
    {
        public LogBookWebApp App { get; } = new();

        public Task InitializeAsync() => TwoCustomers.AddAsync(App);

        public async Task DisposeAsync() => await App.DisposeAsync();
    }
}
