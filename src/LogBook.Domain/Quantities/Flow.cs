namespace LogBook.Domain.Quantities;

/// <summary>A flow of water or product, L/h.</summary>
/// <remarks>The default is 0 L/h (Zero). Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Flow : IComparable<Flow>
{
    private Flow(double value) => LitresPerHour = value;

    /// <summary>Nothing: 0 L/h.</summary>
    public static Flow Zero => default;

    /// <summary>Litres per hour.</summary>
    public double LitresPerHour { get; }

    /// <summary>Makes one from m³/h.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Flow FromCubicMetresPerHour(double value) => new(Require.FiniteNotNegative(value) * 1000);

    /// <summary>Makes one from US gallons per minute.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Flow FromUsGallonsPerMinute(double value) => new(Require.FiniteNotNegative(value) * (60 * ExactFactors.LitresPerUsGallon));

    /// <summary>Sum of two flows.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>The sum.</returns>
    public static Flow operator +(Flow left, Flow right) => FromLitresPerHour(left.LitresPerHour + right.LitresPerHour);

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Flow left, Flow right) => left.LitresPerHour < right.LitresPerHour;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Flow left, Flow right) => left.LitresPerHour > right.LitresPerHour;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Flow left, Flow right) => left.LitresPerHour <= right.LitresPerHour;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Flow left, Flow right) => left.LitresPerHour >= right.LitresPerHour;

    /// <summary>Makes one from L/h.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Flow FromLitresPerHour(double value) => new(Require.FiniteNotNegative(value));

    /// <inheritdoc/>
    public int CompareTo(Flow other) => LitresPerHour.CompareTo(other.LitresPerHour);
}
