using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tokens;

/// <summary>
/// Second keys to the drafts on tablets. A person's drafts are sealed on their tablet under a PIN, and once more under a key that only
/// the server keeps. It opens nothing without the tablet, and leaves the server only while a release by a supervisor lasts.
/// </summary>
public sealed class TabletKeyStore(LogBookStore store, TimeProvider clock)
{
    /// <summary>How long a release lasts: long enough to walk back to the tablet, and for an answer that is lost on the way.</summary>
    public static readonly TimeSpan ReleasedFor = TimeSpan.FromHours(1);

    /// <summary>How long a request stands.</summary>
    public static readonly TimeSpan AskedFor = TimeSpan.FromDays(1);

    private const string Entity = "TabletKey";

    /// <summary>Keeps a key. The same key again changes nothing.</summary>
    /// <param name="viewer">The person whose drafts it opens.</param>
    /// <param name="id">SHA-256 of the key, 64 lower-case hexadecimal digits; the tablet names it by that.</param>
    /// <param name="tablet">Name of the tablet.</param>
    /// <param name="sealedKey">The key, sealed by the caller.</param>
    /// <param name="replaces">Earlier key of the same tablet that goes.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Whether it is kept.</returns>
    public async Task<bool> KeepAsync(Viewer viewer, string id, string tablet, string sealedKey, string? replaces, CancellationToken cancellationToken = default)
    {
        if (viewer.UserId is not { } user || !viewer.IsOfFirm || !IsId(id) || tablet.Length is 0 or > 100)
        {
            return false;
        }

        return await store.WriteAsync(
            viewer,
            async db =>
            {
                if (await RowAsync(db, id, cancellationToken) is { } known)
                {
                    return TabletKey.Read(known.Document).User == user;
                }

                if (replaces is not null && IsId(replaces) && await RowAsync(db, replaces, cancellationToken) is { } old && TabletKey.Read(old.Document).User == user)
                {
                    db.SetUp.Remove(old);
                }

                db.SetUp.Add(new SetUpRow { Kind = SetUpKind.TabletKey, Code = id, CodeKey = CodeKeys.Of(id), Name = tablet, Document = new TabletKey(user, tablet, sealedKey).Write() });
                db.Audit(new AuditEntry("tablet key kept", Entity, id, New: tablet));
                return true;
            },
            cancellationToken);
    }

    /// <summary>Notes that a person asks for their key.</summary>
    /// <returns>Whether the server keeps it.</returns>
    public Task<bool> AskAsync(Viewer viewer, string id, CancellationToken cancellationToken = default) => ChangeAsync(
        viewer, id, key => key.User == viewer.UserId ? key with { AskedAt = Utc.Now(clock) } : null, "tablet key asked for", cancellationToken);

    /// <summary>Releases a key for a while.</summary>
    /// <param name="viewer">A supervisor or administrator, who made sure who asks.</param>
    /// <param name="id">Which.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Whether somebody asks for it.</returns>
    public async Task<bool> ReleaseAsync(Viewer viewer, string id, CancellationToken cancellationToken = default) => viewer.MayKeepSetUp && await ChangeAsync(
        viewer, id, key => IsAsked(key) ? key with { AskedAt = null, ReleasedAt = Utc.Now(clock), ReleasedBy = viewer.Who } : null, "tablet key released", cancellationToken);

    /// <summary>The sealed key while its release lasts; null otherwise, and for anybody but its person.</summary>
    public async Task<string?> FindReleasedAsync(Viewer viewer, string id, CancellationToken cancellationToken = default)
    {
        if (viewer.UserId is null || !IsId(id) || await store.ReadAsync(viewer, db => RowAsync(db, id, cancellationToken), cancellationToken) is not { } row)
        {
            return null;
        }

        var key = TabletKey.Read(row.Document);
        return key.User == viewer.UserId && key.ReleasedAt is { } released && Utc.Now(clock) - released <= ReleasedFor ? key.Sealed : null;
    }

