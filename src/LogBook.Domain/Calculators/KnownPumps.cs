using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Calculators;

/// <summary>What a pump gives, and where that is known from.</summary>
internal static class KnownPumps
{
    private const double FewestDays = 1;
    private const double PumpDays = 200;

    private static readonly Text Drawn = new("drum drop per hour run, visit of {0}", "bajada del bidón por hora de marcha, visita del {0}", "queda da bombona por hora de funcionamento, visita de {0}");
    private static readonly Text Drawdown = new("drawdown of {0}", "medición con columna del {0}", "medição com coluna de {0}");
    private static readonly Text Rated = new("rating on file, not measured", "placa en la ficha, sin medir", "placa no cadastro, não medido");
    private static readonly Text RatedAbove = new("rating on file; measured weaker, {0}", "placa en la ficha; medida más débil, {0}", "placa no cadastro; medida mais fraca, {0}");

    /// <summary>Output for calculations: measured where it was, else rated.</summary>
    /// <param name="history">The system.</param>
    /// <param name="last">Last visit that counts, or null.</param>
    /// <param name="pump">The pump, or null.</param>
    /// <returns>L/h; null where neither is on file.</returns>
    public static KnownNumber? Of(SystemHistory history, VisitFacts? last, Pump? pump) => pump is null ? null : MeasuredOf(last, pump) ?? RatedOf(history, pump);

    /// <summary>Output the label is kept for: the stronger of the measured and the rated.</summary>
    /// <param name="history">The system.</param>
    /// <param name="last">Last visit that counts, or null.</param>
    /// <param name="pump">The pump, or null.</param>
    /// <returns>L/h; null where neither is on file.</returns>
    /// <remarks>
    /// Measured stronger than rated is what the water gets. Measured weaker is how the pump was on one day: primed, cleaned or turned up it may
    /// give its rating again before the next dose, and the label must hold then too.
    /// </remarks>
    public static KnownNumber? ForLabel(SystemHistory history, VisitFacts? last, Pump? pump)
    {
        var measured = pump is null ? null : MeasuredOf(last, pump);
        var rated = pump is null ? null : RatedOf(history, pump);
        return measured is null || rated is null ? measured ?? rated
            : measured.Estimate.Value >= rated.Estimate.Value ? measured
            : rated with { Origin = new Said(RatedAbove, measured.Origin) };
    }

    private static KnownNumber? RatedOf(SystemHistory history, Pump pump) => pump.RatedLPerH is > 0 and var plate
        ? new KnownNumber(history.Firm.Engine.Uncertainties.PumpOutput(false, pump.Code).On(plate, "L/h"), new Said(Rated))
        : null;

    // The newest drawdown or drum drop known to better than the rating.
    private static KnownNumber? MeasuredOf(VisitFacts? last, Pump pump)
    {
        for (var visit = last; visit is not null && (last!.Visit.At - visit.Visit.At).TotalDays <= PumpDays && visit.Day >= (pump.From ?? DateOnly.MinValue); visit = visit.Previous)
        {
            if (PumpPast.DrawdownOf(visit, pump) is { Value: > 0 } drawdown)
            {
                return new KnownNumber(drawdown, new Said(Drawdown, visit.Day));
            }

            if (visit.PumpOutputs.FirstOrDefault(one => one.Pump == pump) is { LitresPerHour: { HasValue: true, Value: { Value: > 0 } output } } measured
                && (visit.Visit.At - measured.Since.Visit.At).TotalDays > FewestDays
                && output.StandardUncertainty / output.Value < 0.1)
            {
                return new KnownNumber(output, new Said(Drawn, visit.Day));
            }
        }

        return null;
    }
}
