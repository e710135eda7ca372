using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>What the customer said of a recommendation.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<RecommendationState>))]
public enum RecommendationState
{
    /// <summary>No answer yet.</summary>
    [JsonStringEnumMemberName("asked")]
    Asked,

    /// <summary>Accepted.</summary>
    [JsonStringEnumMemberName("accepted")]
    Accepted,

    /// <summary>Declined.</summary>
    [JsonStringEnumMemberName("declined")]
    Declined,
}
