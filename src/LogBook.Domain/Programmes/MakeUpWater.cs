using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>Make-up water a programme was worked out for.</summary>
public sealed record MakeUpWater
{
    /// <summary>µS/cm at 25 °C.</summary>
    public double? ConductivityUsPerCm { get; init; }

    /// <summary>Calcium, mg/L as CaCO3.</summary>
    public double? CalciumMgPerLAsCaCO3 { get; init; }

    /// <summary>Magnesium, mg/L as CaCO3.</summary>
    public double? MagnesiumMgPerLAsCaCO3 { get; init; }

    /// <summary>Total alkalinity, mg/L as CaCO3.</summary>
    public double? AlkalinityMgPerLAsCaCO3 { get; init; }

    /// <summary>Chloride, mg/L as Cl.</summary>
    public double? ChlorideMgPerL { get; init; }

    /// <summary>Silica, mg/L as SiO2.</summary>
    public double? SilicaMgPerL { get; init; }

    /// <summary>Sulphate, mg/L as SO4.</summary>
    public double? SulphateMgPerL { get; init; }

    /// <summary>pH.</summary>
    [JsonPropertyName("pH")]
    public double? PH { get; init; }
}
