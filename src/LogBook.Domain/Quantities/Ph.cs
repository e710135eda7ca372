namespace LogBook.Domain.Quantities;

/// <summary>A pH.</summary>
/// <remarks>The default is pH 0, which no cooling water has. Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Ph : IComparable<Ph>
{
    private Ph(double value) => Value = value;

    /// <summary>pH, 0 to 14.</summary>
    public double Value { get; }

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Ph left, Ph right) => left.Value < right.Value;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Ph left, Ph right) => left.Value > right.Value;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Ph left, Ph right) => left.Value <= right.Value;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Ph left, Ph right) => left.Value >= right.Value;

    /// <summary>Makes one from a pH.</summary>
    /// <param name="value">0 to 14.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Ph From(double value) => new(Require.InRange(value, 0, 14));

    /// <inheritdoc/>
    public int CompareTo(Ph other) => Value.CompareTo(other.Value);
}
