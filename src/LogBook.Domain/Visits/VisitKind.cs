using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Why somebody was there.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<VisitKind>))]
public enum VisitKind
{
    /// <summary>A visit of the round.</summary>
    [JsonStringEnumMemberName("routine")]
    Routine,

    /// <summary>First visit after a stop.</summary>
    [JsonStringEnumMemberName("start-up")]
    StartUp,

    /// <summary>Last visit before a stop.</summary>
    [JsonStringEnumMemberName("shut-down")]
    ShutDown,

    /// <summary>Cleaning or disinfection.</summary>
    [JsonStringEnumMemberName("cleaning")]
    Cleaning,

    /// <summary>Product delivered, nothing else.</summary>
    [JsonStringEnumMemberName("delivery")]
    Delivery,

    /// <summary>A sample result with no visit of its own.</summary>
    [JsonStringEnumMemberName("result")]
    Result,

    /// <summary>Called out.</summary>
    [JsonStringEnumMemberName("emergency")]
    Emergency,

    /// <summary>Checked by the supervisor.</summary>
    [JsonStringEnumMemberName("audit")]
    Audit,

    /// <summary>First set-up.</summary>
    [JsonStringEnumMemberName("commissioning")]
    Commissioning,

    /// <summary>Could not work here.</summary>
    [JsonStringEnumMemberName("stopped")]
    Stopped,
}
