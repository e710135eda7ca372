namespace LogBook.Domain.Quantities;

/// <summary>Electrical conductivity of a water, µS/cm at 25 °C.</summary>
/// <remarks>The default is 0 µS/cm (Zero). Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Conductivity : IComparable<Conductivity>
{
    private Conductivity(double value) => MicrosiemensPerCm = value;

    /// <summary>Nothing: 0 µS/cm at 25 °C.</summary>
    public static Conductivity Zero => default;

    /// <summary>µS/cm at 25 °C.</summary>
    public double MicrosiemensPerCm { get; }

    /// <summary>Makes one from mS/cm at 25 °C.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static Conductivity FromMillisiemensPerCm(double value) => new(Require.FiniteNotNegative(value) * ExactFactors.MicrosiemensPerCmPerMillisiemensPerCm);

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Conductivity left, Conductivity right) => left.MicrosiemensPerCm < right.MicrosiemensPerCm;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Conductivity left, Conductivity right) => left.MicrosiemensPerCm > right.MicrosiemensPerCm;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Conductivity left, Conductivity right) => left.MicrosiemensPerCm <= right.MicrosiemensPerCm;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Conductivity left, Conductivity right) => left.MicrosiemensPerCm >= right.MicrosiemensPerCm;

    /// <summary>Makes one from µS/cm at 25 °C.</summary>
    /// <param name="value">Finite, not negative.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Conductivity FromMicrosiemensPerCm(double value) => new(Require.FiniteNotNegative(value));

    /// <inheritdoc/>
    public int CompareTo(Conductivity other) => MicrosiemensPerCm.CompareTo(other.MicrosiemensPerCm);
}
