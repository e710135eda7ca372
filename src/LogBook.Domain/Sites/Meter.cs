using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>A water meter with its register.</summary>
public sealed record Meter
{
    /// <summary>Unique within the system.</summary>
    public required string Code { get; init; }

    /// <summary>Which water.</summary>
    public required MeterMeasures Measures { get; init; }

    /// <summary>UCUM unit of dial and total.</summary>
    public required string Unit { get; init; }

    /// <summary>Digits of the dial; it rolls over at ten to this power.</summary>
    public required int Digits { get; init; }

    /// <summary>Dial count times this is the unit; 1 when absent.</summary>
    public double? DialMultiplier { get; init; }

    /// <summary>Digits of the controller's total; none means that it does not roll over.</summary>
    public int? TotalDigits { get; init; }

    /// <summary>Litres for each pulse.</summary>
    public double? LitresPerPulse { get; init; }

    /// <summary>Pulses for each litre.</summary>
    public double? PulsesPerLitre { get; init; }

    /// <summary>Systems of the site it feeds, when more than its own.</summary>
    public IReadOnlyList<string> Serves { get; init => field = value ?? []; } = [];

    /// <summary>What the pipe can carry, L/h.</summary>
    public double? MaxLPerH { get; init; }

    /// <summary>Day this meter went in, when renewed.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
