using System.Text.Json;
using LogBook.Domain.Exchange;

namespace LogBook.Application.Tokens;

/// <summary>The second key to the drafts of one person on one tablet, as it is stored.</summary>
/// <param name="User">Account of the person.</param>
/// <param name="Tablet">Name of the tablet.</param>
/// <param name="Sealed">The key, unreadable without the installation's key ring.</param>
/// <param name="AskedAt">When the person asked for it, UTC; null when nobody asks.</param>
/// <param name="ReleasedAt">When it was last released, UTC.</param>
/// <param name="ReleasedBy">Who released it.</param>
internal sealed record TabletKey(int User, string Tablet, string Sealed, DateTime? AskedAt = null, DateTime? ReleasedAt = null, string? ReleasedBy = null)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>Canonical text.</summary>
    public string Write() => CanonicalJson.Of(JsonSerializer.SerializeToElement(this, Json));

    /// <summary>Reads <see cref="Write"/>.</summary>
    public static TabletKey Read(string document) => JsonSerializer.Deserialize<TabletKey>(document, Json)!;
}
