using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>One figure of the evidence, not yet put into a language.</summary>
/// <param name="What">What it is.</param>
/// <param name="Value">Value in <paramref name="Unit"/>.</param>
/// <param name="Unit">UCUM unit.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
/// <param name="LimitLow">Lower threshold used.</param>
/// <param name="LimitHigh">Upper threshold used.</param>
public sealed record EvidenceFigure(
    Text What,
    double? Value,
    string Unit,
    double? Low = null,
    double? High = null,
    double? LimitLow = null,
    double? LimitHigh = null)
{
    /// <summary>A figure from an estimate, with its interval value ± expanded uncertainty (k = 2).</summary>
    /// <param name="what">What it is.</param>
    /// <param name="estimate">The estimate.</param>
    /// <param name="limitLow">Lower threshold used.</param>
    /// <param name="limitHigh">Upper threshold used.</param>
    /// <returns>The figure.</returns>
    public static EvidenceFigure Of(Text what, Estimate estimate, double? limitLow = null, double? limitHigh = null) =>
        new(what, estimate.Value, estimate.Unit, estimate.Low, estimate.High, limitLow, limitHigh);

    /// <summary>The figure worded in one language.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>The evidence of the exchange format.</returns>
    public Evidence In(Language language) => new()
    {
        What = What.In(language),
        Value = Value,
        Low = Low,
        High = High,
        LimitLow = LimitLow,
        LimitHigh = LimitHigh,
        Unit = Unit,
    };
}
