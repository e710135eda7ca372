using System.Text.Json.Serialization;

namespace LogBook.Domain.Findings;

/// <summary>Where a finding stands.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<FindingState>))]
public enum FindingState
{
    /// <summary>Nobody has taken it.</summary>
    [JsonStringEnumMemberName("open")]
    Open,

    /// <summary>Somebody owns it.</summary>
    [JsonStringEnumMemberName("acknowledged")]
    Acknowledged,

    /// <summary>Asleep until a day.</summary>
    [JsonStringEnumMemberName("snoozed")]
    Snoozed,

    /// <summary>Explained by something else.</summary>
    [JsonStringEnumMemberName("withdrawn")]
    Withdrawn,

    /// <summary>Over.</summary>
    [JsonStringEnumMemberName("closed")]
    Closed,
}
