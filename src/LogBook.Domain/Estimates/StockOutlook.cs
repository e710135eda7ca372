using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>What a drum holds for the weeks to come, from what was known when it was last read.</summary>
/// <param name="ReadAt">When it was read, UTC.</param>
/// <param name="Usable">What the pump could draw then, with the spare on site, L.</param>
/// <param name="UsePerDay">Use a day, L/d; null where it is not known.</param>
/// <param name="DaysToEmpty">Days from the reading until it is empty, d; null where the use is not known.</param>
/// <remarks>
/// Common practice: what is left lasts as long as the use of the last weeks goes on, on days on which the plant runs. The range is that of
/// <see cref="RunOutDays"/> (k = 2), so that it begins where an order begins to be needed.
/// </remarks>
public sealed record StockOutlook(DateTime ReadAt, Estimate Usable, Estimate? UsePerDay, Estimate? DaysToEmpty)
{
    // Beyond a few years a date says nothing.
    private const int MostDays = 1500;

    /// <summary>When the plant runs; null means always.</summary>
    public Operation? Operation { get; init; }

    /// <summary>Zone of the site, for its days.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>What the pump can still draw at a moment, L, with the use since the reading taken off; never below zero. Null where the use is not known.</summary>
    /// <param name="utc">Moment, UTC, not before the reading.</param>
    public Estimate? UsableAt(DateTime utc)
    {
        if (UsePerDay is not { } use)
        {
            return null;
        }

        var left = Usable.Minus(use.Scaled(UseDays(utc), "L"));
        return left.Value >= 0 ? left : new Estimate(0, "L", left.StandardUncertainty);
    }

    /// <summary>Days on which it runs out at the site: first and last of the range.</summary>
    /// <returns>Null where the use is not known; a last day some years off where there is no late end.</returns>
    public (DateOnly First, DateOnly Last)? RunsOut() =>
        Range is var (low, high) ? (DayAfter(Math.Floor(low)), DayAfter(Math.Ceiling(high ?? MostDays))) : null;

    /// <summary>Litres to order so that it lasts until a moment, with the upper end of the range (k = 2).</summary>
    /// <param name="utc">Moment, UTC.</param>
    /// <returns>Whole litres, 0 where it lasts; null where the use is not known.</returns>
    public double? NeededUntil(DateTime utc) => ShortUntil(utc) is { } missing ? Math.Ceiling(Math.Max(0, missing.High)) : null;

    /// <summary>Use until a moment less what was there, L; below zero where some is left. Null where the use is not known.</summary>
    /// <param name="utc">Moment, UTC.</param>
    public Estimate? ShortUntil(DateTime utc) => UsePerDay?.Scaled(UseDays(utc), "L").Minus(Usable);

    /// <summary>Range of days until it is empty, for "How was this worked out?".</summary>
    /// <returns>First and last day of running from the reading, d; empty where the use is not known.</returns>
    public IReadOnlyList<FigureInput> RangeInputs() =>
        Range is var (low, high) ? [new("first-days", low, "d"), .. high is { } late ? [new FigureInput("last-days", late, "d")] : Array.Empty<FigureInput>()] : [];

    /// <summary>What goes into <see cref="ShortUntil"/> and <see cref="NeededUntil"/>, for "How was this worked out?".</summary>
    /// <param name="utc">Moment, UTC.</param>
    /// <returns>Use a day, days of use until then, what was there, and the litres suggested; empty where the use is not known.</returns>
    public IReadOnlyList<FigureInput> NeededInputs(DateTime utc) => UsePerDay is not { } use || NeededUntil(utc) is not { } needed ? [] :
    [
        new("use-per-day", use.Value, use.Unit, use.StandardUncertainty),
        new("running-days", UseDays(utc), "d"),
        new("usable", Usable.Value, Usable.Unit, Usable.StandardUncertainty),
        new("suggested", needed, "L"),
    ];

    /// <summary>How it stands against the next visits.</summary>
    /// <param name="next">Next visit, UTC; null where none is agreed.</param>
    /// <param name="second">Visit after it, UTC.</param>
    public StockStanding StandingBefore(DateTime? next, DateTime? second)
    {
        if (Usable.Value <= 0)
        {
            return StockStanding.Empty;
        }

        if (DaysToEmpty is not { } days || Range is not var (low, _) || next is not { } first)
        {
            return StockStanding.Unknown;
        }

        var untilFirst = UseDays(first);
        return days.Value <= untilFirst ? StockStanding.BeforeNext
            : low <= untilFirst ? StockStanding.PerhapsBeforeNext
            : second is { } later && low <= UseDays(later) ? StockStanding.BeforeSecond
            : StockStanding.Lasts;
    }

    private (double Low, double? High)? Range => UsePerDay is { } use ? RunOutDays.Of(Usable, use) : null;

    // Out of season and in a known stop a plant uses nothing, whatever its last weeks of running were like.
    private double UseDays(DateTime utc)
    {
        var passed = Math.Max(0, (utc - ReadAt).TotalDays);
        return HasPattern ? Math.Min(passed, OperatingDays.Between(Operation, DayOf(ReadAt), DayOf(utc))) : passed;
    }

    private DateOnly DayAfter(double useDays)
    {
        var read = DayOf(ReadAt);
        if (!HasPattern)
        {
            return read.AddDays((int)Math.Min(MostDays, useDays));
        }

        var day = read;
        for (var left = useDays; left > 0 && day < read.AddDays(MostDays);)
        {
            day = day.AddDays(1);
            left -= OperatingDays.Runs(Operation, day) ? 1 : 0;
        }

        return day;
    }

    private bool HasPattern => Operation is { } operation && (operation.Seasons.Count > 0 || operation.Stops.Count > 0);

    private DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, Zone));
}
