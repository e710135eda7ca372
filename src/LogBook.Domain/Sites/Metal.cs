using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Materials wetted by the system.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Metal>))]
public enum Metal
{
    /// <summary>Carbon steel.</summary>
    [JsonStringEnumMemberName("steel")]
    Steel,

    /// <summary>Copper and its alloys.</summary>
    [JsonStringEnumMemberName("copper")]
    Copper,

    /// <summary>Zinc-coated steel.</summary>
    [JsonStringEnumMemberName("galvanised")]
    Galvanised,

    /// <summary>Stainless steel.</summary>
    [JsonStringEnumMemberName("stainless")]
    Stainless,

    /// <summary>Aluminium.</summary>
    [JsonStringEnumMemberName("aluminium")]
    Aluminium,

    /// <summary>Plastic.</summary>
    [JsonStringEnumMemberName("plastic")]
    Plastic,
}
