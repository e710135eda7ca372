using System.Net;
using LogBook.Web.Security;
using LogBook.Web.Tests.Hosting;

namespace LogBook.Web.Tests.Security;

[Trait("goal", "S3")]
public sealed class SecurityHeadersTests : IClassFixture<SecurityHeadersTests.Started>
{
    private readonly Started _host;

    public SecurityHeadersTests(Started host) => _host = host;

    // One of each class of answer: page, redirect, refusal, absence, file, script, program's answer, health.
    [Theory]
    [InlineData("/account/sign-in", HttpStatusCode.OK)]
    [InlineData("/help", HttpStatusCode.OK)]
    [InlineData("/tokens", HttpStatusCode.Redirect)]
    [InlineData("/no-such-page", HttpStatusCode.Redirect)]
    [InlineData("/account/not-here", HttpStatusCode.NotFound)]
    [InlineData("/app.css", HttpStatusCode.OK)]
    [InlineData("/frame.js", HttpStatusCode.OK)]
    [InlineData("/_content/MudBlazor/MudBlazor.min.css", HttpStatusCode.OK)]
    [InlineData("/_framework/blazor.web.js", HttpStatusCode.OK)]
    [InlineData("/api/v1/export", HttpStatusCode.Unauthorized)]
    [InlineData("/api/v1/no-such-call", HttpStatusCode.Unauthorized)]
    [InlineData("/api/v1/openapi.json", HttpStatusCode.OK)]
    [InlineData("/health/live", HttpStatusCode.OK)]
    [InlineData("/health/ready", HttpStatusCode.OK)]
    public async Task Get_EveryClassOfAnswer_HasTheHeaders(string path, HttpStatusCode expected)
    {
        using var client = _host.App.CreateClient();

        using var answer = await client.GetAsync(path);

        Assert.Equal(expected, answer.StatusCode);
        AssertHeaders(answer);
    }

    [Fact]
    public async Task Post_WithoutFormToken_IsRefusedWithTheHeaders()
    {
        using var client = _host.App.CreateClient();
        using var form = new FormUrlEncodedContent(new Dictionary<string, string> { ["_handler"] = "sign-in", ["Given.Email"] = "a@b.example", ["Given.Password"] = "x" });

        using var answer = await client.PostAsync("/account/sign-in", form);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        AssertHeaders(answer);
    }

    [Fact]
    public void PagePolicy_Scripts_AllowNothingInline()
    {
        var scripts = SecurityHeaders.PagePolicy.Split(';').Single(part => part.Trim().StartsWith("script-src", StringComparison.Ordinal));

        Assert.Equal("script-src 'self'", scripts.Trim());
        Assert.DoesNotContain("unsafe-eval'", SecurityHeaders.CapturePolicy.Replace("'wasm-unsafe-eval'", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/account/sign-in")]
    [InlineData("/help")]
    public async Task Page_Markup_HasNoInlineScriptAndNothingFromElsewhere(string path)
    {
        using var client = _host.App.CreateClient();

        var page = await client.GetStringAsync(path);

        Assert.DoesNotMatch("<script(?![^>]*\\ssrc=)[^>]*>", page);
        Assert.DoesNotMatch("\\son[a-z]+=\"", page);
        Assert.DoesNotMatch("(src|href)=\"(https?:)?//", page);
    }

    private static void AssertHeaders(HttpResponseMessage answer)
    {
        Assert.Equal([SecurityHeaders.PagePolicy], answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["DENY"], answer.Headers.GetValues("X-Frame-Options"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Referrer-Policy"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Opener-Policy"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Resource-Policy"));
        Assert.Contains("camera=(self)", answer.Headers.GetValues("Permissions-Policy").Single(), StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Server"));
    }

    public sealed class Started : IAsyncLifetime
    {
        public LogBookWebApp App { get; } = new();

        public Task InitializeAsync() => App.AddFirmAsync();

        public async Task DisposeAsync() => await App.DisposeAsync();
    }
}
