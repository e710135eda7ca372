using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Position of an output's switch.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SwitchPosition>))]
public enum SwitchPosition
{
    /// <summary>The controller decides.</summary>
    [JsonStringEnumMemberName("automatic")]
    Automatic,

    /// <summary>Runs whatever the controller says.</summary>
    [JsonStringEnumMemberName("forced-on")]
    ForcedOn,

    /// <summary>Stays off whatever the controller says.</summary>
    [JsonStringEnumMemberName("forced-off")]
    ForcedOff,
}
