using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;

namespace LogBook.Web.Account;

/// <summary>Looks again at the sign-in of each open page, so that a disabled account is out within a minute.</summary>
public sealed class CircuitRevalidation(ILoggerFactory loggers, ViewerReader reader) : RevalidatingServerAuthenticationStateProvider(loggers)
{
    /// <inheritdoc />
    protected override TimeSpan RevalidationInterval => TimeSpan.FromSeconds(30);

    /// <inheritdoc />
    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState authenticationState, CancellationToken cancellationToken) =>
        await reader.FindAsync(authenticationState.User, cancellationToken) is not null;
}
