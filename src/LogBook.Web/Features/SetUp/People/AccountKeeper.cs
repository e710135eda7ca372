using System.Text;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Account;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Features.SetUp.People;

/// <summary>
/// Accounts, for administrators alone. Each act takes a scope of its own: the account store keeps what it has read, and an open page
/// would otherwise go on with what stood there when it was opened.
/// </summary>
public sealed class AccountKeeper(IServiceScopeFactory scopes, LogBookStore store, TimeProvider clock)
{
    /// <summary>All accounts, by address; none for a viewer who is no administrator.</summary>
    public async Task<IReadOnlyList<AccountView>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!MayKeep(viewer))
        {
            return [];
        }

        var rows = await store.ReadAsync(
            viewer,
            db => (from user in db.Users
                   join userRole in db.UserRoles on user.Id equals userRole.UserId
                   join role in db.Roles on userRole.RoleId equals role.Id
                   orderby user.NormalizedEmail
                   select new
                   {
                       user.Id,
                       user.Email,
                       user.PersonCode,
                       Role = role.Name,
                       Customer = db.Customers.Where(row => row.Id == user.CustomerId).Select(row => row.Code).FirstOrDefault(),
                       user.Language,
                       user.DisabledAt,
                       HasPassword = user.PasswordHash != null,
                   }).ToListAsync(cancellationToken),
            cancellationToken);
        return [.. rows.Select(row => new AccountView(row.Id, row.Email ?? "", row.PersonCode, RoleNames.Parse(row.Role) ?? PersonRole.Customer, row.Customer, row.Language, row.DisabledAt, row.HasPassword))];
    }

    /// <summary>Makes or changes an account. A change of role, customer or address ends its open pages.</summary>
    public Task<AccountAnswer> SaveAsync(Viewer viewer, AccountChange change, CancellationToken cancellationToken = default) =>
        WithUsersAsync(viewer, async users =>
        {
            var (problems, customerId) = await CheckAsync(viewer, change, cancellationToken);
            if (problems.Count > 0)
            {
                return new AccountAnswer(problems);
            }

            var user = change.Id is { } id ? await users.FindByIdAsync(id.ToString(System.Globalization.CultureInfo.InvariantCulture)) : new LogBookUser();
            if (user is null)
            {
                return Refused(viewer, PeopleTexts.NoAccount);
            }

            var role = change.Role!.Value;
            var before = change.Id is null ? null : RoleNames.Parse((await users.GetRolesAsync(user)).FirstOrDefault());
            if (before == PersonRole.Administrator && role != PersonRole.Administrator && await IsLastAdministratorAsync(viewer, user.Id, cancellationToken))
            {
                return Refused(viewer, PeopleTexts.LastAdministrator);
            }

            var email = change.Email.Trim();
            user.UserName = email;
            user.Email = email;
            user.EmailConfirmed = true;
            user.LockoutEnabled = true;
            user.PersonCode = change.Person;
            user.CustomerId = customerId;
            user.Language = change.Language;
            var result = change.Id is null ? await users.CreateAsync(user) : await users.UpdateAsync(user);
            if (result.Succeeded && before != role)
            {
                result = before is { } old ? await users.RemoveFromRoleAsync(user, RoleNames.Of(old)) : result;
                result = result.Succeeded ? await users.AddToRoleAsync(user, RoleNames.Of(role)) : result;
            }

            if (result.Succeeded && change.Id is not null)
            {
                result = await users.UpdateSecurityStampAsync(user);
            }

            if (!result.Succeeded)
            {
                return new AccountAnswer(Say(result, viewer.Language, email));
            }

            await NoteAsync(viewer, change.Id is null ? AuditActs.Added : AuditActs.Changed, email, $"{RoleNames.Of(role)} {change.Customer}".Trim(), cancellationToken);
            return new AccountAnswer([], user.Id);
        });

    /// <summary>Sets a password; its holder signs in with it and may change it.</summary>
    public Task<AccountAnswer> SetPasswordAsync(Viewer viewer, int id, string password, CancellationToken cancellationToken = default) =>
        WithUserAsync(viewer, id, async (users, user) =>
        {
            if (password.Length > PasswordEntry.Longest)
            {
                return Refused(viewer, AccountTexts.PasswordLong);
            }

            var result = await users.ResetPasswordAsync(user, await users.GeneratePasswordResetTokenAsync(user), password);
            if (!result.Succeeded)
            {
                return new AccountAnswer(Say(result, viewer.Language, user.Email!));
            }

            await users.SetLockoutEndDateAsync(user, null);
            await NoteAsync(viewer, AuditActs.Changed, user.Email!, "password set", cancellationToken);
            return new AccountAnswer([], id);
        });

    /// <summary>Makes the secret part of a link with which its holder sets a password once, within a day.</summary>
    public Task<AccountAnswer> InviteAsync(Viewer viewer, int id, CancellationToken cancellationToken = default) =>
        WithUserAsync(viewer, id, async (users, user) =>
        {
            // A new stamp makes earlier links worthless, so that only one is open at a time.
            await users.UpdateSecurityStampAsync(user);
            var token = await users.GeneratePasswordResetTokenAsync(user);
            await NoteAsync(viewer, AuditActs.Changed, user.Email!, "invited", cancellationToken);
            return new AccountAnswer([], id, WebEncoders.Base64UrlEncode(Encoding.UTF8.GetBytes(token)));
        });

    /// <summary>Shuts an account out, or lets it in again.</summary>
    public Task<AccountAnswer> SetDisabledAsync(Viewer viewer, int id, bool disable, CancellationToken cancellationToken = default) =>
        WithUserAsync(viewer, id, async (users, user) =>
        {
            if (disable && (id == viewer.UserId || await IsLastAdministratorAsync(viewer, id, cancellationToken)))
            {
                return Refused(viewer, id == viewer.UserId ? PeopleTexts.NotYourself : PeopleTexts.LastAdministrator);
            }

            user.DisabledAt = disable ? Utc.Now(clock) : null;
            var result = await users.UpdateSecurityStampAsync(user);
            if (!result.Succeeded)
            {
                return new AccountAnswer(Say(result, viewer.Language, user.Email!));
            }

            await NoteAsync(viewer, disable ? AuditActs.Retired : AuditActs.Restored, user.Email!, null, cancellationToken);
            return new AccountAnswer([], id);
        });

    /// <summary>Sets the password of an invitation.</summary>
    /// <param name="id">Account.</param>
    /// <param name="token">Secret part of the link.</param>
    /// <param name="password">New password.</param>
    /// <param name="language">Language of the answers.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<AccountAnswer> AcceptAsync(int id, string? token, string password, Language language, CancellationToken cancellationToken = default)
    {
        await using var scope = scopes.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>();
        var user = await users.FindByIdAsync(id.ToString(System.Globalization.CultureInfo.InvariantCulture));
        if (user is null || user.DisabledAt is not null || Decoded(token) is not { } plain)
        {
            return new AccountAnswer([PeopleTexts.LinkOver.In(language)]);
        }

        var result = await users.ResetPasswordAsync(user, plain, password);
        if (!result.Succeeded)
        {
            var isOver = result.Errors.Any(error => error.Code == nameof(IdentityErrorDescriber.InvalidToken));
            return new AccountAnswer(isOver ? [PeopleTexts.LinkOver.In(language)] : AccountErrors.Say(result.Errors, language));
        }

        await users.SetLockoutEndDateAsync(user, null);
        await NoteAsync(Viewer.System(user.Email!), AuditActs.Changed, user.Email!, "invitation used", cancellationToken);
        return new AccountAnswer([], id);
    }

    private static bool MayKeep(Viewer viewer) => viewer.Role == PersonRole.Administrator;

    private static AccountAnswer Refused(Viewer viewer, Text why) => new([why.In(viewer.Language)]);

    private static string? Decoded(string? token)
    {
        try
        {
            return string.IsNullOrEmpty(token) ? null : Encoding.UTF8.GetString(WebEncoders.Base64UrlDecode(token));
        }
        catch (FormatException)
        {
            // Cut off in a mail program: no different from a link that is over.
            return null;
        }
    }

    private static IReadOnlyList<string> Say(IdentityResult result, Language language, string email) =>
        result.Errors.Any(error => error.Code is nameof(IdentityErrorDescriber.DuplicateEmail) or nameof(IdentityErrorDescriber.DuplicateUserName))
            ? [PeopleTexts.EmailTaken.In(language, email)]
            : AccountErrors.Say(result.Errors, language);

    private async Task<AccountAnswer> WithUsersAsync(Viewer viewer, Func<UserManager<LogBookUser>, Task<AccountAnswer>> act)
    {
        if (!MayKeep(viewer))
        {
            return Refused(viewer, SetUpTexts.NotAllowed);
        }

        await using var scope = scopes.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>());
    }

    private Task<AccountAnswer> WithUserAsync(Viewer viewer, int id, Func<UserManager<LogBookUser>, LogBookUser, Task<AccountAnswer>> act) =>
        WithUsersAsync(viewer, async users => await users.FindByIdAsync(id.ToString(System.Globalization.CultureInfo.InvariantCulture)) is { } user
            ? await act(users, user)
            : Refused(viewer, PeopleTexts.NoAccount));

    private async Task<(List<string> Problems, int? CustomerId)> CheckAsync(Viewer viewer, AccountChange change, CancellationToken cancellationToken)
    {
        var problems = new List<string>();
        if (!change.Email.Contains('@', StringComparison.Ordinal))
        {
            problems.Add(PeopleTexts.EmailNeeded.In(viewer.Language, change.Email));
        }

        if (change.Role is not { } role)
        {
            problems.Add(PeopleTexts.RoleNeeded.In(viewer.Language));
            return (problems, null);
        }

        if (role is not (PersonRole.Customer or PersonRole.SiteStaff))
        {
            return (problems, null);
        }

        var key = CodeKeys.Of(change.Customer ?? "");
        var customerId = await store.ReadAsync(viewer, db => db.Customers.Where(row => row.CodeKey == key).Select(row => (int?)row.Id).FirstOrDefaultAsync(cancellationToken), cancellationToken);
        if (customerId is null)
        {
            problems.Add(PeopleTexts.CustomerNeeded.In(viewer.Language));
        }

        return (problems, customerId);
    }

    private async Task<bool> IsLastAdministratorAsync(Viewer viewer, int id, CancellationToken cancellationToken)
    {
        var open = (await ListAsync(viewer, cancellationToken)).Where(account => account is { Role: PersonRole.Administrator, DisabledAt: null }).ToList();
        return open.Count == 1 && open[0].Id == id;
    }

    private Task NoteAsync(Viewer viewer, string act, string email, string? what, CancellationToken cancellationToken) => store.WriteAsync(
        viewer,
        db =>
        {
            db.Audit(new AuditEntry(act, "Account", email, New: what));
            return Task.CompletedTask;
        },
        cancellationToken);
}
