using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Calculators;

/// <summary>One feed of the programme with what is known of it.</summary>
/// <param name="Output">Code of its output.</param>
/// <param name="Feed">The feed as the controller holds it.</param>
/// <param name="Product">Product of its drum, or null.</param>
/// <param name="Pump">Its pump, or null.</param>
/// <param name="PumpLPerH">Output of the pump: measured where it was, else rated; null where neither is on file.</param>
/// <param name="TargetMgPerL">Level aimed at, mg/L as product, or null.</param>
public sealed record FeedStart(string Output, Feed Feed, Product? Product, Pump? Pump, KnownNumber? PumpLPerH, KnownNumber? TargetMgPerL)
{
    /// <summary>Output of the pump the label is kept for: the stronger of the measured and the rated; null where neither is on file.</summary>
    public KnownNumber? PumpForLabelLPerH { get; init; }
}
