using System.Net;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Account;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace LogBook.Web.Tests.Account;

public sealed class SignInTests : IClassFixture<SignInTests.Started>
{
    private readonly Started _host;

    public SignInTests(Started host) => _host = host;

    [Fact]
    [Trait("goal", "S3")]
    public async Task SignIn_RightPassword_SetsAGuardedCookie()
    {
        using var client = _host.App.CreateClient();

        using var answer = await LogBookWebApp.PostFormAsync(
            client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = Started.Technician, ["Given.Password"] = LogBookWebApp.Password });

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single(value => value.StartsWith(SignInCookie.Name + "=", StringComparison.Ordinal));
        Assert.Contains("; secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("; httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("; samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("; path=/", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData(Started.Technician, "not the password at all")]
    [InlineData("nobody@quernwath.example", LogBookWebApp.Password)]
    [InlineData(Started.Disabled, LogBookWebApp.Password)]
    public async Task SignIn_WrongOrDisabled_SaysTheSameAndSetsNoCookie(string email, string password)
    {
        using var client = _host.App.CreateClient();

        using var answer = await LogBookWebApp.PostFormAsync(
            client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = email, ["Given.Password"] = password });

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(WebUtility.HtmlEncode(AccountTexts.WrongSignIn.En), await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(answer.Headers.TryGetValues("Set-Cookie", out var cookies) && cookies.Any(cookie => cookie.StartsWith(SignInCookie.Name, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task SignIn_AfterFiveWrongTries_RightPasswordIsRefused()
    {
        using var client = _host.App.CreateClient();
        for (var time = 0; time < 5; time++)
        {
            using var wrong = await LogBookWebApp.PostFormAsync(
                client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = Started.Locked, ["Given.Password"] = "not the password at all" });
        }

        using var answer = await LogBookWebApp.PostFormAsync(
            client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = Started.Locked, ["Given.Password"] = LogBookWebApp.Password });

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public void Hashing_Iterations_AreAtLeast220000()
    {
        Assert.True(_host.App.Services.GetRequiredService<IOptions<PasswordHasherOptions>>().Value.IterationCount >= 220_000);

        var hash = Convert.FromBase64String(new PasswordHasher<LogBookUser>(_host.App.Services.GetRequiredService<IOptions<PasswordHasherOptions>>()).HashPassword(new(), LogBookWebApp.Password));

        // Format 3 of the framework: marker, function (2 = HMAC-SHA-512), iterations; big endian.
        Assert.Equal(1, hash[0]);
        Assert.Equal(2u, System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(1)));
        Assert.True(System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(5)) >= 220_000);
    }

    [Theory]
    [InlineData("es-MX,es;q=0.9", null, "es", "Iniciar sesión")]
    [InlineData("pt-BR", null, "pt", "Entrar")]
    [InlineData("de, fr;q=0.5", null, "en", "Sign in")]
    [InlineData("es", "pt", "pt", "Entrar")]
    [Trait("goal", "U6")]
    public async Task SignInPage_Language_FollowsDeviceThenBrowser(string accept, string? cookie, string code, string title)
    {
        using var client = _host.App.CreateClient();
        client.DefaultRequestHeaders.Add("Accept-Language", accept);
        if (cookie is not null)
        {
            client.DefaultRequestHeaders.Add("Cookie", "logbook-language=" + cookie);
        }

        var page = WebUtility.HtmlDecode(await client.GetStringAsync("/account/sign-in"));

        Assert.Contains($"<html lang=\"{code}\"", page, StringComparison.Ordinal);
        Assert.Contains($">{title}</h1>", page, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U6")]
    public async Task Language_OfTheAccount_GoesBeforeTheBrowser()
    {
        using var client = await _host.App.SignedInAsync(Started.Spanish);
        client.DefaultRequestHeaders.Add("Accept-Language", "en");

        var page = await client.GetStringAsync("/account");

        Assert.Contains("<html lang=\"es\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ChangePassword_OtherDevice_IsShutOut()
    {
        using var here = await _host.App.SignedInAsync(Started.Changing);
        using var scope = _host.App.Services.CreateScope();
        var reader = _host.App.Services.GetRequiredService<ViewerReader>();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>();
        var claims = scope.ServiceProvider.GetRequiredService<IUserClaimsPrincipalFactory<LogBookUser>>();
        var elsewhere = await claims.CreateAsync((await users.FindByEmailAsync(Started.Changing))!);
        Assert.NotNull(await reader.FindAsync(elsewhere));

        using var answer = await LogBookWebApp.PostFormAsync(here, "/account", "password", new()
        {
            ["Passwords.Old"] = LogBookWebApp.Password,
            ["Passwords.New"] = "drift and fill and basin",
            ["Passwords.Again"] = "drift and fill and basin",
        });

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Null(await reader.FindAsync(elsewhere));
        using var stillHere = await here.GetAsync("/account");
        Assert.Equal(HttpStatusCode.OK, stillHere.StatusCode);
    }

    [Theory]
    [InlineData("//evil.example", "/")]
    [InlineData("/\\evil.example", "/")]
    [InlineData("https://evil.example", "/")]
    [InlineData("/visits?state=open", "/visits?state=open")]
    [InlineData("/account/sign-in", "/")]
    [InlineData(null, "/")]
    public void LocalPath_Address_StaysHere(string? given, string expected) => Assert.Equal(expected, LocalPath.Of(given));

    public sealed class Started : IAsyncLifetime
    {
        public const string Technician = "r.yaffle@quernwath.example";
        public const string Disabled = "t.nurle@quernwath.example";
        public const string Locked = "p.umber@quernwath.example";
        public const string Spanish = "i.wendle@quernwath.example";
        public const string Changing = "j.snell@quernwath.example";

        public LogBookWebApp App { get; } = new();

        public async Task InitializeAsync()
        {
            await App.AddFirmAsync();
            await App.AddUserAsync(Technician, PersonRole.Technician);
            await App.AddUserAsync(Disabled, PersonRole.Technician);
            await App.AddUserAsync(Locked, PersonRole.Technician);
            await App.AddUserAsync(Spanish, PersonRole.Supervisor, language: Language.Spanish);
            await App.AddUserAsync(Changing, PersonRole.Administrator);
            await Revocation.DisableAsync(App, Disabled);
        }

        public async Task DisposeAsync() => await App.DisposeAsync();
    }
}
