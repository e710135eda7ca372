using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Units a site's people are shown.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<UnitSystem>))]
public enum UnitSystem
{
    /// <summary>Litres, degrees Celsius.</summary>
    [JsonStringEnumMemberName("metric")]
    Metric,

    /// <summary>US gallons, degrees Fahrenheit.</summary>
    [JsonStringEnumMemberName("us")]
    Us,

    /// <summary>Imperial gallons.</summary>
    [JsonStringEnumMemberName("imperial")]
    Imperial,
}
