using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>How much of a product a system usually takes: what its early visits tell since the last change.</summary>
/// <param name="Start">Visit from which probe, pump, set point and product are the same.</param>
/// <param name="Until">Visit at which the baseline ends, or null before there is one.</param>
/// <param name="PerLitre">Product over make-up, L/L.</param>
/// <param name="PerDay">Product a day, L/d.</param>
/// <remarks>
/// For oxidants and acids, which follow demand and not loss. Both are kept: what decays by itself goes with time, what is lost or
/// consumed by the make-up goes with water, and a change of season moves the two apart.
/// </remarks>
internal sealed record OwnUse(VisitFacts Start, VisitFacts? Until, Estimate? PerLitre, Estimate? PerDay)
{
    private const int BaselineVisits = 5;
    private const double BaselineLevelUncertainties = 24;

    private int Undisturbed { get; init; }

    /// <summary>Works out the baseline from that of the visit before.</summary>
    /// <param name="visit">The visit; what changed at it counts from the next one on.</param>
    /// <param name="drum">Code of the drum.</param>
    /// <returns>The baseline up to this visit.</returns>
    public static OwnUse Of(VisitFacts visit, string drum)
    {
        if (visit.Previous is not { } previous || IsStart(previous, visit, drum))
        {
            return new OwnUse(visit.Previous ?? visit, null, null, null) { Undisturbed = 1 };
        }

        var past = previous.OwnUse(drum);
        if (past.Until is not null || visit.Unsettled is not null)
        {
            return past;
        }

        past = past with { Undisturbed = past.Undisturbed + 1 };
        if (past.Undisturbed < BaselineVisits
            || visit.Drum(drum) is not { Found: { HasValue: true, Value: var level } }
            || ProductUse.UsedBetween(past.Start, visit, drum) is not { HasValue: true, Value: var used }
            || used.Value < BaselineLevelUncertainties * level.StandardUncertainty
            || MakeUpBetween(past.Start, visit) is not { Value: > 0 } makeUp)
        {
            return past;
        }

        var days = (visit.Visit.At - past.Start.Visit.At).TotalDays;
        return past with { Until = visit, PerLitre = used.Over(makeUp), PerDay = used.Scaled(1 / days, "L/d") };
    }

    /// <summary>Make-up between two visits, L; null where the meter does not tell.</summary>
    public static Estimate? MakeUpBetween(VisitFacts from, VisitFacts to)
    {
        Estimate? sum = null;
        for (var at = to; at != from;)
        {
            if (at.Water is not { MakeUp: { HasValue: true, Value: var litres }, Since: { } since } || since.Visit.At < from.Visit.At)
            {
                return null;
            }

            sum = sum is null ? litres : sum.Plus(litres);
            at = since;
        }

        return sum;
    }

    private static bool IsStart(VisitFacts previous, VisitFacts visit, string drum) =>
        previous.Record.Events.Any(e => e.Type is EventType.PumpRenewed or EventType.ProbeRenewed or EventType.Drained or EventType.Cleaned)
        || previous.Drum(drum) is { Left.HasValue: false }
        || FeedParts.IsEmpty(previous.Drum(drum)) == true
        || (previous.Programme != visit.Programme && Key(previous, drum) != Key(visit, drum));

    private static (FeedMode?, double?, double?) Key(VisitFacts visit, string drum) => FeedParts.FeedOf(visit, drum) is { } feed
        ? (feed.Mode, feed.SetPoint, feed.TargetMgPerL)
        : (null, null, null);
}
