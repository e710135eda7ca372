using LogBook.Domain.Cycles;
using LogBook.Domain.Intervals;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>How much the bleed was open, and how much liquid left, over the stretch of about a week or more that ends with a visit.</summary>
/// <param name="From">Visit at which the stretch begins.</param>
/// <param name="Days">Its length, d.</param>
/// <param name="OpenPerDay">Hours the bleed was open a day, h/d; litres by the bleed's own meter a day where <paramref name="IsMetered"/>.</param>
/// <param name="IsMetered">Whether the bleed has a meter of its own.</param>
/// <param name="MakeUpPerDay">Make-up a day without what refilled drains, L.</param>
/// <param name="LossPerDay">All liquid lost a day, make-up over cycles, without filter backwash, L.</param>
public sealed record BleedInterval(VisitFacts From, double Days, double OpenPerDay, bool IsMetered, Estimate MakeUpPerDay, Estimate LossPerDay)
{
    // Shorter stretches carry the error of a single test of cycles and of where in a bleed they began.
    private const double WantedDays = 6.5;
    private const double ShortestDays = 2.5;

    // Two ends share the mean of the make-up: their cycles do not average out better than this.
    private const double LeastCyclesShare = 0.035;

    /// <summary>Works out the stretch that ends with a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The stretch; none where the water was unsettled at either end, the set point changed on the way or a counter is missing.</returns>
    public static Computed<BleedInterval> Of(VisitFacts visit)
    {
        if (visit.Unsettled is { } unsettled)
        {
            return Computed<BleedInterval>.None(unsettled);
        }

        Estimate? makeUp = null;
        var (open, days, backwash) = (0.0, 0.0, 0.0);
        var metered = IsMeteredAt(visit);
        var at = visit;
        while (days < WantedDays)
        {
            var step = StepOf(at, metered);
            if (!step.HasValue)
            {
                if (days >= ShortestDays)
                {
                    break;
                }

                return step.WithoutValue<BleedInterval>();
            }

            makeUp = makeUp is null ? step.Value.MakeUp : makeUp.Plus(step.Value.MakeUp);
            open += step.Value.Open;
            backwash += step.Value.Backwash;
            days += (at.Visit.At - step.Value.From.Visit.At).TotalDays;
            at = step.Value.From;
        }

        return days < ShortestDays
            ? Computed<BleedInterval>.None(VisitReasons.Unsettled)
            : MeanCycles(visit, at).Map(cycles =>
            {
                var concentrated = makeUp!.Scaled(1 / days);
                var loss = concentrated.Over(cycles, "L").Minus(Estimate.Exact(backwash / days, "L"));
                return new BleedInterval(at, days, open / days, metered, concentrated, loss);
            });
    }

    private static bool IsMeteredAt(VisitFacts visit) =>
        visit.Water.CyclesByVolume.HasValue && visit.History.System.Meters.Any(meter => meter.Measures == MeterMeasures.Bleed);

    private static Computed<Step> StepOf(VisitFacts at, bool metered)
    {
        var opened = metered ? at.Water.Bleed : at.Water.BleedHours;
        if (!opened.HasValue)
        {
            return opened.WithoutValue<Step>();
        }

        // Hours may have been left out at visits that read the register: the step then spans all of them.
        var start = metered ? at.Water.Since : at.HoursSince(at.BleedOutput ?? "");
        Estimate? makeUp = null;
        var backwash = 0.0;
        var from = at;
        do
        {
            if (!from.Water.MakeUp.HasValue)
            {
                return from.Water.MakeUp.WithoutValue<Step>();
            }

            if (from.Water.Since is not { } since || start is null || since.Visit.At < start.Visit.At)
            {
                return Computed<Step>.None(IntervalReasons.NotRead);
            }

            // What refilled a drain was not concentrated; a register that shows less than it was fed another way.
            var concentrated = from.Water.MakeUp.Value.Minus(from.Balance.Drains);
            makeUp = makeUp is null ? concentrated : makeUp.Plus(concentrated);
            backwash += BackwashOf(from);
            if (from.Programme?.SetPointUsPerCm != since.Programme?.SetPointUsPerCm || SetPointMoved(from) || SetPointMoved(since))
            {
                return Computed<Step>.None(VisitReasons.Unsettled);
            }

            from = since;
        }
        while (from != start);

        return from.Unsettled is { } unsettled ? Computed<Step>.None(unsettled)
            : makeUp.Value > 0 ? Computed<Step>.Of(new Step(from, makeUp, opened.Value.Value, backwash))
            : Computed<Step>.None(VisitReasons.RegisterContradictsBleed);
    }

    private static bool SetPointMoved(VisitFacts visit)
    {
        var settings = visit.Record.Settings;
        for (var i = 0; i < settings.Count; i++)
        {
            if (settings[i].Name == "setPointUsPerCm" && settings[i].Found?.Number is { } found && settings[i].Left?.Number is { } left && found != left)
            {
                return true;
            }
        }

        return false;
    }

    private static double BackwashOf(VisitFacts visit)
    {
        var sum = 0.0;
        for (var i = 0; i < visit.Meters.Count; i++)
        {
            var meter = visit.Meters[i];
            sum += meter.Meter.Measures == MeterMeasures.Backwash && meter.Since == visit.Water.Since && meter.Litres.HasValue ? meter.Litres.Value.Value : 0;
        }

        return sum;
    }

    // A visit whose routes contradict each other tells nobody which of them is right: it does not count where others do.
    private static Computed<Estimate> MeanCycles(VisitFacts visit, VisitFacts from)
    {
        var (count, sum, shares) = (0, 0.0, 0.0);
        var hasAgreeing = false;
        for (var at = visit; at is not null; at = at == from ? null : at.Previous)
        {
            if (at.Unsettled is not null || at.Cycles.Best is not { HasValue: true, Value: { Value: > 0 } cycles } || (hasAgreeing && at.Cycles.RoutesContradict))
            {
                continue;
            }

            if (!hasAgreeing && !at.Cycles.RoutesContradict)
            {
                (hasAgreeing, count, sum, shares) = (true, 0, 0, 0);
            }

            count++;
            sum += cycles.Value;
            shares += cycles.StandardUncertainty / cycles.Value;
        }

        if (count == 0)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var mean = sum / count;
        var share = shares / count / Math.Sqrt(Math.Min(2, count));
        return Computed<Estimate>.Of(new Estimate(mean, "1", Math.Max(share, LeastCyclesShare) * mean));
    }

    private sealed record Step(VisitFacts From, Estimate MakeUp, double Open, double Backwash);
}
