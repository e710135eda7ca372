using LogBook.Domain.Quantities;

namespace LogBook.Domain.Saturation;

/// <summary>What the calcite indices need to know of a water, all of one place: the hottest surface, not the basin.</summary>
/// <param name="Temperature">Of the water where it matters.</param>
/// <param name="TdsMgPerL">Dissolved solids, mg/L.</param>
/// <param name="CalciumMgPerL">Calcium, mg/L as CaCO3.</param>
/// <param name="AlkalinityMgPerL">Total alkalinity, mg/L as CaCO3.</param>
public sealed record CalciteWater(Temperature Temperature, double TdsMgPerL, double CalciumMgPerL, double AlkalinityMgPerL)
{
    /// <summary>Whether all three concentrations are finite and above zero, as their logarithms need.</summary>
    public bool IsKnown => IsAboveZero(TdsMgPerL) && IsAboveZero(CalciumMgPerL) && IsAboveZero(AlkalinityMgPerL);

    private static bool IsAboveZero(double value) => double.IsFinite(value) && value > 0;
}
