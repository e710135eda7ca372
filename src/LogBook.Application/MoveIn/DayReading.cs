using System.Globalization;
using System.Text.RegularExpressions;

namespace LogBook.Application.MoveIn;

/// <summary>A day as somebody wrote it: one meaning, two (3/4/2025), or none.</summary>
/// <param name="DayFirst">The day where the day comes first, or where there is one meaning.</param>
/// <param name="MonthFirst">The day where the month comes first; null where that is none or the same.</param>
/// <param name="Time">Time of the day, where it stands with the day.</param>
public readonly partial record struct DayReading(DateOnly? DayFirst, DateOnly? MonthFirst, TimeOnly? Time)
{
    private static readonly Dictionary<string, int> Months = new(StringComparer.OrdinalIgnoreCase)
    {
        ["jan"] = 1, ["ene"] = 1, ["feb"] = 2, ["fev"] = 2, ["mar"] = 3, ["apr"] = 4, ["abr"] = 4, ["may"] = 5, ["mai"] = 5, ["jun"] = 6, ["jul"] = 7,
        ["aug"] = 8, ["ago"] = 8, ["sep"] = 9, ["set"] = 9, ["oct"] = 10, ["out"] = 10, ["nov"] = 11, ["dec"] = 12, ["dic"] = 12, ["dez"] = 12,
    };

    /// <summary>Whether it is a day at all.</summary>
    public bool Any => DayFirst is not null || MonthFirst is not null;

    /// <summary>Whether it has two meanings.</summary>
    public bool IsDoubtful => DayFirst is not null && MonthFirst is not null;

    /// <summary>Reads a cell.</summary>
    public static DayReading Parse(MoveInCell cell)
    {
        if (cell.Date is { } date)
        {
            return IsSensible(date.Year) ? new DayReading(DateOnly.FromDateTime(date), null, date.TimeOfDay == TimeSpan.Zero ? null : TimeOnly.FromDateTime(date)) : default;
        }

        if (cell.Number is not null)
        {
            return default;
        }

        var text = cell.Text.Trim();
        var (rest, time) = Split(text);
        if (Iso().Match(rest) is { Success: true } iso)
        {
            return new DayReading(Day(iso.Groups["y"].Value, iso.Groups["m"].Value, iso.Groups["d"].Value), null, time);
        }

        if (Named().Match(rest) is { Success: true } named && named.Groups["n"].Value.Length >= 3 && Months.TryGetValue(Plain(named.Groups["n"].Value)[..3], out var month))
        {
            return new DayReading(Day(named.Groups["y"].Value, month.ToString(CultureInfo.InvariantCulture), named.Groups["d"].Value), null, time);
        }

        if (Figures().Match(rest) is not { Success: true } figures)
        {
            return default;
        }

        var (first, second, year) = (figures.Groups["a"].Value, figures.Groups["b"].Value, figures.Groups["y"].Value);
        var (dayFirst, monthFirst) = (Day(year, second, first), Day(year, first, second));

        // Points between figures are a habit of countries that write the day first; only strokes and dashes have two meanings.
        return rest.Contains('.', StringComparison.Ordinal) && dayFirst is not null ? new DayReading(dayFirst, null, time)
            : dayFirst == monthFirst ? new DayReading(dayFirst, null, time) : new DayReading(dayFirst, monthFirst, time);
    }

    /// <summary>A time of the day, as "9:05", "14.30" or "2:30 PM"; null where it is none.</summary>
    public static TimeOnly? ParseTime(MoveInCell cell)
    {
        if (cell.Date is { } date)
        {
            return TimeOnly.FromDateTime(date);
        }

        if (cell.Number is >= 0 and < 1)
        {
            return TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(Math.Min(Math.Round(cell.Number.Value * 24 * 60), (24 * 60) - 1)));
        }

        return Clock().Match(cell.Text.Trim()) is { Success: true } clock ? TimeOf(clock) : null;
    }

    private static (string Day, TimeOnly? Time) Split(string text)
    {
        return DayAndClock().Match(text) is { Success: true } both && Clock().Match(both.Groups["c"].Value) is { Success: true } clock && TimeOf(clock) is { } time ? (both.Groups["d"].Value.Trim(), time) : (text, null);
    }

    private static TimeOnly? TimeOf(Match clock)
    {
        var (hour, minute) = (int.Parse(clock.Groups["h"].Value, CultureInfo.InvariantCulture), int.Parse(clock.Groups["m"].Value, CultureInfo.InvariantCulture));
        if (clock.Groups["p"].Value is { Length: > 0 } half)
        {
            return hour is >= 1 and <= 12 && minute < 60 ? new TimeOnly((hour % 12) + (half[0] is 'p' or 'P' ? 12 : 0), minute) : null;
        }

        return hour < 24 && minute < 60 ? new TimeOnly(hour, minute) : null;
    }

    private static DateOnly? Day(string year, string month, string day)
    {
        var (y, m, d) = (int.Parse(year, CultureInfo.InvariantCulture), int.Parse(month, CultureInfo.InvariantCulture), int.Parse(day, CultureInfo.InvariantCulture));
        y += year.Length == 2 ? 2000 : 0;
        return IsSensible(y) && m is >= 1 and <= 12 && d >= 1 && d <= DateTime.DaysInMonth(y, m) ? new DateOnly(y, m, d) : null;
    }

    private static bool IsSensible(int year) => year is >= 1970 and <= 2100;

    private static string Plain(string month) => month.Normalize(System.Text.NormalizationForm.FormD);

    [GeneratedRegex(@"^(?<y>\d{4})[-/.](?<m>\d{1,2})[-/.](?<d>\d{1,2})$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Iso();

    [GeneratedRegex(@"^(?:\p{L}{2,10}\.?,? )?(?<d>\d{1,2})(?:[ ./-]|st |nd |rd |th | de )+(?<n>\p{L}{3,10})\.?(?:[ ./,-]| de )+(?<y>\d{4}|\d{2})$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"^(?<a>\d{1,2})[-/.](?<b>\d{1,2})[-/.](?<y>\d{4}|\d{2})\.?$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Figures();

    [GeneratedRegex(@"^(?<h>\d{1,2})[:.h](?<m>\d{2})(?::\d{2})?(?:\s?(?<p>[ap])\.?\s?m\.?)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Clock();

    [GeneratedRegex(@"^(?<d>.+?)[ T](?<c>\d{1,2}:\d{2}(?::\d{2})?(?:\s?[ap]\.?\s?m\.?)?)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex DayAndClock();
}
