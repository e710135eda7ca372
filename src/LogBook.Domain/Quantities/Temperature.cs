namespace LogBook.Domain.Quantities;

/// <summary>A temperature (not a difference of two), °C.</summary>
/// <remarks>The default is 0 °C. Compare and sort whole quantities; ratios are plain numbers.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double value) => Celsius = value;

    /// <summary>Degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => (Celsius * 1.8) + 32;

    /// <summary>Makes one from °F.</summary>
    /// <param name="value">Finite, not below absolute zero.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero, NaN or infinite.</exception>
    /// <remarks>Reference: 11-units.csv, F_to_C. A difference has no offset: see <see cref="ExactFactors.CelsiusPerFahrenheitDegree"/>.</remarks>
    public static Temperature FromFahrenheit(double value) => FromCelsius((value - 32) / 1.8);

    /// <summary>Whether the left is smaller.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    /// <summary>Whether the left is larger.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    /// <summary>Whether the left is smaller or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not larger.</returns>
    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    /// <summary>Whether the left is larger or equal.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="right">Right side.</param>
    /// <returns>True when not smaller.</returns>
    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    /// <summary>Makes one from °C.</summary>
    /// <param name="value">Finite, not below -273.15.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, NaN or infinite.</exception>
    public static Temperature FromCelsius(double value) => new(Require.InRange(value, -273.15, double.MaxValue));

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);
}
