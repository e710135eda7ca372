using LogBook.Domain.Cycles;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>Water balance of the interval that ends with a visit.</summary>
/// <param name="Cycles">Mean of the cycles at both ends, or of the end that has them.</param>
/// <param name="LiquidLoss">All water lost as liquid, L: make-up over cycles, and what was drained.</param>
/// <param name="Evaporation">Evaporation, L.</param>
/// <param name="Drains">Water drained and filled again, L.</param>
/// <param name="Unexplained">Loss that bleed and drains do not explain, L.</param>
public sealed record BalanceFacts(
    Computed<Estimate> Cycles,
    Computed<Estimate> LiquidLoss,
    Computed<Estimate> Evaporation,
    Estimate Drains,
    Computed<Estimate> Unexplained)
{
    /// <summary>Works out the balance.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The balance, each part with its reasons where it is not known.</returns>
    public static BalanceFacts Of(VisitFacts visit)
    {
        var water = visit.Water;
        var cycles = MeanCycles(visit, water.Since);
        var drains = DrainsBetween(visit, water.Since);

        // Water that replaced a drain was not concentrated: it is lost one to one and takes its charge of product with it.
        var believed = Believed(water, cycles);
        if (!believed.HasValue || !cycles.HasValue)
        {
            var unknown = believed.HasValue ? cycles : believed;
            return new BalanceFacts(cycles, unknown, unknown, drains, unknown);
        }

        var concentrated = believed.Value.Minus(drains);
        var undrained = WaterBalance.LiquidLoss(concentrated, cycles.Value);
        var loss = undrained.HasValue ? Computed<Estimate>.Of(undrained.Value.Plus(drains)) : undrained;
        var unexplained = !loss.HasValue ? loss
            : water.Bleed.HasValue ? Computed<Estimate>.Of(loss.Value.Minus(drains).Minus(water.Bleed.Value))
            : water.Bleed;
        return new BalanceFacts(cycles, loss, WaterBalance.Evaporation(concentrated, cycles.Value), drains, unexplained);
    }

    // What the bleed took away needed as many times as much make-up: a register that shows less beyond doubt has stood still.
    private static Computed<Estimate> Believed(WaterFacts water, Computed<Estimate> cycles)
    {
        if (!water.MakeUp.HasValue || !water.Bleed.HasValue || !cycles.HasValue)
        {
            return water.MakeUp;
        }

        var missing = water.Bleed.Value.Times(cycles.Value, "L").Minus(water.MakeUp.Value);
        return missing.Value > missing.ExpandedUncertainty && missing.Value > 0 ? Computed<Estimate>.None(VisitReasons.RegisterContradictsBleed) : water.MakeUp;
    }

    private static Computed<Estimate> MeanCycles(VisitFacts visit, VisitFacts? since)
    {
        var now = visit.NamedCycles;
        var then = since?.NamedCycles;
        return (now, then) switch
        {
            ({ } a, { } b) => Computed<Estimate>.Of(a.Plus(b).Scaled(0.5)),
            ({ } a, null) => Computed<Estimate>.Of(a),
            (null, { } b) => Computed<Estimate>.Of(b),
            _ => visit.Cycles.Best,
        };
    }

    // The random part of a visit's cycles serves the interval before and the one after: naming it keeps it from averaging out.
    internal static Estimate? Named(VisitFacts visit)
    {
        if (visit.Unsettled is not null || visit.Cycles.Best is not { HasValue: true, Value: var best })
        {
            return null;
        }

        return best.RandomNamed(visit.PartName);
    }

    private static Estimate DrainsBetween(VisitFacts visit, VisitFacts? since)
    {
        var drained = new Estimate(0, "L", 0);
        for (var between = visit; between is not null && between != since; between = between.Previous)
        {
            foreach (var drain in between.Record.Events)
            {
                if (drain.Type != EventType.Drained)
                {
                    continue;
                }

                var litres = drain.Litres is { } known
                    ? new Estimate(known, "L", 0.1 * known)
                    : visit.History.System.VolumeL is { } volume ? visit.History.Firm.Engine.Uncertainties.SystemVolume().On(volume, "L") : new Estimate(0, "L", 0);
                drained = drained.Plus(litres);
            }
        }

        return drained;
    }
}
