using System.Globalization;
using System.Security.Claims;
using LogBook.Application.Data;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;

namespace LogBook.Web.Account;

/// <summary>Who a sign-in stands for today: read from the database, since a cookie or an open page may be older than a decision.</summary>
public sealed class ViewerReader(LogBookStore store, IOptions<IdentityOptions> identity)
{
    private static readonly Viewer Asker = Viewer.System("sign-in");

    /// <summary>The viewer of a sign-in; null when it is none, the account is disabled, or its secrets have changed since.</summary>
    public async Task<Viewer?> FindAsync(ClaimsPrincipal principal, CancellationToken cancellationToken = default)
    {
        if (principal.Identity?.IsAuthenticated != true
            || !int.TryParse(principal.FindFirstValue(ClaimTypes.NameIdentifier), NumberStyles.None, CultureInfo.InvariantCulture, out var id))
        {
            return null;
        }

        // A token has no stamp: it is looked up itself with each call.
        var stamp = principal.FindFirstValue(identity.Value.ClaimsIdentity.SecurityStampClaimType);
        var found = await store.ReadAsync(
            Asker,
            db => (from user in db.Users
                   join userRole in db.UserRoles on user.Id equals userRole.UserId
                   join role in db.Roles on userRole.RoleId equals role.Id
                   where user.Id == id && user.DisabledAt == null && (stamp == null || user.SecurityStamp == stamp)
                   select new { user.UserName, user.PersonCode, user.Language, user.CustomerId, Role = role.Name })
                .FirstOrDefaultAsync(cancellationToken),
            cancellationToken);
        if (found is null || RoleNames.Parse(found.Role) is not { } viewerRole)
        {
            return null;
        }

        var viewer = new Viewer(id, found.UserName ?? string.Empty, found.PersonCode, viewerRole, null, found.Language);
        return viewer.IsOfFirm ? viewer : viewer with { CustomerIds = found.CustomerId is { } customer ? [customer] : [] };
    }
}
