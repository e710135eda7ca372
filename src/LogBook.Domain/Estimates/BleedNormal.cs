using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>
/// What the liquid loss of a system usually is for the hours its bleed is open: loss = flow × hours + a fixed rest (drift, a stop
/// overflow), fitted to the system's own first undisturbed stretches and held against what is on file of the valve.
/// </summary>
/// <remarks>
/// A fixed rest weighs more at low load, so both parts are fitted and the uncertainty of the forecast grows where the load is another than
/// the one the system was learnt at. The own stretches are the first ones after an event, not the latest: a loss that grows slowly would
/// otherwise teach itself to be normal. Least squares with prior knowledge (JCGM 100 for the combination of uncertainties).
/// </remarks>
public sealed class BleedNormal
{
    /// <summary>Stretches that make a baseline (findings, rule 7).</summary>
    public const int Enough = 5;

    private const int Most = 12;
    private const double EnoughDays = 40;

    // Drift and small known losses, as a share of the usual liquid loss; with new eliminators next to nothing, with old ones a tenth and more.
    private const double RestShare = 0.03;
    private const double RestUncertainty = 0.07;

    // Scatter of one stretch beyond what the test of cycles tells: storage, season within it.
    private const double LeastScatter = 0.04;

    // A bucket timing so much off the one before tells of another valve or another opening.
    private const double OtherValve = 0.25;

    // A stretch that is so far off the forecast is not taken for normal.
    private const double Suspicious = 0.25;
    private const double MeterUncertainty = 0.03;

    private readonly (double Open, double Loss, double Scatter)[] _stretches;
    private readonly double _days;
    private readonly DateTime _until;
    private readonly bool _metered;
    private double? _usualOpen;
    private double? _usualLoss;

    private BleedNormal((double Open, double Loss, double Scatter)[] stretches, double days, DateTime until, bool metered)
    {
        _stretches = stretches;
        _days = days;
        _until = until;
        _metered = metered;
    }

    /// <summary>Nothing learnt yet.</summary>
    public static BleedNormal None { get; } = new([], 0, DateTime.MinValue, false);

    /// <summary>Stretches learnt from.</summary>
    public int Count => _stretches.Length;

    /// <summary>Whether it is a baseline.</summary>
    public bool IsBaseline => Count >= Enough;

    // Medians of the stretches, of which there is at least one where they are asked for: the same from visit to visit once all are learnt.
    private double UsualOpen => _usualOpen ??= Statistics.Median([.. _stretches.Select(s => s.Open)]);

    private double UsualLoss => _usualLoss ??= Statistics.Median([.. _stretches.Select(s => s.Loss)]);

    private bool IsFull => (Count >= Enough && _days >= EnoughDays) || Count >= Most;

    /// <summary>What is known after one more visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>This, or more, or nothing where an event makes the old stretches worthless.</returns>
    public BleedNormal After(VisitFacts visit)
    {
        if (Restarts(visit))
        {
            return new BleedNormal([], 0, visit.Visit.At, false);
        }

        if (IsFull || visit.Bleed is not { HasValue: true, Value: var stretch } || stretch.From.Visit.At < _until || (Count > 0 && stretch.IsMetered != _metered))
        {
            return this;
        }

        // Neither a leak nor a blocked valve is to be learnt as normal. Before anything was learnt only the valve on file can tell.
        if (Forecast(visit, stretch) is { } forecast)
        {
            var off = stretch.LossPerDay.Minus(forecast);
            var limit = Count >= 2 ? Suspicious : 2 * Suspicious;
            if (Math.Abs(off.Value) > limit * Math.Max(stretch.LossPerDay.Value, forecast.Value) && Math.Abs(off.Value) > off.ExpandedUncertainty)
            {
                return this;
            }
        }

        var scatter = Math.Max(stretch.LossPerDay.StandardUncertainty, LeastScatter * stretch.LossPerDay.Value);
        return new BleedNormal([.. _stretches, (stretch.OpenPerDay, stretch.LossPerDay.Value, scatter)], _days + stretch.Days, visit.Visit.At, stretch.IsMetered);
    }

    /// <summary>Loss to be expected for the time the bleed was open.</summary>
    /// <param name="visit">Visit, for the valve's flow on file or timed.</param>
    /// <param name="stretch">The stretch that ends with it.</param>
    /// <returns>L a day with its uncertainty, or null where nothing is known of the valve and nothing was learnt.</returns>
    public Estimate? Forecast(VisitFacts visit, BleedInterval stretch) => Fit(visit, stretch) is { } fit
        ? new Estimate(
            (fit.Flow * stretch.OpenPerDay) + fit.Fixed,
            "L",
            Math.Sqrt(Math.Max(0, (fit.VarFlow * stretch.OpenPerDay * stretch.OpenPerDay) + (2 * fit.Covariance * stretch.OpenPerDay) + fit.VarRest)))
        : null;

