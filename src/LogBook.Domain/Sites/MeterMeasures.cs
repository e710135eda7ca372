using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Which water a meter counts.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<MeterMeasures>))]
public enum MeterMeasures
{
    /// <summary>Water that replaces losses.</summary>
    [JsonStringEnumMemberName("make-up")]
    MakeUp,

    /// <summary>Water let out by the bleed.</summary>
    [JsonStringEnumMemberName("bleed")]
    Bleed,

    /// <summary>Water behind a softener.</summary>
    [JsonStringEnumMemberName("softened")]
    Softened,

    /// <summary>Filter backwash.</summary>
    [JsonStringEnumMemberName("backwash")]
    Backwash,

    /// <summary>Another line.</summary>
    [JsonStringEnumMemberName("other")]
    Other,
}
