using System.Net;
using System.Security.Claims;
using LogBook.Application.Data;
using LogBook.Domain.Sites;
using LogBook.Web.Account;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using Microsoft.Extensions.Time.Testing;

namespace LogBook.Web.Tests.Account;

[Trait("goal", "S4")]
public sealed class RevocationTests
{
    private const string Email = "r.yaffle@quernwath.example";

    [Fact]
    public async Task Disabled_OpenPage_IsRefusedAtItsNextActAfterTenSeconds()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2027, 1, 1, 8, 0, 0, TimeSpan.Zero));
        await using var app = new LogBookWebApp();
        await app.AddFirmAsync();
        await app.AddUserAsync(Email, PersonRole.Technician);
        var viewers = new ViewerProvider(new Fixed(await PrincipalAsync(app)), app.Services.GetRequiredService<ViewerReader>(), clock);
        Assert.Equal(Email, (await viewers.GetAsync()).Who);

        await Revocation.DisableAsync(app, Email);
        clock.Advance(TimeSpan.FromSeconds(10));

        await Assert.ThrowsAsync<SignedOutException>(() => viewers.GetAsync());
    }

    [Fact]
    public async Task Disabled_Cookie_IsRefusedWithinAMinute()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2027, 1, 1, 8, 0, 0, TimeSpan.Zero));
        await using var app = new LogBookWebApp(clock: clock);
        await app.AddFirmAsync();
        await app.AddUserAsync(Email, PersonRole.Technician);
        using var client = await app.SignedInAsync(Email);
        using var before = await client.GetAsync("/account");
        Assert.Equal(HttpStatusCode.OK, before.StatusCode);

        await Revocation.DisableAsync(app, Email);
        clock.Advance(TimeSpan.FromSeconds(60));

        using var after = await client.GetAsync("/account");
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
        Assert.StartsWith("/account/sign-in", after.Headers.Location!.PathAndQuery, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_StampAndCircuit_AreLookedAtWithinAMinute()
    {
        await using var app = new LogBookWebApp();

        Assert.True(app.Services.GetRequiredService<IOptions<SecurityStampValidatorOptions>>().Value.ValidationInterval <= TimeSpan.FromMinutes(1));
        using var scope = app.Services.CreateScope();
        Assert.IsType<CircuitRevalidation>(scope.ServiceProvider.GetRequiredService<AuthenticationStateProvider>());
    }

    private static async Task<ClaimsPrincipal> PrincipalAsync(LogBookWebApp app)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var user = await scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>().FindByEmailAsync(Email);
        return await scope.ServiceProvider.GetRequiredService<IUserClaimsPrincipalFactory<LogBookUser>>().CreateAsync(user!);
    }

    private sealed class Fixed(ClaimsPrincipal user) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(user));
    }
}
