using LogBook.Application.Tokens;
using LogBook.Domain.Sites;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Authorization;

namespace LogBook.Web.Api;

/// <summary>Who may call what: the role decides, and for a token its scope as well.</summary>
public static class ApiPolicies
{
    /// <summary>Read single visits that one's role sees.</summary>
    public const string Read = "api-read";

    /// <summary>Read what technicians and supervisors see.</summary>
    public const string FirmRead = "api-firm-read";

    /// <summary>Bring a round onto a tablet: what those see who work for the firm.</summary>
    public const string Round = "api-round";

    /// <summary>Hand in visits and photos.</summary>
    public const string Visits = "api-visits";

    /// <summary>Import documents.</summary>
    public const string Import = "api-import";

    /// <summary>Register a tablet: a person who signed in on it, never a program with a token.</summary>
    public const string Tablets = "api-tablets";

    /// <summary>Keep and ask for the second key to the drafts of a tablet: its person, on the tablet.</summary>
    public const string TabletKeys = "api-tablet-keys";

    private static readonly PersonRole[] Firm = [PersonRole.Technician, PersonRole.Supervisor, PersonRole.Administrator];

    /// <summary>Adds the policies.</summary>
    public static void Add(AuthorizationOptions options)
    {
        options.AddPolicy(Read, Of([.. RoleNames.All.Keys], TokenScopes.Read, TokenScopes.Tablet));
        options.AddPolicy(FirmRead, Of(Firm, TokenScopes.Read));
        options.AddPolicy(Round, Of(Firm, TokenScopes.Read, TokenScopes.Tablet));
        options.AddPolicy(Visits, Of(Firm, TokenScopes.Visits));
        options.AddPolicy(TabletKeys, Of(Firm, TokenScopes.Tablet));
        options.AddPolicy(Tablets, new AuthorizationPolicyBuilder()
            .RequireAuthenticatedUser()
            .RequireRole(Firm.Select(RoleNames.Of))
            .RequireAssertion(context => context.User.Identity?.AuthenticationType != TokenHandler.SchemeName)
            .Build());
        options.AddPolicy(Import, Of([PersonRole.Supervisor, PersonRole.Administrator], TokenScopes.Import));
    }

    private static AuthorizationPolicy Of(PersonRole[] roles, params string[] scopes) => new AuthorizationPolicyBuilder()
        .RequireAuthenticatedUser()
        .RequireRole(roles.Select(RoleNames.Of))
        .RequireAssertion(context => context.User.Identity?.AuthenticationType != TokenHandler.SchemeName || scopes.Any(scope => context.User.HasClaim(TokenHandler.ScopeClaim, scope)))
        .Build();
}
