namespace LogBook.Domain.Estimates;

/// <summary>A sum of estimates of one unit that is added to again and again: the same numbers as <see cref="Estimate.Plus"/> one after the other, without an estimate for each step.</summary>
/// <param name="unit">UCUM unit of all of them.</param>
internal sealed class EstimateSum(string unit)
{
    private double _random;
    private string[] _names = [];
    private double[] _parts = [];
    private bool _ownsParts;

    /// <summary>Value of the sum.</summary>
    public double Value { get; private set; }

    /// <summary>Adds an estimate.</summary>
    /// <param name="estimate">Same unit.</param>
    /// <exception cref="ArgumentException">The units differ.</exception>
    public void Add(Estimate estimate)
    {
        if (estimate.Unit != unit)
        {
            throw new ArgumentException($"Units differ: {unit} and {estimate.Unit}.", nameof(estimate));
        }

        Value += estimate.Value;
        _random = Math.Sqrt((_random * _random) + (estimate.Random * estimate.Random));
        estimate.Parts.AddTo(ref _names, ref _parts, ref _ownsParts);
    }

    /// <summary>The sum as it stands.</summary>
    public Estimate ToEstimate()
    {
        _ownsParts = false;
        return new Estimate(Value, unit, _random, CommonParts.Sharing(_names, _parts));
    }
}
