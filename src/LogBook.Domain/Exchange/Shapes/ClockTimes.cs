using System.Globalization;

namespace LogBook.Domain.Exchange.Shapes;

/// <summary>Times of day and days of the year as the format writes them.</summary>
internal static class ClockTimes
{
    /// <summary>Whether a text is HH:MM from 00:00 to 24:00.</summary>
    public static bool IsClockTime(string text) =>
        text.Length == 5 && text[2] == ':' && Pair(text, 0) is { } hours && Pair(text, 3) is { } minutes
        && minutes < 60 && (hours < 24 || (hours == 24 && minutes == 0));

    /// <summary>Whether a text is MM-DD, 29 February included.</summary>
    public static bool IsMonthDay(string text) =>
        text.Length == 5 && DateOnly.TryParseExact("2024-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static int? Pair(string text, int at) =>
        char.IsAsciiDigit(text[at]) && char.IsAsciiDigit(text[at + 1]) ? ((text[at] - '0') * 10) + (text[at + 1] - '0') : null;
}
