using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Application.Data;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;

namespace LogBook.Application.Clocks;

/// <summary>A notification of an authority as it is stored and audited.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Told">Who told whom, of what, when and how.</param>
/// <param name="RecordedBy">Who wrote it down.</param>
/// <param name="RecordedAt">When it was written down, UTC.</param>
public sealed record Notice(string Site, string System, Notification Told, string RecordedBy, DateTime RecordedAt)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>One result and rule has one notice that counts.</summary>
    [JsonIgnore]
    public string Key => KeyOf(Site, System, Told.Visit, Told.Test, Told.Rule);

    /// <summary>Key of the notice of a result under a rule.</summary>
    public static string KeyOf(string site, string system, Guid visit, string test, string rule) => $"{site}/{system}/{visit:N}/{test}/{rule}";

    /// <summary>Canonical text.</summary>
    public string Write() => CanonicalJson.Of(JsonSerializer.SerializeToElement(this, Json));

    /// <summary>Reads <see cref="Write"/>.</summary>
    public static Notice Read(string document) => JsonSerializer.Deserialize<Notice>(document, Json)!;

    internal static string PrefixOf(string siteKey) => CodeKeys.Of(siteKey) + "/";
}
