using System.Globalization;

namespace LogBook.Application.MoveIn;

/// <summary>One cell of a sheet as it stands there: a text, a number or a day with time.</summary>
/// <param name="Text">Its text; a number or day in a neutral way of writing.</param>
/// <param name="Number">The number, where the sheet keeps one.</param>
/// <param name="Date">The day and time, where the sheet keeps one.</param>
public readonly record struct MoveInCell(string Text, double? Number = null, DateTime? Date = null)
{
    /// <summary>Nothing in it.</summary>
    public static MoveInCell Empty { get; } = new("");

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);

    /// <summary>A cell that the sheet keeps as a number.</summary>
    public static MoveInCell Of(double number) => new(number.ToString("R", CultureInfo.InvariantCulture), number);

    /// <summary>A cell that the sheet keeps as a day.</summary>
    public static MoveInCell Of(DateTime date) => new(date.ToString(date.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), null, date);
}
