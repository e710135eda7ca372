using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using static LogBook.Domain.TestKits.AtomicWeights;

namespace LogBook.Domain.TestKits;

/// <summary>Conversion between ways of expressing one result: "as Ca" to "as CaCO3", "as P" to "as PO4".</summary>
/// <remarks>
/// Only bases of one substance convert. "As CaCO3" belongs to every ion by charge, so from there the ion asked for decides;
/// "as Ca" to "as Mg" is refused, because it would turn one substance into another.
/// Factors from IUPAC abridged atomic weights. Reference: 06-test-kits.csv, ion_to_CaCO3, mass_factor.
/// </remarks>
public static class BasisConversion
{
    // Substance, basis, and mass that stands for one mole of the substance's key atom (g/mol).
    private static readonly (string Substance, string Basis, double Mass)[] Members =
    [
        ("calcium", "as Ca", Ca), ("calcium", "as CaCO3", CaCO3PerCharge * 2),
        ("magnesium", "as Mg", Mg), ("magnesium", "as CaCO3", CaCO3PerCharge * 2),
        ("sodium", "as Na", Na), ("sodium", "as CaCO3", CaCO3PerCharge),
        ("potassium", "as K", K), ("potassium", "as CaCO3", CaCO3PerCharge),
        ("bicarbonate", "as HCO3", H + C + (3 * O)), ("bicarbonate", "as CaCO3", CaCO3PerCharge),
        ("carbonate", "as CO3", C + (3 * O)), ("carbonate", "as CaCO3", CaCO3PerCharge * 2),
        ("hydroxide", "as OH", O + H), ("hydroxide", "as CaCO3", CaCO3PerCharge),
        ("chloride", "as Cl", Cl), ("chloride", "as NaCl", Na + Cl), ("chloride", "as CaCO3", CaCO3PerCharge),
        ("sulphate", "as SO4", S + (4 * O)), ("sulphate", "as S", S), ("sulphate", "as CaCO3", CaCO3PerCharge * 2),
        ("nitrate", "as NO3", N + (3 * O)), ("nitrate", "as N", N), ("nitrate", "as CaCO3", CaCO3PerCharge),
        ("nitrite", "as NO2", N + (2 * O)), ("nitrite", "as N", N), ("nitrite", "as NaNO2", Na + N + (2 * O)),
        ("phosphate", "as PO4", P + (4 * O)), ("phosphate", "as P", P), ("phosphate", "as P2O5", P + (2.5 * O)),
        ("phosphate", "as CaCO3", CaCO3PerCharge * 3),
        ("phosphate", "as HEDP", ((2 * C) + (8 * H) + (7 * O) + (2 * P)) / 2),
        ("phosphate", "as PBTC", (7 * C) + (11 * H) + (9 * O) + P),
        ("phosphate", "as ATMP", ((3 * C) + (12 * H) + N + (9 * O) + (3 * P)) / 3),
        ("molybdate", "as Mo", Mo), ("molybdate", "as MoO4", Mo + (4 * O)),
        ("molybdate", "as Na2MoO4", (2 * Na) + Mo + (4 * O)),
        ("molybdate", "as Na2MoO4.2H2O", (2 * Na) + Mo + (4 * O) + (2 * Water)),
        ("silica", "as SiO2", Si + (2 * O)), ("silica", "as Si", Si),
        ("halogen", "as Cl2", 2 * Cl), ("halogen", "as Br2", 2 * Br),
    ];

    /// <summary>Factor from one basis to another.</summary>
    /// <param name="from">Such as "as Ca".</param>
    /// <param name="to">Such as "as CaCO3"; case does not matter.</param>
    /// <returns>mg/L in <paramref name="to"/> per mg/L in <paramref name="from"/>; none when no single substance has both.</returns>
    public static Computed<double> Factor(string from, string to)
    {
        if (Same(from, to))
        {
            return Computed<double>.Of(1);
        }

        var factors = Members
            .Where(source => Same(source.Basis, from))
            .SelectMany(source => Members
                .Where(target => target.Substance == source.Substance && Same(target.Basis, to))
                .Select(target => target.Mass / source.Mass))
            .Distinct()
            .ToList();

        // Two substances with different factors would leave a choice: refuse rather than guess.
        return factors.Count == 1 ? Computed<double>.Of(factors[0]) : Computed<double>.None(TestKitReasons.BasisForeign);
    }

    /// <summary>Converts a number.</summary>
    /// <param name="mgPerL">mg/L in <paramref name="from"/>.</param>
    /// <param name="from">Such as "as Ca".</param>
    /// <param name="to">Such as "as CaCO3".</param>
    /// <returns>mg/L in <paramref name="to"/>, or the reason.</returns>
    public static Computed<double> Convert(double mgPerL, string from, string to) => Factor(from, to).Map(factor => mgPerL * factor);

    /// <summary>Converts a concentration.</summary>
    /// <param name="concentration">In its basis.</param>
    /// <param name="to">Basis asked for.</param>
    /// <returns>The concentration in the other basis, or the reason.</returns>
    public static Computed<Concentration> Convert(Concentration concentration, string to) =>
        Convert(concentration.MilligramsPerLitre, concentration.Basis, to).Map(mgPerL => new Concentration(mgPerL, to));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
