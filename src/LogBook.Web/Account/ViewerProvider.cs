using LogBook.Application.Data;
using Microsoft.AspNetCore.Components.Authorization;

namespace LogBook.Web.Account;

/// <summary>
/// The viewer at this page. Pages ask before each reading and each act, never keep the answer: a person who was shut out
/// a minute ago must not go on through a page that is still open.
/// </summary>
public sealed class ViewerProvider(AuthenticationStateProvider signIn, ViewerReader reader, TimeProvider clock)
{
    private static readonly TimeSpan KeptFor = TimeSpan.FromSeconds(10);
    private Viewer? _viewer;
    private long _readAt;

    /// <summary>The viewer.</summary>
    /// <exception cref="SignedOutException">Nobody is signed in, or the account may not be used any more.</exception>
    public async Task<Viewer> GetAsync(CancellationToken cancellationToken = default)
    {
        if (_viewer is not null && clock.GetElapsedTime(_readAt) < KeptFor)
        {
            return _viewer;
        }

        var state = await signIn.GetAuthenticationStateAsync();
        _viewer = await reader.FindAsync(state.User, cancellationToken);
        _readAt = clock.GetTimestamp();
        return _viewer ?? throw new SignedOutException();
    }
}
