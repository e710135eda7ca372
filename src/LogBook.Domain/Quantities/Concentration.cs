namespace LogBook.Domain.Quantities;

/// <summary>A concentration together with what it is expressed as; mg/L without its basis is half a result.</summary>
/// <remarks>
/// "100 mg/L calcium as CaCO3" and "100 mg/L calcium as Ca" differ by a factor of 2.5. Convert with
/// <see cref="TestKits.BasisConversion"/>. Reference: 06-test-kits.md.
/// </remarks>
public sealed record Concentration
{
    /// <summary>Makes a concentration.</summary>
    /// <param name="milligramsPerLitre">mg/L, finite, not negative.</param>
    /// <param name="basis">What it is expressed as: one of <see cref="TestKits.Bases"/> or another "as …" text.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    /// <exception cref="ArgumentException">No basis.</exception>
    public Concentration(double milligramsPerLitre, string basis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(basis);
        MilligramsPerLitre = Require.FiniteNotNegative(milligramsPerLitre);
        Basis = basis;
    }

    /// <summary>mg/L in the basis.</summary>
    public double MilligramsPerLitre { get; }

    /// <summary>What it is expressed as, such as "as CaCO3".</summary>
    public string Basis { get; }
}
