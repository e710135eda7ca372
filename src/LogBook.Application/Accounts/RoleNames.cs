using LogBook.Domain.Sites;
using Microsoft.AspNetCore.Identity;

namespace LogBook.Application.Accounts;

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

    /// <summary>Makes the roles that a database does not have yet.</summary>
    /// <exception cref="InvalidOperationException">A role was refused.</exception>
    public static async Task AddMissingAsync(RoleManager<IdentityRole<int>> roles)
    {
        foreach (var name in All.Values)
        {
            if (!await roles.RoleExistsAsync(name))
            {
                var made = await roles.CreateAsync(new IdentityRole<int>(name));
                if (!made.Succeeded)
                {
                    throw new InvalidOperationException($"The role {name} could not be made: {string.Join("; ", made.Errors.Select(error => error.Description))}");
                }
            }
        }
    }
}
