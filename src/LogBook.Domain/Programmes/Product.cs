using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>A treatment product. Levels are mg/L as product.</summary>
public sealed record Product
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Name on the label.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required ProductKind Kind { get; init; }

    /// <summary>For a biocide: whether it oxidises.</summary>
    public bool? Oxidising { get; init; }

    /// <summary>Density, kg/L; 1 when absent.</summary>
    public double? DensityKgPerL { get; init; }

    /// <summary>Usual level in the system, mg/L as product.</summary>
    public double? DoseMgPerL { get; init; }

    /// <summary>Test that shows it.</summary>
    public ProductResidual? Residual { get; init; }

    /// <summary>Label limit for one application, mg/L as product.</summary>
    public double? LabelMaxMgPerL { get; init; }

    /// <summary>Label limit for a week, mg/L as product.</summary>
    public double? LabelMaxWeekMgPerL { get; init; }

    /// <summary>Shortest gap between applications, h.</summary>
    public double? LabelGapHours { get; init; }

    /// <summary>Contact time asked by the label, h.</summary>
    public double? LabelContactHours { get; init; }

    /// <summary>Registration number.</summary>
    public string? Registration { get; init; }

    /// <summary>Products or kinds that must never meet it ("biocide:oxidising").</summary>
    public IReadOnlyList<string> NeverWith { get; init => field = value ?? []; } = [];

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
