using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Bleed flow found by timing it into a bucket.</summary>
public sealed record BleedTiming
{
    /// <summary>Day of the timing.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Flow, L/h.</summary>
    [JsonPropertyName("LPerH")]
    public required double LPerH { get; init; }
}
