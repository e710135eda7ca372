using LogBook.Domain.Sites;
using Microsoft.AspNetCore.Authorization;

namespace LogBook.Web.Security;

/// <summary>Who may open a page or call an address. Every route names one of these or says that it is open to all.</summary>
public static class Policies
{
    /// <summary>Anybody with an account.</summary>
    public const string SignedIn = "signed-in";

    /// <summary>Works for the firm: technician, supervisor, administrator.</summary>
    public const string Firm = "firm";

    /// <summary>Looks after all sites: supervisor, administrator.</summary>
    public const string Supervisor = "supervisor";

    /// <summary>Keeps people and the installation.</summary>
    public const string Administrator = "administrator";

    /// <summary>Adds the policies; a route that names none is refused to people who are not signed in.</summary>
    public static void Add(AuthorizationOptions options)
    {
        var signedIn = new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build();
        options.FallbackPolicy = signedIn;
        options.AddPolicy(SignedIn, signedIn);
        options.AddPolicy(Firm, Roles(PersonRole.Technician, PersonRole.Supervisor, PersonRole.Administrator));
        options.AddPolicy(Supervisor, Roles(PersonRole.Supervisor, PersonRole.Administrator));
        options.AddPolicy(Administrator, Roles(PersonRole.Administrator));
    }

    private static AuthorizationPolicy Roles(params PersonRole[] roles) =>
        new AuthorizationPolicyBuilder().RequireAuthenticatedUser().RequireRole(roles.Select(RoleNames.Of)).Build();
}
