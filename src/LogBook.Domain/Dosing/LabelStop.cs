using LogBook.Domain.Languages;

namespace LogBook.Domain.Dosing;

/// <summary>A dose that the label does not allow. There is no way round it.</summary>
/// <param name="Kind">Which line of the label.</param>
/// <param name="Says">The sentence.</param>
/// <param name="Value">What would be given or kept, mg/L or h.</param>
/// <param name="Limit">What the label says.</param>
public sealed record LabelStop(LabelStopKind Kind, Said Says, double Value, double Limit);
