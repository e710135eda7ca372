namespace LogBook.Domain.Quantities;

/// <summary>A mass of product, kg.</summary>
/// <remarks>The default is 0 kg (Zero). Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Kilograms = value;

    /// <summary>Nothing: 0 kg.</summary>
    public static Mass Zero => default;

    /// <summary>Kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>Makes one from avoirdupois pounds.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Mass FromPounds(double value) => new(Require.FiniteNotNegative(value) * ExactFactors.KilogramsPerPound);

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    /// <summary>Makes one from kg.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Mass FromKilograms(double value) => new(Require.FiniteNotNegative(value));

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);
}
