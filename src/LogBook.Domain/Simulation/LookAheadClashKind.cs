using System.Text.Json.Serialization;

namespace LogBook.Domain.Simulation;

/// <summary>How two doses meet.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<LookAheadClashKind>))]
public enum LookAheadClashKind
{
    /// <summary>One falls due while the other bleeds down, feeds or holds, and waits.</summary>
    [JsonStringEnumMemberName("due-during-the-other")]
    DueDuringTheOther,

    /// <summary>One begins sooner after the other than their labels' gap.</summary>
    [JsonStringEnumMemberName("gap-too-short")]
    GapTooShort,
}
