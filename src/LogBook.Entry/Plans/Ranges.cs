using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Plans;

/// <summary>Results against the ranges of the programme, for the marks on the form.</summary>
public static class Ranges
{
    private static readonly RangePlace Inside = new(EntryTexts.InRange, "●", "lb-inside", false);
    private static readonly RangePlace Above = new(EntryTexts.AboveRange, "▲", "lb-outside", true);
    private static readonly RangePlace Below = new(EntryTexts.BelowRange, "▼", "lb-outside", true);

    /// <summary>Where a result lies.</summary>
    /// <param name="reading">The result.</param>
    /// <param name="range">The range aimed at.</param>
    /// <returns>
    /// The place; null when there is no range, no number, another basis, or a censored result that may lie on either side.
    /// </returns>
    public static RangePlace? Place(Reading? reading, TestRange? range)
    {
        if (reading is null || range is null || reading.NotQuantifiable == true || reading.NotTaken is not null || reading.Basis != range.Basis)
        {
            return null;
        }

        var entered = reading.Value ?? (reading.Drops is { } drops && reading.PerDrop is { } perDrop ? drops * perDrop : null);
        if (entered is not { } number || Units.Convert(number, reading.Unit, range.Unit) is not { HasValue: true, Value: var value })
        {
            return null;
        }

        return reading.Qualifier switch
        {
            "<" => value <= range.Low ? Below : range.Low is null && value <= range.High ? Inside : null,
            ">" => value >= range.High ? Above : range.High is null && value >= range.Low ? Inside : null,
            _ => value < range.Low ? Below : value > range.High ? Above : Inside,
        };
    }

    /// <summary>A range in words.</summary>
    /// <param name="range">The range.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "Range 80 to 120 mg/L".</returns>
    public static string Words(TestRange range, Language language) => (range.Low, range.High) switch
    {
        ({ } low, { } high) => EntryTexts.Range.In(language, Shown.Entered(low, language), Shown.Entered(high, range.Unit, language)),
        ({ } low, null) => EntryTexts.RangeFrom.In(language, Shown.Entered(low, range.Unit, language)),
        (null, { } high) => EntryTexts.RangeTo.In(language, Shown.Entered(high, range.Unit, language)),
        _ => string.Empty,
    };
}
