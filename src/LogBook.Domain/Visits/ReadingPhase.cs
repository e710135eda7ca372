using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>When within the visit a reading was taken.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ReadingPhase>))]
public enum ReadingPhase
{
    /// <summary>Before anything was touched.</summary>
    [JsonStringEnumMemberName("found")]
    Found,

    /// <summary>Repeated.</summary>
    [JsonStringEnumMemberName("again")]
    Again,

    /// <summary>After the work.</summary>
    [JsonStringEnumMemberName("left")]
    Left,
}
