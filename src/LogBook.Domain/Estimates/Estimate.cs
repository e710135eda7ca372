namespace LogBook.Domain.Estimates;

/// <summary>
/// A value with its standard uncertainty, kept as a random part and named common parts, so that what two figures share
/// cancels in their ratio and does not average out.
/// </summary>
/// <remarks>
/// First-order propagation: parts with different names combine as the root of the sum of squares (JCGM 100:2008, 5.1.2),
/// parts of equal name add with their sign (5.2.2, correlation +1). Random parts are taken as independent.
/// Parts are in the unit of the value; a common part carries the sign of its effect on the value.
/// </remarks>
public sealed record Estimate
{
    /// <summary>Makes an estimate.</summary>
    /// <param name="value">Finite value in <paramref name="unit"/>.</param>
    /// <param name="unit">UCUM unit; "1" for a ratio.</param>
    /// <param name="random">Standard uncertainty of the random part, same unit, not negative.</param>
    /// <param name="common">Signed common parts by name, same unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or <paramref name="random"/> is negative.</exception>
    public Estimate(double value, string unit, double random, IReadOnlyDictionary<string, double>? common = null)
    {
        Value = double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value));
        Random = double.IsFinite(random) && random >= 0 ? random : throw new ArgumentOutOfRangeException(nameof(random));
        Unit = unit;
        _parts = CommonParts.Of(common);
    }

    internal Estimate(double value, string unit, double random, CommonParts common)
    {
        Value = double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value));
        Random = double.IsFinite(random) && random >= 0 ? random : throw new ArgumentOutOfRangeException(nameof(random));
        Unit = unit;
        _parts = common;
    }

    private readonly CommonParts _parts;

    /// <summary>The common parts, not boxed.</summary>
    internal CommonParts Parts => _parts;

    /// <summary>The value, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>UCUM unit.</summary>
    public string Unit { get; }

    /// <summary>Standard uncertainty of the random part.</summary>
    public double Random { get; }

    /// <summary>Signed common parts by name, such as "hand-meter:HM-1" or "lot:IN-0412".</summary>
    public IReadOnlyDictionary<string, double> Common => _parts;

    /// <summary>Combined standard uncertainty.</summary>
    public double StandardUncertainty => Math.Sqrt((Random * Random) + _parts.Squares);

    /// <summary>Expanded uncertainty, k = 2 (about 95 %).</summary>
    public double ExpandedUncertainty => 2 * StandardUncertainty;

    /// <summary>Lower end of the interval value ± expanded uncertainty.</summary>
    public double Low => Value - ExpandedUncertainty;

    /// <summary>Upper end of the interval value ± expanded uncertainty.</summary>
    public double High => Value + ExpandedUncertainty;

    /// <summary>Whether zero lies outside the interval value ± expanded uncertainty.</summary>
    public bool IsClearOfZero => Math.Abs(Value) > ExpandedUncertainty;

    /// <summary>An exact number.</summary>
    /// <param name="value">Finite.</param>
    /// <param name="unit">UCUM unit.</param>
    /// <returns>An estimate without uncertainty.</returns>
    public static Estimate Exact(double value, string unit = "1") => new(value, unit, 0, CommonParts.None);

    /// <summary>Adds a common part.</summary>
    /// <param name="name">Name of what is shared.</param>
    /// <param name="part">Signed standard uncertainty, in the unit of the value.</param>
    /// <returns>The estimate with the part; a part of that name grows.</returns>
    public Estimate WithCommon(string name, double part) => new(Value, Unit, Random, _parts.With(name, part));

    /// <summary>The same with another random part.</summary>
    /// <param name="random">Standard uncertainty of the random part, in <see cref="Unit"/>, not negative.</param>
    /// <returns>The estimate; its common parts stay.</returns>
    internal Estimate WithRandom(double random) => new(Value, Unit, random, _parts);

    /// <summary>The same with its random part under a name, so that it is known again where it is used twice.</summary>
    /// <param name="name">Name of what only this estimate has.</param>
    /// <returns>The estimate without a random part.</returns>
    internal Estimate RandomNamed(string name) => new(Value, Unit, 0, _parts.With(name, Random));

    /// <summary>Sum of two estimates of the same unit.</summary>
    /// <param name="other">Same unit.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentException">The units differ.</exception>
    public Estimate Plus(Estimate other) => Combine(other, Value + other.Value, SameUnit(other), 1, 1);

    /// <summary>Difference of two estimates of the same unit.</summary>
    /// <param name="other">Same unit.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentException">The units differ.</exception>
    public Estimate Minus(Estimate other) => Combine(other, Value - other.Value, SameUnit(other), 1, -1);

    /// <summary>Standard uncertainty of the difference of two estimates of one unit: that of <see cref="Minus"/>, without the difference.</summary>
    /// <param name="other">Same unit.</param>
    /// <returns>In <see cref="Unit"/>.</returns>
    internal double UncertaintyOfDifference(Estimate other)
    {
        _ = SameUnit(other);
        var random = Math.Sqrt((Random * Random) + (other.Random * other.Random));
        return Math.Sqrt((random * random) + _parts.SquaresOfDifference(other._parts));
    }

    /// <summary>The estimate and an exact amount of the same unit: as the sum with <see cref="Exact"/>, which leaves the uncertainty as it is.</summary>
    /// <param name="amount">In <see cref="Unit"/>, finite.</param>
    /// <returns>The sum.</returns>
    internal Estimate PlusExact(double amount) => amount == 0 ? this : new(Value + amount, Unit, Random, _parts);

    /// <summary>Product of two estimates.</summary>
    /// <param name="other">Any unit.</param>
    /// <param name="unit">UCUM unit of the product.</param>
    /// <returns>The product.</returns>
    public Estimate Times(Estimate other, string unit) => Combine(other, Value * other.Value, unit, other.Value, Value);

    /// <summary>Quotient of two estimates.</summary>
    /// <param name="other">Not zero.</param>
    /// <param name="unit">UCUM unit of the quotient; "1" for equal units.</param>
    /// <returns>The quotient.</returns>
    /// <exception cref="DivideByZeroException"><paramref name="other"/> is zero.</exception>
    public Estimate Over(Estimate other, string unit = "1") => other.Value == 0
        ? throw new DivideByZeroException("The divisor of an estimate is zero.")
        : Combine(other, Value / other.Value, unit, 1 / other.Value, -Value / (other.Value * other.Value));

    /// <summary>The estimate times an exact factor.</summary>
    /// <param name="factor">Finite.</param>
    /// <param name="unit">New UCUM unit; the old one when absent.</param>
    /// <returns>The scaled estimate.</returns>
    public Estimate Scaled(double factor, string? unit = null) => new(
        Value * factor, unit ?? Unit, Random * Math.Abs(factor), _parts.Scaled(factor));

    /// <summary>Sum of estimates of one unit, each times an exact weight: the same as scaling and adding one after the other.</summary>
    /// <param name="values">At least one; one unit.</param>
    /// <param name="weights">Finite, one for each value.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentException">The units differ.</exception>
    internal static Estimate WeightedSum(IReadOnlyList<Estimate> values, ReadOnlySpan<double> weights)
    {
        var first = values[0];
        var (value, random) = (first.Value * weights[0], first.Random * Math.Abs(weights[0]));
        var parts = new CommonParts.Sum(first._parts, weights[0]);
        for (var i = 1; i < values.Count; i++)
        {
            value += values[i].Value * weights[i];
            var other = values[i].Random * Math.Abs(weights[i]);
            random = Math.Sqrt((random * random) + (other * other));
            parts.Add(values[i]._parts, weights[i]);
            _ = first.SameUnit(values[i]);
        }

        return new Estimate(value, first.Unit, random, parts.ToParts());
    }

    private Estimate Combine(Estimate other, double value, string unit, double d1, double d2)
    {
        var random = Math.Sqrt((Random * d1 * (Random * d1)) + (other.Random * d2 * (other.Random * d2)));
        return new Estimate(value, unit, random, _parts.Combine(d1, other._parts, d2));
    }

    private string SameUnit(Estimate other) => Unit == other.Unit
        ? Unit
        : throw new ArgumentException($"Units differ: {Unit} and {other.Unit}.", nameof(other));
}
