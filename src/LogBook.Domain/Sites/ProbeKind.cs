using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>What a fixed probe measures.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ProbeKind>))]
public enum ProbeKind
{
    /// <summary>Conductivity at 25 °C.</summary>
    [JsonStringEnumMemberName("conductivity")]
    Conductivity,

    /// <summary>pH.</summary>
    [JsonStringEnumMemberName("pH")]
    Ph,

    /// <summary>Oxidation-reduction potential.</summary>
    [JsonStringEnumMemberName("orp")]
    Orp,
}
