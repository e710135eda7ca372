using LogBook.Domain.Sites;

namespace LogBook.Web.Security;

/// <summary>Names of the roles in accounts: the words of the exchange format.</summary>
public static class RoleNames
{
    /// <summary>Every role an account can have, with its name.</summary>
    public static IReadOnlyDictionary<PersonRole, string> All { get; } = new Dictionary<PersonRole, string>
    {
        [PersonRole.Technician] = "technician",
        [PersonRole.Supervisor] = "supervisor",
        [PersonRole.Administrator] = "administrator",
        [PersonRole.Customer] = "customer",
        [PersonRole.SiteStaff] = "site-staff",
    };

    /// <summary>Name of a role.</summary>
    public static string Of(PersonRole role) => All[role];

    /// <summary>The role of a name, or null.</summary>
    public static PersonRole? Parse(string? name) =>
        All.Where(pair => string.Equals(pair.Value, name, StringComparison.Ordinal)).Select(pair => (PersonRole?)pair.Key).FirstOrDefault();
}
