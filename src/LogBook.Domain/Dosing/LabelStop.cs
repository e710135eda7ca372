using LogBook.Domain.Calculators;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Dosing;

/// <summary>A dose that the label does not allow. There is no way round it.</summary>
/// <param name="Kind">Which line of the label.</param>
/// <param name="Says">The sentence.</param>
/// <param name="Value">What would be given or kept, mg/L or h.</param>
/// <param name="Limit">What the label says.</param>
public sealed record LabelStop(LabelStopKind Kind, Said Says, double Value, double Limit)
{
    private static readonly Text WithPump = new("{0} Judged with the pump at {1} ({2}).", "{0} Juzgado con la bomba a {1} ({2}).", "{0} Julgado com a bomba a {1} ({2}).");

    /// <summary>The stop with the pump output it was judged by, where that decides it: gap and contact do not depend on it.</summary>
    /// <param name="pump">Output, L/h, and where it is known from.</param>
    /// <returns>The stop.</returns>
    internal LabelStop By(KnownNumber pump) => Kind is LabelStopKind.Dose or LabelStopKind.Week
        ? this with { Says = new Said(WithPump, Says, new Amount(pump.Estimate.Value, pump.Estimate.Unit), pump.Origin) }
        : this;
}
