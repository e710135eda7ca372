using System.CommandLine;
using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Sites;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Cli;

/// <summary>Accounts from the console, for the first day and for the day when nobody can sign in.</summary>
internal static class Users
{
    private static readonly Argument<string> Email = new("email") { Description = "Mail address of the account." };

    /// <summary>The verb with its three acts.</summary>
    public static Command Command() => new("user", "Add, disable or reset an account. Passwords are read from standard input.")
    {
        Add(), Disable(), Reset(),
    };

    private static Command Add()
    {
        var role = new Option<string>("--role") { Description = "What the account may do.", Required = true };
        role.AcceptOnlyFromAmong([.. RoleNames.All.Values]);
        var person = new Option<string?>("--person") { Description = "Code of the person in the set-up." };
        var customer = new Option<string?>("--customer") { Description = "For an account of a customer or of their staff: code of the customer." };
        return Commands.Verb("add", "Add an account.", [Email, role, person, customer], async (session, parsed, cancellationToken) =>
        {
            var chosen = RoleNames.Parse(parsed.GetRequiredValue(role))!.Value;
            var user = new LogBookUser
            {
                UserName = parsed.GetRequiredValue(Email),
                Email = parsed.GetRequiredValue(Email),
                EmailConfirmed = true,
                LockoutEnabled = true,
                PersonCode = parsed.GetValue(person),
            };
            if (chosen is PersonRole.Customer or PersonRole.SiteStaff)
            {
                var code = parsed.GetValue(customer) ?? "";
                user.CustomerId = await session.Get<LogBookStore>().ReadAsync(
                    Session.Self, db => db.Customers.Where(row => row.CodeKey == CodeKeys.Of(code)).Select(row => (int?)row.Id).SingleOrDefaultAsync(cancellationToken), cancellationToken);
                if (user.CustomerId is null)
                {
                    Console.Error.WriteLine(code.Length == 0
                        ? "--customer: an account of a customer or of their staff needs the code of the customer."
                        : $"--customer: there is no customer '{code}'.");
                    return Session.Refused;
                }
            }

            if (user.PersonCode is { } wanted && !(await session.Get<SetUpStore>().FirmAsync(Session.Self, cancellationToken: cancellationToken)).People.ContainsKey(wanted))
            {
                Console.Error.WriteLine($"--person: there is no person '{wanted}'.");
                return Session.Refused;
            }

            await using var scope = session.Scope();
            await RoleNames.AddMissingAsync(scope.ServiceProvider.GetRequiredService<RoleManager<IdentityRole<int>>>());
            var users = scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>();
            var made = await users.CreateAsync(user, ReadPassword());
            if (made.Succeeded)
            {
                made = await users.AddToRoleAsync(user, RoleNames.Of(chosen));
            }

            return await DoneAsync(session, made, user.Email, "account-added", "account added", cancellationToken);
        });
    }

    private static Command Disable() => Change("disable", "Shut an account out; open pages end within a minute.", "account-disabled", "account disabled", (users, user, clock) =>
    {
        user.DisabledAt = clock.GetUtcNow().UtcDateTime;
        return users.UpdateSecurityStampAsync(user);
    });

    private static Command Reset() => Change("reset", "Give an account a new password and let it in again.", "account-reset", "password set", async (users, user, _) =>
    {
        user.DisabledAt = null;
        var password = ReadPassword();
        foreach (var validator in users.PasswordValidators)
        {
            var judged = await validator.ValidateAsync(users, user, password);
            if (!judged.Succeeded)
            {
                return judged;
            }
        }

        user.PasswordHash = users.PasswordHasher.HashPassword(user, password);
        user.LockoutEnd = null;
        return await users.UpdateSecurityStampAsync(user);
    });

    private static Command Change(string name, string description, string act, string said, Func<UserManager<LogBookUser>, LogBookUser, TimeProvider, Task<IdentityResult>> change) =>
        Commands.Verb(name, description, [Email], async (session, parsed, cancellationToken) =>
        {
            await using var scope = session.Scope();
            var users = scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>();
            var email = parsed.GetRequiredValue(Email);
            if (await users.FindByEmailAsync(email) is not { } user)
            {
                Console.Error.WriteLine($"email: there is no account '{email}'.");
                return Session.Refused;
            }

            return await DoneAsync(session, await change(users, user, session.Get<TimeProvider>()), email, act, said, cancellationToken);
        });

    private static async Task<int> DoneAsync(Session session, IdentityResult result, string email, string act, string said, CancellationToken cancellationToken)
    {
        if (!result.Succeeded)
        {
            foreach (var error in result.Errors)
            {
                Console.Error.WriteLine($"{(error.Code.StartsWith("Password", StringComparison.Ordinal) ? "password" : "email")}: {error.Description}");
            }

            return Session.Refused;
        }

        await session.Get<LogBookStore>().WriteAsync(Session.Self, db =>
        {
            db.Audit(new AuditEntry(act, nameof(LogBookUser), email));
            return Task.CompletedTask;
        }, cancellationToken);
        Console.WriteLine($"{email}: {said}.");
        return 0;
    }

    // Not an argument: arguments stand in process lists and shell histories.
    private static string ReadPassword() =>
        Console.IsInputRedirected ? Console.ReadLine() ?? "" : HiddenPrompt.Ask("Password (at least 12 characters, not shown): ", Console.Error, () => Console.ReadKey(intercept: true));
}
