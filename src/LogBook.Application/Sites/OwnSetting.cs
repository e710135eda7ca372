using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;

namespace LogBook.Application.Sites;

/// <summary>A value that somebody has put in the place of a default, as it is stored and audited.</summary>
/// <param name="Code">Code of the <see cref="EngineSetting"/>.</param>
/// <param name="Site">Code of a site, when it is for one system only.</param>
/// <param name="System">Code of the system of that site.</param>
/// <param name="Value">Value in the setting's unit.</param>
/// <param name="Why">Reason given.</param>
public sealed record OwnSetting(string Code, string? Site, string? System, double Value, string Why)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>Key of a setting of the firm or of one system.</summary>
    public static string KeyOf(string code, string? site, string? system) => system is null ? code : $"{code}@{site}/{system}";

    /// <summary>The same for the engine.</summary>
    [JsonIgnore]
    public EngineSettingChange Change => new(Code, Value, Site, System);

    /// <summary>Canonical text.</summary>
    public string Write() => CanonicalJson.Of(JsonSerializer.SerializeToElement(this, Json));

    /// <summary>Reads <see cref="Write"/>.</summary>
    public static OwnSetting Read(string document) => JsonSerializer.Deserialize<OwnSetting>(document, Json)!;
}
