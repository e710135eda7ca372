namespace LogBook.Domain.Estimates;

/// <summary>Evaporation in the busy season.</summary>
public static class BusySeason
{
    /// <summary>Water evaporated for each kWh of heat, L: 85 % of the heat by evaporation at 2,430 kJ/kg (reference/01, row 01-041).</summary>
    public const double LitresPerKwH = 1.26;

    /// <summary>Mean load of a tower against its plate (common practice, no source).</summary>
    public const double MeanLoad = 0.7;

    private const double PlateUncertainty = 0.25;
    private const double LongestDays = 400;

    /// <summary>The largest mean evaporation of an interval in the last year or so; before there is one, by the plate.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>L/h, or null where neither is known.</returns>
    public static Estimate? EvaporationPerHour(VisitFacts visit)
    {
        Estimate? busy = null;
        for (var earlier = visit; earlier is not null && (visit.Visit.At - earlier.Visit.At).TotalDays <= LongestDays; earlier = earlier.Previous)
        {
            if (earlier.EvaporationPerHour is { } perHour)
            {
                busy = busy is null || perHour.Value > busy.Value ? perHour : busy;
            }
        }

        return busy is { Value: > 0 } known ? known : ByPlate(visit.History.System.FullLoadKw);
    }

    /// <summary>Evaporation by the plate.</summary>
    /// <param name="fullLoadKw">Heat rejected at full load, kW, or null.</param>
    /// <returns>L/h, or null without a load.</returns>
    public static Estimate? ByPlate(double? fullLoadKw) =>
        fullLoadKw is { } load and > 0 ? new Estimate(MeanLoad * LitresPerKwH * load, "L", PlateUncertainty * MeanLoad * LitresPerKwH * load) : null;
}
