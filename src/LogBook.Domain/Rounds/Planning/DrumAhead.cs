namespace LogBook.Domain.Rounds.Planning;

/// <summary>A drum as last read, and when it runs out. Volumes L, uncertainties as standard uncertainty.</summary>
/// <param name="Drum">Code of the drum.</param>
/// <param name="Product">Code of its product.</param>
/// <param name="ReadOn">Day of the reading, in the site's zone.</param>
/// <param name="StockL">What the pump could still draw then, with the spare on site; 0 or less is empty.</param>
/// <param name="StockUncertaintyL">Its standard uncertainty.</param>
public sealed record DrumAhead(string Drum, string Product, DateOnly ReadOn, double StockL, double StockUncertaintyL)
{
    /// <summary>Use a day, L/d; null where it is not known.</summary>
    public double? UsePerDayL { get; init; }

    /// <summary>Standard uncertainty of the use a day, L/d.</summary>
    public double? UsePerDayUncertaintyL { get; init; }

    /// <summary>Earliest day on which it is empty (k = 2); null where the use is not known.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Latest such day; null where it lies beyond ten years or is not known.</summary>
    public DateOnly? To { get; init; }

    /// <summary>Brim volume, L; null where not on file.</summary>
    public double? CapacityL { get; init; }
}
