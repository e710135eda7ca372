namespace LogBook.Domain.Quantities;

/// <summary>A volume of water or product, L.</summary>
/// <remarks>The default is 0 L (Zero). Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double value) => Litres = value;

    /// <summary>Nothing: 0 L.</summary>
    public static Volume Zero => default;

    /// <summary>Litres.</summary>
    public double Litres { get; }

    /// <summary>Makes one from m³.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Volume FromCubicMetres(double value) => new(Require.FiniteNotNegative(value) * 1000);

    /// <summary>Makes one from US gallons.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Volume FromUsGallons(double value) => new(Require.FiniteNotNegative(value) * ExactFactors.LitresPerUsGallon);

    /// <summary>Makes one from imperial gallons.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Volume FromImperialGallons(double value) => new(Require.FiniteNotNegative(value) * ExactFactors.LitresPerImperialGallon);

    /// <summary>Sum of two volumes.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>The sum.</returns>
    public static Volume operator +(Volume left, Volume right) => FromLitres(left.Litres + right.Litres);

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Volume left, Volume right) => left.Litres < right.Litres;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Volume left, Volume right) => left.Litres > right.Litres;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Volume left, Volume right) => left.Litres <= right.Litres;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Volume left, Volume right) => left.Litres >= right.Litres;

    /// <summary>Makes one from L.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Volume FromLitres(double value) => new(Require.FiniteNotNegative(value));

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Litres.CompareTo(other.Litres);
}
