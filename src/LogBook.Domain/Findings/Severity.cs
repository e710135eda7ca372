using System.Text.Json.Serialization;

namespace LogBook.Domain.Findings;

/// <summary>How soon a finding wants somebody.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Severity>))]
public enum Severity
{
    /// <summary>Keep an eye on it.</summary>
    [JsonStringEnumMemberName("watch")]
    Watch,

    /// <summary>By the next visit.</summary>
    [JsonStringEnumMemberName("plan")]
    Plan,

    /// <summary>Before leaving, or today.</summary>
    [JsonStringEnumMemberName("act")]
    Act,
}