    /// <summary>Flow of the open bleed as the system's own history tells it, together with what is on file.</summary>
    /// <param name="visit">Visit, for the valve's flow on file or timed.</param>
    /// <param name="stretch">The stretch that ends with it.</param>
    /// <returns>L/h (a pure number near one for a metered bleed), or null.</returns>
    public Estimate? Flow(VisitFacts visit, BleedInterval stretch) =>
        Fit(visit, stretch) is { } fit ? new Estimate(fit.Flow, stretch.IsMetered ? "1" : "L/h", Math.Sqrt(fit.VarFlow)) : null;

    /// <summary>Bleed that is normal at the load of a stretch: the own median, or what its evaporation needs at the target cycles, whichever is more.</summary>
    /// <param name="visit">Visit, for the programme.</param>
    /// <param name="stretch">The stretch that ends with it.</param>
    /// <returns>L a day, or null.</returns>
    public double? NormalBleedPerDay(VisitFacts visit, BleedInterval stretch)
    {
        if (Fit(visit, stretch) is not { } fit)
        {
            return null;
        }

        var own = Count > 0 ? fit.Flow * UsualOpen : 0;
        var evaporation = Math.Max(0, stretch.MakeUpPerDay.Value - stretch.LossPerDay.Value);
        var needed = visit.Programme?.TargetCycles is { } target and > 1 ? (evaporation / (target - 1)) - Math.Max(0, fit.Fixed) : 0;
        var normal = Math.Max(own, needed);
        return normal > 0 ? normal : null;
    }

    private static bool Restarts(VisitFacts visit)
    {
        if (visit.Record.Events.Count > 0 && visit.Record.Events.Any(e => e.Type == EventType.ValveRenewed))
        {
            return true;
        }

        var read = visit.Record.Meters;
        for (var i = 0; i < read.Count; i++)
        {
            if (read[i].Replaced == true && (visit.History.MakeUpMeters.Contains(read[i].Meter, StringComparer.OrdinalIgnoreCase) || visit.History.BleedMeters.Contains(read[i].Meter, StringComparer.OrdinalIgnoreCase)))
            {
                return true;
            }
        }

        return FlowOf(visit) is { } now
            && visit.Back().Skip(1).Select(FlowOf).FirstOrDefault(flow => flow is not null) is { } before
            && Math.Abs((now / before) - 1) > OtherValve;
    }

    private static double? FlowOf(VisitFacts visit) =>
        visit.Record.BleedTest is { Litres: > 0, Seconds: > 0 } test ? test.Litres / test.Seconds * 3600 : null;

    private (double Flow, double Fixed, double VarFlow, double VarRest, double Covariance)? Fit(VisitFacts visit, BleedInterval stretch)
    {
        var usual = Count > 0 ? UsualLoss : stretch.LossPerDay.Value;
        if (FlowOnFile(visit, stretch, usual) is not { } file || usual <= 0)
        {
            return null;
        }

        var (rest, restU) = (RestShare * usual, RestUncertainty * usual);
        var (a11, a12, a22) = (1 / (file.StandardUncertainty * file.StandardUncertainty), 0.0, 1 / (restU * restU));
        var (b1, b2) = (file.Value * a11, rest * a22);
        foreach (var (open, loss, scatter) in _stretches)
        {
            var weight = 1 / (scatter * scatter);
            a11 += weight * open * open;
            a12 += weight * open;
            a22 += weight;
            b1 += weight * open * loss;
            b2 += weight * loss;
        }

        var determinant = (a11 * a22) - (a12 * a12);
        return (((a22 * b1) - (a12 * b2)) / determinant, ((a11 * b2) - (a12 * b1)) / determinant, a22 / determinant, a11 / determinant, -a12 / determinant);
    }

    private Estimate? FlowOnFile(VisitFacts visit, BleedInterval stretch, double usual)
    {
        if (stretch.IsMetered)
        {
            return new Estimate(1, "1", MeterUncertainty);
        }

        if (visit.Water.ValveFlow is { HasValue: true, Value: var known })
        {
            return known;
        }

        // Nothing on file: the own stretches alone decide.
        var open = Count > 0 ? UsualOpen : 0;
        return open > 0 ? new Estimate(usual / open, "L/h", usual / open) : null;
    }
}
