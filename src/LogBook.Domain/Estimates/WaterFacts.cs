using LogBook.Domain.Cycles;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>Water counted since the last reading: make-up and bleed.</summary>
/// <param name="Since">Visit from which the make-up counts, or null.</param>
/// <param name="MakeUp">Make-up since then, L.</param>
/// <param name="BleedHours">Hours the bleed was open since its last reading, h.</param>
/// <param name="ValveFlow">Flow of the open bleed valve, L/h.</param>
/// <param name="Bleed">Bleed since then, L: by its own meter, else hours times valve flow.</param>
/// <param name="CyclesByVolume">Make-up over bleed.</param>
public sealed record WaterFacts(
    VisitFacts? Since,
    Computed<Estimate> MakeUp,
    Computed<Estimate> BleedHours,
    Computed<Estimate> ValveFlow,
    Computed<Estimate> Bleed,
    Computed<Estimate> CyclesByVolume)
{
    private const double TimedForDays = 180;

    /// <summary>Counts the water of the interval that ends with a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The amounts, each with its reasons where it is not known.</returns>
    public static WaterFacts Of(VisitFacts visit)
    {
        var (since, makeUp) = Metered(visit, visit.History.MakeUpMeters);
        var output = visit.BleedOutput;
        var hours = output is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : visit.HoursRun(output);
        var flow = Flow(visit);
        var (bleedSince, metered) = Metered(visit, visit.History.BleedMeters);
        var bleed = metered.HasValue && bleedSince == since ? metered
            : !hours.HasValue ? hours
            : flow.HasValue ? Computed<Estimate>.Of(hours.Value.Times(flow.Value, "L")) : flow;
        var sameInterval = since is not null && (metered.HasValue || visit.HoursSince(output ?? "") == since);
        return new WaterFacts(
            since,
            makeUp,
            hours,
            flow,
            bleed,
            sameInterval ? makeUp.Then(m => bleed.Then(b => CyclesOfConcentration.FromMeters(m, b))) : Computed<Estimate>.None(VisitReasons.NotMeasured));
    }

    private static (VisitFacts? Since, Computed<Estimate> Litres) Metered(VisitFacts visit, string[] codes)
    {
        if (codes.Length == 0)
        {
            return (null, Computed<Estimate>.None(VisitReasons.NoMeter));
        }

        Estimate? sum = null;
        VisitFacts? since = null;
        foreach (var code in codes)
        {
            if (visit.Meter(code) is not { } meter)
            {
                return (null, Computed<Estimate>.None(VisitReasons.NotMeasured));
            }

            if (meter.Meter.Serves.Count > 1)
            {
                return (null, Computed<Estimate>.None(VisitReasons.SharedMeter));
            }

            if (!meter.Litres.HasValue)
            {
                return (null, meter.Litres);
            }

            if (since is not null && since != meter.Since)
            {
                return (null, Computed<Estimate>.None(VisitReasons.NotMeasured));
            }

            since = meter.Since;
            sum = sum is null ? meter.Litres.Value : sum.Plus(meter.Litres.Value);
        }

        return (since, Computed<Estimate>.Of(sum!));
    }

    // A bucket timing within 180 days, at a visit or in the set-up, beats the plate.
    private static Computed<Estimate> Flow(VisitFacts visit)
    {
        var output = visit.BleedOutput ?? "bleed";
        for (var earlier = visit; earlier is not null && (visit.Visit.At - earlier.Visit.At).TotalDays <= TimedForDays; earlier = earlier.Previous)
        {
            if (earlier.Record.BleedTest is { Seconds: > 0, Litres: > 0 } test)
            {
                return Computed<Estimate>.Of(visit.History.Firm.Engine.Uncertainties.BleedValve(true, output).On(test.Litres / test.Seconds * 3600, "L/h"));
            }
        }

        var system = visit.History.System;
        if (system.BleedTimed is { LPerH: > 0 } timed && timed.On <= visit.Day && visit.Day.DayNumber - timed.On.DayNumber <= TimedForDays)
        {
            return Computed<Estimate>.Of(visit.History.Firm.Engine.Uncertainties.BleedValve(true, output).On(timed.LPerH, "L/h"));
        }

        return (system.BleedTimed is { LPerH: > 0 } old && old.On <= visit.Day ? old.LPerH : system.BleedValveLPerH) is { } litresPerHour and > 0
            ? Computed<Estimate>.Of(visit.History.Firm.Engine.Uncertainties.BleedValve(false, output).On(litresPerHour, "L/h"))
            : Computed<Estimate>.None(VisitReasons.NoValveFlow);
    }
}
