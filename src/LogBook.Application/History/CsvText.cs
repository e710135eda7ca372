using System.Globalization;
using System.Text;

namespace LogBook.Application.History;

/// <summary>
/// Lines of comma-separated values (RFC 4180) that a spreadsheet may open: a text that it would take for a formula gets an apostrophe
/// before it. Numbers are written with a full stop and are exempt, because a minus sign of ours is one.
/// </summary>
public static class CsvText
{
    private const string Dangerous = "=+-@\t\r\n";

    /// <summary>One line, without its end.</summary>
    public static string Line(params IReadOnlyList<object?> fields) => string.Join(',', fields.Select(Field));

    /// <summary>One field.</summary>
    public static string Field(object? value) => value switch
    {
        null => "",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        int number => number.ToString(CultureInfo.InvariantCulture),
        DateTime moment => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => Quoted(value.ToString()!),
    };

    private static string Quoted(string text)
    {
        var guarded = text.TrimStart(' ') is { Length: > 0 } start && Dangerous.Contains(start[0], StringComparison.Ordinal) ? "'" + text : text;
        if (guarded.AsSpan().IndexOfAny("\",\r\n;") < 0 && guarded.Trim() == guarded)
        {
            return guarded;
        }

        return new StringBuilder(guarded.Length + 8).Append('"').Append(guarded.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"').ToString();
    }
}
