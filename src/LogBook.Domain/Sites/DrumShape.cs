using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>How a level becomes a volume.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<DrumShape>))]
public enum DrumShape
{
    /// <summary>Volume in proportion to height.</summary>
    [JsonStringEnumMemberName("vertical-cylinder")]
    VerticalCylinder,

    /// <summary>Lying cylinder with flat ends.</summary>
    [JsonStringEnumMemberName("horizontal-cylinder")]
    HorizontalCylinder,

    /// <summary>Length by width by level.</summary>
    [JsonStringEnumMemberName("rectangular")]
    Rectangular,

    /// <summary>On a scale, tare and density.</summary>
    [JsonStringEnumMemberName("by-weight")]
    ByWeight,

    /// <summary>Strapping table of points, linear between them.</summary>
    [JsonStringEnumMemberName("table")]
    Table,
}
