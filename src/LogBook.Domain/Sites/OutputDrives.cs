using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>What a controller output switches.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<OutputDrives>))]
public enum OutputDrives
{
    /// <summary>The bleed valve.</summary>
    [JsonStringEnumMemberName("bleed")]
    Bleed,

    /// <summary>A pump or feeder.</summary>
    [JsonStringEnumMemberName("feed")]
    Feed,

    /// <summary>An alarm line.</summary>
    [JsonStringEnumMemberName("alarm")]
    Alarm,
}
