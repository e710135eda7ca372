namespace LogBook.Domain.Estimates;

/// <summary>From how many to how many days a drum lasts, counted as an order is counted.</summary>
/// <remarks>
/// Follows from the balance: after t days use × t − stock is missing, and its expanded uncertainty is 2 √((t u(use))² + u(stock)²). The range ends
/// where that difference could be zero, so its early end is the day from which something is to be ordered. A quotient of two uncertain numbers has
/// no even range: the late end lies further off than the early one, and where the use is known to less than half there is none.
/// </remarks>
public static class RunOutDays
{
    /// <summary>The range.</summary>
    /// <param name="stock">What the pump can still draw, L.</param>
    /// <param name="usePerDay">Use a day of running, L/d.</param>
    /// <returns>Days of running from the reading, 0 or more; the late end null where the use could be nothing; null without a use above zero.</returns>
    public static (double Low, double? High)? Of(Estimate stock, Estimate usePerDay)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(usePerDay);
        return Of(stock.Value, stock.StandardUncertainty, usePerDay.Value, usePerDay.StandardUncertainty);
    }

    /// <summary>The range, from numbers.</summary>
    /// <param name="stockL">What the pump can still draw, L.</param>
    /// <param name="stockUncertaintyL">Its standard uncertainty, L, 0 or more.</param>
    /// <param name="usePerDayL">Use a day of running, L/d.</param>
    /// <param name="usePerDayUncertaintyL">Its standard uncertainty, L/d, 0 or more.</param>
    /// <returns>As for estimates.</returns>
    public static (double Low, double? High)? Of(double stockL, double stockUncertaintyL, double usePerDayL, double usePerDayUncertaintyL)
    {
        if (usePerDayL <= 0)
        {
            return null;
        }

        // (use t − stock)² = 4 (t² u(use)² + u(stock)²); the roots are written so that nothing cancels.
        var (u, s) = (2 * usePerDayUncertaintyL, 2 * stockUncertaintyL);
        var square = (usePerDayL * usePerDayL) - (u * u);
        var end = (stockL * stockL) - (s * s);
        var middle = usePerDayL * stockL;
        var root = Math.Sqrt(Math.Max(0, (middle * middle) - (square * end)));
        var low = stockL > s ? end / (middle + root) : 0;
        return (low, square > 0 ? Math.Max(0, (middle + root) / square) : null);
    }
}
