using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.Compensation;

/// <summary>Dissolved solids from conductivity, and conductivity from ions as a plausibility check.</summary>
/// <remarks>Conductivity from ions is 10 to 20 % off, on single waters of the grid 04-ec-grid.csv 35 %: never judge a probe by it. Reference: 04-conductivity.md.</remarks>
public static class DissolvedSolids
{
    /// <summary>Usual factor, mg/L per µS/cm; 0.46 to 0.69 on measured waters, best taken from the water itself.</summary>
    public const double UsualFactor = 0.65;

    // Factor (sum method, APHA), molar mass, charge and limiting equivalent conductance (S·cm²/eq, CRC Handbook at 25 °C).
    // The conductances of Ca, HCO3 and NO3 were not read in a source by us: one more reason for plausibility only.
    private static readonly (string Name, Func<IonContent, double> Of, double Factor, double Mass, int Charge, double Conductance)[] Ions =
    [
        ("Ca", water => water.Calcium, 2.60, AtomicWeights.Ca, 2, 59.47),
        ("Mg", water => water.Magnesium, 3.82, AtomicWeights.Mg, 2, 53.0),
        ("Na", water => water.Sodium, 2.13, AtomicWeights.Na, 1, 50.08),
        ("K", water => water.Potassium, 1.84, AtomicWeights.K, 1, 73.48),
        ("HCO3", water => water.Bicarbonate, 0.716, AtomicWeights.H + AtomicWeights.C + (3 * AtomicWeights.O), 1, 44.5),
        ("Cl", water => water.Chloride, 2.14, AtomicWeights.Cl, 1, 76.31),
        ("SO4", water => water.Sulphate, 1.54, AtomicWeights.S + (4 * AtomicWeights.O), 2, 80.0),
        ("NO3", water => water.Nitrate, 1.15, AtomicWeights.N + (3 * AtomicWeights.O), 1, 71.42),
    ];

    /// <summary>Limiting equivalent conductance of an ion at 25 °C.</summary>
    /// <param name="ion">"Ca", "Mg", "Na", "K", "HCO3", "Cl", "SO4" or "NO3".</param>
    /// <returns>S·cm²/eq; none for another ion.</returns>
    /// <remarks>Source: CRC Handbook. Reference: 04-conductivity.csv, limiting_equiv_conductance.</remarks>
    public static Computed<double> LimitingConductance(string ion)
    {
        var row = Array.Find(Ions, candidate => candidate.Name == ion);
        return row.Conductance > 0 ? Computed<double>.Of(row.Conductance) : Computed<double>.None(CompensationReasons.Impossible);
    }

    /// <summary>Total dissolved solids, k EC25.</summary>
    /// <param name="conductivity">At 25 °C.</param>
    /// <param name="factor">k, mg/L per µS/cm, above zero.</param>
    /// <returns>mg/L; none for a factor of zero or less.</returns>
    /// <remarks>Common practice. Reference: 04-conductivity.csv, tds_from_ec.</remarks>
    public static Computed<double> FromConductivity(Conductivity conductivity, double factor = UsualFactor) =>
        double.IsFinite(factor) && factor > 0
            ? Computed<double>.Of(factor * conductivity.MicrosiemensPerCm)
            : Computed<double>.None(CompensationReasons.Impossible);

    /// <summary>Conductivity as a sum of factors, good only below about 600 µS/cm.</summary>
    /// <param name="water">mg/L as the ions.</param>
    /// <returns>At 25 °C.</returns>
    /// <remarks>Reference: 04-conductivity.csv, ec_sum_factors.</remarks>
    public static Computed<Conductivity> SumOfFactors(IonContent water) => Sum(water, ion => ion.Factor * ion.MgPerL)
        .Map(Conductivity.FromMicrosiemensPerCm);

    /// <summary>Conductivity at no dilution effect, k0 = Σ |z| λ c (Standard Methods 2510 A).</summary>
    /// <param name="water">mg/L as the ions.</param>
    /// <returns>At 25 °C.</returns>
    /// <remarks>Reference: 04-conductivity.csv, ec_y2_k0.</remarks>
    public static Computed<Conductivity> AtInfiniteDilution(IonContent water) => Sum(water, ion => ion.Charge * ion.Conductance * ion.MgPerL / ion.Mass)
        .Map(Conductivity.FromMicrosiemensPerCm);

    /// <summary>Ionic strength, 0.5 Σ z² c.</summary>
    /// <param name="water">mg/L as the ions.</param>
    /// <returns>mol/L.</returns>
    /// <remarks>Reference: 04-conductivity.csv, ec_y2_I.</remarks>
    public static Computed<double> IonicStrength(IonContent water) =>
        Sum(water, ion => 0.5 * ion.Charge * ion.Charge * ion.MgPerL / ion.Mass / 1000);

    /// <summary>Activity coefficient of one charge, log y = −0.5 (√I/(1 + √I) − 0.3 I).</summary>
    /// <param name="ionicStrength">I, mol/L, 0 to 0.5.</param>
    /// <returns>0 to 1; none outside the range.</returns>
    /// <remarks>Reference: 04-conductivity.csv, ec_y2_y.</remarks>
    public static Computed<double> ActivityCoefficient(double ionicStrength)
    {
        if (ionicStrength is not (>= 0 and <= 0.5))
        {
            return Computed<double>.None(CompensationReasons.Impossible);
        }

        var root = Math.Sqrt(ionicStrength);
        return Computed<double>.Of(Math.Pow(10, -0.5 * ((root / (1 + root)) - (0.3 * ionicStrength))));
    }

    /// <summary>Conductivity by Standard Methods 2510 A, k = k0 y².</summary>
    /// <param name="water">mg/L as the ions.</param>
    /// <returns>At 25 °C; reads about 10 % low on cooling waters (17 % low to 2 % high on the grid).</returns>
    /// <remarks>Reference: 04-conductivity.csv, ec_y2_k.</remarks>
    public static Computed<Conductivity> ByIons(IonContent water) => IonicStrength(water).Then(ActivityCoefficient).Then(y =>
        AtInfiniteDilution(water).Map(k0 => Conductivity.FromMicrosiemensPerCm(k0.MicrosiemensPerCm * y * y)));

    private static Computed<double> Sum(IonContent water, Func<(double MgPerL, double Factor, double Mass, int Charge, double Conductance), double> term)
    {
        var parts = Ions.Select(ion => (MgPerL: ion.Of(water), ion.Factor, ion.Mass, ion.Charge, ion.Conductance)).ToList();
        return parts.All(part => double.IsFinite(part.MgPerL) && part.MgPerL >= 0)
            ? Computed<double>.Of(parts.Sum(term))
            : Computed<double>.None(CompensationReasons.Impossible);
    }
}
