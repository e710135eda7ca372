using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>A drum, tank or tote of product. Lengths cm, volumes L.</summary>
public sealed record Drum
{
    /// <summary>Unique within the system.</summary>
    public required string Code { get; init; }

    /// <summary>Code of its product.</summary>
    public required string Product { get; init; }

    /// <summary>How a level becomes a volume.</summary>
    public required DrumShape Shape { get; init; }

    /// <summary>Brim volume, L.</summary>
    public double? CapacityL { get; init; }

    /// <summary>Height, cm.</summary>
    public double? HeightCm { get; init; }

    /// <summary>Inside length, cm.</summary>
    public double? LengthCm { get; init; }

    /// <summary>Inside width, cm.</summary>
    public double? WidthCm { get; init; }

    /// <summary>Inside diameter, cm.</summary>
    public double? DiameterCm { get; init; }

    /// <summary>Empty weight, kg.</summary>
    public double? TareKg { get; init; }

    /// <summary>Strapping table: level in cm, volume in L.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Points { get; init => field = value ?? []; } = [];

    /// <summary>Volume below the suction, L.</summary>
    public double? UnusableL { get; init; }

    /// <summary>Product kept on site beside it, L.</summary>
    public double? SpareL { get; init; }

    /// <summary>Days from order to delivery.</summary>
    public double? DeliveryDays { get; init; }

    /// <summary>Day this drum went in, when renewed.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
