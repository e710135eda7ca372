namespace LogBook.Domain.Estimates;

/// <summary>Standard uncertainty of one kind of reading, ready to be put on a value.</summary>
/// <param name="RandomShare">Random part as a share of the value (0.05 is 5 %).</param>
/// <param name="RandomAbsolute">Random part in the unit of the value; adds in quadrature.</param>
/// <param name="CommonName">Name of what repeats ("hand-meter:HM-1"), or null.</param>
/// <param name="CommonShare">Common part as a share of the value.</param>
public sealed record ReadingUncertainty(double RandomShare, double RandomAbsolute = 0, string? CommonName = null, double CommonShare = 0)
{
    // The name as estimates hold it: one array for all values that this is put on.
    private string[]? _names;

    /// <summary>Puts the uncertainty on a value.</summary>
    /// <param name="value">Finite.</param>
    /// <param name="unit">UCUM unit of the value.</param>
    /// <returns>The estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public Estimate On(double value, string unit)
    {
        var share = RandomShare * value;
        var random = Math.Sqrt((share * share) + (RandomAbsolute * RandomAbsolute));
        return new Estimate(value, unit, random, CommonName is null || CommonShare == 0 ? CommonParts.None : CommonParts.One(Names(CommonName), CommonShare * value));
    }

    /// <summary>Adds another independent random share.</summary>
    /// <param name="share">Share of the value.</param>
    /// <returns>Both in quadrature.</returns>
    public ReadingUncertainty WithRandomShare(double share) => this with { RandomShare = Math.Sqrt((RandomShare * RandomShare) + (share * share)) };

    /// <inheritdoc />
    public bool Equals(ReadingUncertainty? other) => other is not null && RandomShare.Equals(other.RandomShare) && RandomAbsolute.Equals(other.RandomAbsolute)
        && CommonName == other.CommonName && CommonShare.Equals(other.CommonShare);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(RandomShare, RandomAbsolute, CommonName, CommonShare);

    private string[] Names(string name)
    {
        if (_names is null || !ReferenceEquals(_names[0], name))
        {
            _names = [name];
        }

        return _names;
    }
}
