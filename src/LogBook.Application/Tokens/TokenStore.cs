using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tokens;

/// <summary>Personal access tokens: 256 random bits, of which only the hash is kept. Such a secret needs no slow hash.</summary>
public sealed class TokenStore(LogBookStore store, TimeProvider clock)
{
    /// <summary>Begins every token, so that a leaked one is recognised.</summary>
    public const string Prefix = "logbook_";

    /// <summary>Longest life of a token.</summary>
    public const int MostDays = 365;

    private static readonly TimeSpan UseNotedEvery = TimeSpan.FromMinutes(10);

    /// <summary>The viewer's own tokens, latest first.</summary>
    public Task<IReadOnlyList<TokenEntry>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default) => store.ReadAsync<IReadOnlyList<TokenEntry>>(
        viewer,
        async db =>
        [
            .. (await db.Tokens.Where(token => token.UserId == viewer.UserId).OrderByDescending(token => token.Id).Take(200).ToListAsync(cancellationToken))
                .Select(token => new TokenEntry(token.Id, token.Name, Split(token.Scopes), token.CreatedAt, token.ExpiresAt, token.LastUsedAt, token.RevokedAt)),
        ],
        cancellationToken);

    /// <summary>Makes a token for the viewer.</summary>
    /// <param name="viewer">Its owner.</param>
    /// <param name="name">What it is for.</param>
    /// <param name="scopes">From <see cref="TokenScopes.All"/>, or <see cref="TokenScopes.Tablet"/>; others are left out.</param>
    /// <param name="days">Life, 1 to <see cref="MostDays"/>.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>The token, or null when the viewer may have none or nothing is left of its scopes.</returns>
    public async Task<NewToken?> CreateAsync(Viewer viewer, string name, IReadOnlyCollection<string> scopes, int days, CancellationToken cancellationToken = default)
    {
        string[] kept = [.. TokenScopes.All.Append(TokenScopes.Tablet).Intersect(scopes)];
        if (viewer.UserId is not { } owner || !viewer.IsOfFirm || kept.Length == 0 || string.IsNullOrWhiteSpace(name) || name.Length > 100 || days is < 1 or > MostDays)
        {
            return null;
        }

        var text = Prefix + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var now = Utc.Now(clock);
        return await store.WriteAsync(
            viewer,
            async db =>
            {
                var row = new TokenRow
                {
                    UserId = owner,
                    Name = name.Trim(),
                    Hash = HashOf(text),
                    Scopes = string.Join(' ', kept),
                    CreatedAt = now,
                    ExpiresAt = now.AddDays(days),
                };
                db.Tokens.Add(row);
                await db.SaveChangesAsync(cancellationToken);
                db.Audit(new AuditEntry("token made", "Token", row.Id.ToString(CultureInfo.InvariantCulture), New: row.Name + ": " + row.Scopes));
                return new NewToken(row.Id, text, row.ExpiresAt);
            },
            cancellationToken);
    }

    /// <summary>Every tablet that may send, by account and name; null for a viewer who may not keep the set-up.</summary>
    public Task<IReadOnlyList<TabletEntry>?> TabletsAsync(Viewer viewer, CancellationToken cancellationToken = default) => !viewer.MayKeepSetUp
        ? Task.FromResult<IReadOnlyList<TabletEntry>?>(null)
        : store.ReadAsync<IReadOnlyList<TabletEntry>?>(
            viewer,
            async db => await (
                from token in db.Tokens
                join user in db.Users on token.UserId equals user.Id
                where token.RevokedAt == null && token.ExpiresAt > Utc.Now(clock) && token.Scopes.EndsWith(TokenScopes.Tablet)
                orderby user.Email, token.Name, token.Id
                select new TabletEntry(token.Id, token.Name, user.Email ?? string.Empty, token.CreatedAt, token.LastUsedAt)).Take(200).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Ends one of the viewer's own tokens, or a tablet of anybody for those who keep the set-up.</summary>
    /// <returns>Whether there was such a token in use.</returns>
    public Task<bool> RevokeAsync(Viewer viewer, int id, CancellationToken cancellationToken = default) => store.WriteAsync(
        viewer,
        async db =>
        {
            var row = await db.Tokens.AsTracking()
                .SingleOrDefaultAsync(
                    token => token.Id == id && token.RevokedAt == null
                        && (token.UserId == viewer.UserId || (viewer.MayKeepSetUp && token.Scopes.EndsWith(TokenScopes.Tablet))),
                    cancellationToken);
            if (row is null)
            {
                return false;
            }

            row.RevokedAt = Utc.Now(clock);
            db.Audit(new AuditEntry("token revoked", "Token", id.ToString(CultureInfo.InvariantCulture), Old: row.Name));
            return true;
        },
        cancellationToken);

    /// <summary>Whose token this is; null when it is none, revoked or too old.</summary>
    /// <param name="viewer">Who looks it up: the program itself.</param>
    /// <param name="text">As it was sent.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<TokenUse?> FindAsync(Viewer viewer, string text, CancellationToken cancellationToken = default)
    {
        if (!text.StartsWith(Prefix, StringComparison.Ordinal) || text.Length > 200)
        {
            return null;
        }

        var hash = HashOf(text);
        var now = Utc.Now(clock);
        var row = await store.ReadAsync(
            viewer,
            db => db.Tokens.SingleOrDefaultAsync(token => token.Hash == hash && token.RevokedAt == null && token.ExpiresAt > now, cancellationToken),
            cancellationToken);
        if (row is null)
        {
            return null;
        }

        // Not at every call: a busy program would write more than it reads.
        if (row.LastUsedAt is not { } last || now - last > UseNotedEvery)
        {
            await store.WriteAsync(
                viewer,
                db => db.Tokens.Where(token => token.Id == row.Id).ExecuteUpdateAsync(set => set.SetProperty(token => token.LastUsedAt, now), cancellationToken),
                cancellationToken);
        }

        return new TokenUse(row.UserId, row.Id, Split(row.Scopes));
    }

    private static string[] Split(string scopes) => scopes.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
