using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.TestKits;

/// <summary>Titrations, drop tests and dilutions. Results mg/L in the basis named.</summary>
/// <remarks>Reference: 06-test-kits.md, 06-test-kits.csv.</remarks>
public static class Titration
{
    /// <summary>Constant of the standard method for results as CaCO3 (exact 50 043, 0.09 % higher).</summary>
    public const double MgCaCO3PerEquivalent = 50_000;

    /// <summary>Constant of the standard method for results as Cl.</summary>
    public const double MgClPerEquivalent = 35_450;

    /// <summary>Alkalinity, A N 50 000/V.</summary>
    /// <param name="acidMl">A, acid used, mL.</param>
    /// <param name="normality">N, eq/L.</param>
    /// <param name="sampleMl">V, mL, above zero.</param>
    /// <returns>As CaCO3.</returns>
    /// <remarks>Form of Standard Methods 2320. Reference: 06-test-kits.csv, titration_alkalinity.</remarks>
    public static Computed<Concentration> Alkalinity(double acidMl, double normality, double sampleMl) =>
        Result(acidMl * normality * MgCaCO3PerEquivalent, sampleMl, Bases.AsCaCO3);

    /// <summary>Chloride, (A − blank) N 35 450/V.</summary>
    /// <param name="titrantMl">A, titrant used, mL.</param>
    /// <param name="blankMl">Titrant used on blank water, mL, not above A.</param>
    /// <param name="normality">N, eq/L.</param>
    /// <param name="sampleMl">V, mL, above zero.</param>
    /// <returns>As Cl.</returns>
    /// <remarks>Form of Standard Methods 4500-Cl. Reference: 06-test-kits.csv, titration_chloride.</remarks>
    public static Computed<Concentration> Chloride(double titrantMl, double blankMl, double normality, double sampleMl) => blankMl >= 0
        ? Result((titrantMl - blankMl) * normality * MgClPerEquivalent, sampleMl, Bases.AsCl)
        : Computed<Concentration>.None(TestKitReasons.Impossible);

    /// <summary>Hardness with EDTA, A F 1000/V.</summary>
    /// <param name="edtaMl">A, EDTA used, mL.</param>
    /// <param name="mgCaCO3PerMl">F, mg CaCO3 for each mL of EDTA.</param>
    /// <param name="sampleMl">V, mL, above zero.</param>
    /// <returns>As CaCO3.</returns>
    /// <remarks>Form of Standard Methods 2340. Reference: 06-test-kits.csv, titration_hardness.</remarks>
    public static Computed<Concentration> Hardness(double edtaMl, double mgCaCO3PerMl, double sampleMl) =>
        Result(edtaMl * mgCaCO3PerMl * 1000, sampleMl, Bases.AsCaCO3);

    /// <summary>Result of a drop test, drops × factor. Zero drops mean "below one drop": keep the qualifier.</summary>
    /// <param name="drops">Count, not negative.</param>
    /// <param name="perDrop">Result of one drop, above zero.</param>
    /// <returns>In the unit of <paramref name="perDrop"/>.</returns>
    /// <remarks>Reference: 06-test-kits.csv, drop_test.</remarks>
    public static Computed<double> Drops(double drops, double perDrop) => IsAmount(drops) && IsFactor(perDrop)
        ? Computed<double>.Of(drops * perDrop)
        : Computed<double>.None(TestKitReasons.Impossible);

    /// <summary>What one drop stands for, drop N 50 000/V.</summary>
    /// <param name="dropMl">Volume of a drop, mL, above zero.</param>
    /// <param name="normality">N, eq/L, above zero.</param>
    /// <param name="sampleMl">V, mL, above zero.</param>
    /// <returns>mg/L as CaCO3 a drop.</returns>
    /// <remarks>Reference: 06-test-kits.csv, drop_factor.</remarks>
    public static Computed<double> PerDrop(double dropMl, double normality, double sampleMl) =>
        Alkalinity(dropMl, normality, sampleMl).Map(result => result.MilligramsPerLitre);

    /// <summary>Standard uncertainty of a step (one drop, one field of a comparator), step/√12.</summary>
    /// <param name="step">Not negative.</param>
    /// <returns>In the unit of the step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    /// <remarks>Rectangular distribution. Reference: 06-test-kits.csv, drop_resolution_u.</remarks>
    public static double StepUncertainty(double step) => Require.FiniteNotNegative(step) / Math.Sqrt(12);

    /// <summary>Result of a diluted sample, reading × total/sample.</summary>
    /// <param name="reading">Not negative.</param>
    /// <param name="sampleMl">Sample in it, mL, above zero.</param>
    /// <param name="totalMl">Volume after dilution, mL, not below the sample.</param>
    /// <returns>In the unit of the reading.</returns>
    /// <remarks>Over range: dilute, do not extrapolate. Reference: 06-test-kits.csv, dilution.</remarks>
    public static Computed<double> Diluted(double reading, double sampleMl, double totalMl)
    {
        if (!IsFactor(sampleMl))
        {
            return Computed<double>.None(TestKitReasons.NoSample);
        }

        if (!IsAmount(reading) || !double.IsFinite(totalMl))
        {
            return Computed<double>.None(TestKitReasons.Impossible);
        }

        return totalMl >= sampleMl ? Computed<double>.Of(reading * totalMl / sampleMl) : Computed<double>.None(TestKitReasons.DilutionBackwards);
    }

    private static Computed<Concentration> Result(double milligramsTimesMl, double sampleMl, string basis)
    {
        if (!IsFactor(sampleMl))
        {
            return Computed<Concentration>.None(TestKitReasons.NoSample);
        }

        return IsAmount(milligramsTimesMl)
            ? Computed<Concentration>.Of(new Concentration(milligramsTimesMl / sampleMl, basis))
            : Computed<Concentration>.None(TestKitReasons.Impossible);
    }

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;

    private static bool IsFactor(double value) => double.IsFinite(value) && value > 0;
}
