using System.Security.Claims;
using LogBook.Application.Data;
using LogBook.Web.Components;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace LogBook.Web.Account;

/// <summary>What a sign-in cookie says beside name and role: the language, so that the first answer is in it.</summary>
public sealed class LogBookClaims(
    UserManager<LogBookUser> users, RoleManager<IdentityRole<int>> roles, IOptions<IdentityOptions> options)
    : UserClaimsPrincipalFactory<LogBookUser, IdentityRole<int>>(users, roles, options)
{
    /// <inheritdoc />
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(LogBookUser user)
    {
        var identity = await base.GenerateClaimsAsync(user);
        identity.AddClaim(new Claim(LanguageCodes.Claim, LanguageCodes.Of(user.Language)));
        return identity;
    }
}
