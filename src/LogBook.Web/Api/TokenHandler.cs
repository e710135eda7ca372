using System.Globalization;
using System.Security.Claims;
using System.Text.Encodings.Web;
using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Authentication;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;

namespace LogBook.Web.Api;

/// <summary>Signs a program in by the personal access token it sends.</summary>
public sealed class TokenHandler(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory loggers, UrlEncoder encoder, TokenStore tokens, LogBookStore store)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, loggers, encoder)
{
    /// <summary>Name of the scheme.</summary>
    public const string SchemeName = "token";

    /// <summary>Claim with a scope.</summary>
    public const string ScopeClaim = "logbook:scope";

    private const string Bearer = "Bearer ";
    private static readonly Viewer Asker = Viewer.System("token");

    /// <summary>Whether a request sends a token.</summary>
    public static bool IsSent(HttpRequest request) => request.Headers.Authorization.ToString().StartsWith(Bearer, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc />
    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (!IsSent(Request))
        {
            return AuthenticateResult.NoResult();
        }

        var text = Request.Headers.Authorization.ToString()[Bearer.Length..].Trim();
        if (await tokens.FindAsync(Asker, text, Context.RequestAborted) is not { } use)
        {
            return AuthenticateResult.Fail("The token is unknown, revoked or too old.");
        }

        var role = await store.ReadAsync(
            Asker,
            db => (from user in db.Users
                   join userRole in db.UserRoles on user.Id equals userRole.UserId
                   join named in db.Roles on userRole.RoleId equals named.Id
                   where user.Id == use.UserId && user.DisabledAt == null
                   select named.Name).FirstOrDefaultAsync(Context.RequestAborted),
            Context.RequestAborted);
        if (RoleNames.Parse(role) is null)
        {
            return AuthenticateResult.Fail("The account of the token may not be used.");
        }

        var identity = new ClaimsIdentity(SchemeName);
        identity.AddClaim(new Claim(ClaimTypes.NameIdentifier, use.UserId.ToString(CultureInfo.InvariantCulture)));
        identity.AddClaim(new Claim(ClaimTypes.Role, role!));
        identity.AddClaims(use.Scopes.Select(scope => new Claim(ScopeClaim, scope)));
        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), SchemeName));
    }

    /// <inheritdoc />
    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.StatusCode = StatusCodes.Status401Unauthorized;
        Response.Headers.WWWAuthenticate = "Bearer";
        return Task.CompletedTask;
    }
}
