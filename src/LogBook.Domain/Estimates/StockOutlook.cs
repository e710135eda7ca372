namespace LogBook.Domain.Estimates;

/// <summary>What a drum holds for the weeks to come, from what was known when it was last read.</summary>
/// <param name="ReadAt">When it was read, UTC.</param>
/// <param name="Usable">What the pump could draw then, with the spare on site, L.</param>
/// <param name="UsePerDay">Use a day, L/d; null where it is not known.</param>
/// <param name="DaysToEmpty">Days from the reading until it is empty, d; null where the use is not known.</param>
/// <remarks>Common practice: what is left lasts as long as the use of the last weeks goes on. The range is value ± expanded uncertainty (k = 2).</remarks>
public sealed record StockOutlook(DateTime ReadAt, Estimate Usable, Estimate? UsePerDay, Estimate? DaysToEmpty)
{
    /// <summary>What the pump can still draw at a moment, L, with the use since the reading taken off; never below zero. Null where the use is not known.</summary>
    /// <param name="utc">Moment, UTC, not before the reading.</param>
    public Estimate? UsableAt(DateTime utc)
    {
        if (UsePerDay is not { } use)
        {
            return null;
        }

        var left = Usable.Minus(use.Scaled(Math.Max(0, (utc - ReadAt).TotalDays), "L"));
        return left.Value >= 0 ? left : new Estimate(0, "L", left.StandardUncertainty);
    }

    /// <summary>Days on which it runs out, in a zone: first and last of the range.</summary>
    /// <param name="zone">The site's zone.</param>
    /// <returns>Null where the use is not known.</returns>
    public (DateOnly First, DateOnly Last)? RunsOut(TimeZoneInfo zone)
    {
        if (DaysToEmpty is not { } days)
        {
            return null;
        }

        var read = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(ReadAt, zone));
        return (read.AddDays((int)Math.Max(0, days.Low)), read.AddDays((int)Math.Min(MostDays, Math.Ceiling(Math.Max(0, days.High)))));
    }

    /// <summary>Litres to order so that it lasts until a moment, with the upper end of the range (k = 2).</summary>
    /// <param name="utc">Moment, UTC.</param>
    /// <returns>Whole litres, 0 where it lasts; null where the use is not known.</returns>
    public double? NeededUntil(DateTime utc) => ShortUntil(utc) is { } missing ? Math.Ceiling(Math.Max(0, missing.High)) : null;

    /// <summary>Use until a moment less what was there, L; below zero where some is left. Null where the use is not known.</summary>
    /// <param name="utc">Moment, UTC.</param>
    public Estimate? ShortUntil(DateTime utc) => UsePerDay?.Scaled(Math.Max(0, (utc - ReadAt).TotalDays), "L").Minus(Usable);

    /// <summary>How it stands against the next visits.</summary>
    /// <param name="next">Next visit, UTC; null where none is agreed.</param>
    /// <param name="second">Visit after it, UTC.</param>
    public StockStanding StandingBefore(DateTime? next, DateTime? second)
    {
        if (Usable.Value <= 0)
        {
            return StockStanding.Empty;
        }

        if (DaysToEmpty is not { } days || next is not { } first)
        {
            return StockStanding.Unknown;
        }

        var untilFirst = (first - ReadAt).TotalDays;
        return days.Value <= untilFirst ? StockStanding.BeforeNext
            : days.Low <= untilFirst ? StockStanding.PerhapsBeforeNext
            : second is { } later && days.Low <= (later - ReadAt).TotalDays ? StockStanding.BeforeSecond
            : StockStanding.Lasts;
    }

    // Beyond a few years a date says nothing.
    private const double MostDays = 1500;
}
