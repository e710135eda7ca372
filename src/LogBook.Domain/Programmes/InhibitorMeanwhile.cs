using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>What the inhibitor does during a biocide dose.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<InhibitorMeanwhile>))]
public enum InhibitorMeanwhile
{
    /// <summary>Keeps feeding.</summary>
    [JsonStringEnumMemberName("feeds")]
    Feeds,

    /// <summary>Holds back until the dose has ended.</summary>
    [JsonStringEnumMemberName("waits")]
    Waits,

    /// <summary>Misses its turn.</summary>
    [JsonStringEnumMemberName("skips")]
    Skips,
}
