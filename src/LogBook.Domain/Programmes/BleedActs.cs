using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>Which way the bleed switches.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<BleedActs>))]
public enum BleedActs
{
    /// <summary>Opens when the display reaches the set point from below.</summary>
    [JsonStringEnumMemberName("on-rise")]
    OnRise,

    /// <summary>Mirrored.</summary>
    [JsonStringEnumMemberName("on-fall")]
    OnFall,
}
