using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Where an action stands.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ActionState>))]
public enum ActionState
{
    /// <summary>Still to do.</summary>
    [JsonStringEnumMemberName("open")]
    Open,

    /// <summary>Done.</summary>
    [JsonStringEnumMemberName("done")]
    Done,

    /// <summary>Not to be done.</summary>
    [JsonStringEnumMemberName("dropped")]
    Dropped,
}
