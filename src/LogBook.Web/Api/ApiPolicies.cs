using LogBook.Application.Tokens;
using LogBook.Domain.Sites;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Authorization;

namespace LogBook.Web.Api;

/// <summary>Who may call what: the role decides, and for a token its scope as well.</summary>
public static class ApiPolicies
{
    /// <summary>Read what one's role sees.</summary>
    public const string Read = "api-read";

    /// <summary>Read what technicians and supervisors see.</summary>
    public const string FirmRead = "api-firm-read";

    /// <summary>Hand in visits and photos.</summary>
    public const string Visits = "api-visits";

    /// <summary>Import documents.</summary>
    public const string Import = "api-import";

    /// <summary>Register a tablet: a person who signed in on it, never a program with a token.</summary>
    public const string Tablets = "api-tablets";

    private static readonly PersonRole[] Firm = [PersonRole.Technician, PersonRole.Supervisor, PersonRole.Administrator];

    /// <summary>Adds the policies.</summary>
    public static void Add(AuthorizationOptions options)
    {
        options.AddPolicy(Read, Of(TokenScopes.Read, [.. RoleNames.All.Keys]));
        options.AddPolicy(FirmRead, Of(TokenScopes.Read, Firm));
        options.AddPolicy(Visits, Of(TokenScopes.Visits, Firm));
        options.AddPolicy(Tablets, new AuthorizationPolicyBuilder()
            .RequireAuthenticatedUser()
            .RequireRole(Firm.Select(RoleNames.Of))
            .RequireAssertion(context => context.User.Identity?.AuthenticationType != TokenHandler.SchemeName)
            .Build());
        options.AddPolicy(Import, Of(TokenScopes.Import, [PersonRole.Supervisor, PersonRole.Administrator]));
    }

    private static AuthorizationPolicy Of(string scope, PersonRole[] roles) => new AuthorizationPolicyBuilder()
        .RequireAuthenticatedUser()
        .RequireRole(roles.Select(RoleNames.Of))
        .RequireAssertion(context => context.User.Identity?.AuthenticationType != TokenHandler.SchemeName || context.User.HasClaim(TokenHandler.ScopeClaim, scope))
        .Build();
}
