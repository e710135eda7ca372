using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>A feed pump.</summary>
public sealed record Pump
{
    /// <summary>Unique within the system.</summary>
    public required string Code { get; init; }

    /// <summary>Code of the drum it draws from.</summary>
    public required string Drum { get; init; }

    /// <summary>Code of the output that runs it.</summary>
    public required string Output { get; init; }

    /// <summary>Output at the stroke and speed set, L/h.</summary>
    public double? RatedLPerH { get; init; }

    /// <summary>Day this pump went in, when renewed.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
