namespace LogBook.Domain.Estimates;

/// <summary>What the output of a pump is compared with.</summary>
public enum PumpBasis
{
    /// <summary>Its own first drawdown at this stroke and speed.</summary>
    Drawdown,

    /// <summary>Its own output over the first visits at this stroke and speed.</summary>
    Early,

    /// <summary>Its rating on file.</summary>
    Rating,
}
