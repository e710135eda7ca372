using LogBook.Application.Data;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Application.Accounts;

/// <summary>The rules of accounts, the same for pages and command.</summary>
public static class AccountServices
{
    /// <summary>Adds accounts with their rules and stores.</summary>
    /// <returns>For what a host adds: sign-in, claims, tokens.</returns>
    public static IdentityBuilder AddLogBookAccounts(this IServiceCollection services)
    {
        // OWASP Password Storage: PBKDF2 with HMAC-SHA-512, 210,000 iterations or more.
        services.Configure<PasswordHasherOptions>(hasher => hasher.IterationCount = 220_000);
        return services.AddIdentityCore<LogBookUser>(Rules)
            .AddRoles<IdentityRole<int>>()
            .AddEntityFrameworkStores<LogBookDb>()
            .AddPasswordValidator<CommonPasswords>();
    }

    private static void Rules(IdentityOptions identity)
    {
        identity.User.RequireUniqueEmail = true;
        identity.Lockout.MaxFailedAccessAttempts = 5;
        identity.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(10);

        // Length, not composition (ASVS 5.0, 6.2.5).
        identity.Password.RequiredLength = 12;
        identity.Password.RequireDigit = false;
        identity.Password.RequireLowercase = false;
        identity.Password.RequireUppercase = false;
        identity.Password.RequireNonAlphanumeric = false;
        identity.Password.RequiredUniqueChars = 1;
    }
}
