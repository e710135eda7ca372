using LogBook.Application.Data;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace LogBook.Web.Account;

/// <summary>Refuses disabled accounts at sign-in and whenever a cookie is looked at again.</summary>
public sealed class LogBookSignIn(
    UserManager<LogBookUser> users,
    IHttpContextAccessor http,
    IUserClaimsPrincipalFactory<LogBookUser> claims,
    IOptions<IdentityOptions> options,
    ILogger<SignInManager<LogBookUser>> logger,
    IAuthenticationSchemeProvider schemes,
    IUserConfirmation<LogBookUser> confirmation)
    : SignInManager<LogBookUser>(users, http, claims, options, logger, schemes, confirmation)
{
    /// <inheritdoc />
    public override async Task<bool> CanSignInAsync(LogBookUser user) => user.DisabledAt is null && await base.CanSignInAsync(user);

    /// <inheritdoc />
    public override async Task<bool> ValidateSecurityStampAsync(LogBookUser? user, string? securityStamp) =>
        user?.DisabledAt is null && await base.ValidateSecurityStampAsync(user, securityStamp);
}