    /// <summary>Who asks, oldest first; none for people who may not release.</summary>
    public async Task<IReadOnlyList<TabletKeyAsked>> AskedAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return [];
        }

        var (rows, users) = await store.ReadAsync(
            viewer,
            async db => (
                await db.SetUp.Where(row => row.Kind == SetUpKind.TabletKey).Select(row => new { row.Code, row.Document }).ToListAsync(cancellationToken),
                await db.Users.Where(user => user.DisabledAt == null).Select(user => new { user.Id, user.Email }).ToDictionaryAsync(user => user.Id, user => user.Email ?? "", cancellationToken)),
            cancellationToken);
        return
        [
            .. rows.Select(row => (row.Code, Key: TabletKey.Read(row.Document))).Where(row => IsAsked(row.Key) && users.ContainsKey(row.Key.User))
                .OrderBy(row => row.Key.AskedAt).Select(row => new TabletKeyAsked(row.Code, row.Key.Tablet, users[row.Key.User], row.Key.AskedAt!.Value)),
        ];
    }

    /// <summary>Whose keys these are, among those that the server keeps; nothing for people who may not release.</summary>
    public async Task<IReadOnlyDictionary<string, string>> OwnersAsync(Viewer viewer, IReadOnlyCollection<string> ids, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new Dictionary<string, string>(StringComparer.Ordinal);
        }

        var asked = ids.Where(IsId).ToList();
        return await store.ReadAsync<IReadOnlyDictionary<string, string>>(
            viewer,
            async db =>
            {
                var rows = await db.SetUp.Where(row => row.Kind == SetUpKind.TabletKey && asked.Contains(row.Code)).Select(row => new { row.Code, row.Document }).ToListAsync(cancellationToken);
                var owners = rows.ToDictionary(row => row.Code, row => TabletKey.Read(row.Document).User, StringComparer.Ordinal);
                var users = owners.Values.Distinct().ToList();
                var names = await db.Users.Where(user => users.Contains(user.Id)).ToDictionaryAsync(user => user.Id, user => user.Email ?? "", cancellationToken);
                return owners.Where(owner => names.ContainsKey(owner.Value)).ToDictionary(owner => owner.Key, owner => names[owner.Value], StringComparer.Ordinal);
            },
            cancellationToken);
    }

    /// <summary>The sealed key for drafts in a rescue file, whose person cannot be asked any more. It is used on the server and given to nobody.</summary>
    /// <param name="viewer">A supervisor or administrator.</param>
    /// <param name="id">Which.</param>
    /// <param name="why">The reason, which stands in the audit trail.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Null where there is no such key, no reason, or the viewer may not.</returns>
    public async Task<string?> ReleaseForRescueAsync(Viewer viewer, string id, string why, CancellationToken cancellationToken = default) =>
        !viewer.MayKeepSetUp || string.IsNullOrWhiteSpace(why) || !IsId(id) ? null : await store.WriteAsync(
            viewer,
            async db =>
            {
                if (await RowAsync(db, id, cancellationToken) is not { } row)
                {
                    return null;
                }

                var key = TabletKey.Read(row.Document);
                db.Audit(new AuditEntry("tablet key used for a rescue file", Entity, id, New: key.Tablet, Why: why.Trim()));
                return key.Sealed;
            },
            cancellationToken);

    private bool IsAsked(TabletKey key) => key.AskedAt is { } asked && Utc.Now(clock) - asked <= AskedFor;

    private Task<bool> ChangeAsync(Viewer viewer, string id, Func<TabletKey, TabletKey?> change, string what, CancellationToken cancellationToken) => store.WriteAsync(
        viewer,
        async db =>
        {
            if (!IsId(id) || await RowAsync(db, id, cancellationToken) is not { } row || change(TabletKey.Read(row.Document)) is not { } changed)
            {
                return false;
            }

            row.Document = changed.Write();
            db.Audit(new AuditEntry(what, Entity, id, New: changed.Tablet));
            return true;
        },
        cancellationToken);

    private static Task<SetUpRow?> RowAsync(LogBookDb db, string id, CancellationToken cancellationToken)
    {
        var key = CodeKeys.Of(id);
        return db.SetUp.AsTracking().SingleOrDefaultAsync(row => row.Kind == SetUpKind.TabletKey && row.CodeKey == key, cancellationToken);
    }

    private static bool IsId(string id) => id.Length == 64 && id.All(char.IsAsciiHexDigitLower);
}
