using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Kind of portable instrument.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<InstrumentKind>))]
public enum InstrumentKind
{
    /// <summary>Hand conductivity meter.</summary>
    [JsonStringEnumMemberName("conductivity-meter")]
    ConductivityMeter,

    /// <summary>Hand pH meter.</summary>
    [JsonStringEnumMemberName("ph-meter")]
    PhMeter,

    /// <summary>Photometer or colorimeter.</summary>
    [JsonStringEnumMemberName("photometer")]
    Photometer,

    /// <summary>Thermometer.</summary>
    [JsonStringEnumMemberName("thermometer")]
    Thermometer,

    /// <summary>Any other.</summary>
    [JsonStringEnumMemberName("other")]
    Other,
}
