using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Plans;

/// <summary>Marks for results against the ranges of the programme; the comparison itself is the domain's.</summary>
public static class Ranges
{
    private static readonly RangePlace Inside = new(EntryTexts.InRange, "●", "lb-inside", false);
    private static readonly RangePlace Above = new(EntryTexts.AboveRange, "▲", "lb-outside", true);
    private static readonly RangePlace Below = new(EntryTexts.BelowRange, "▼", "lb-outside", true);

    /// <summary>Where a result lies.</summary>
    /// <param name="reading">The result.</param>
    /// <param name="range">The range aimed at.</param>
    /// <returns>The place; null when there is no range or it cannot be told.</returns>
    public static RangePlace? Place(Reading? reading, TestRange? range) => reading is null ? null : RangeJudgement.Of(reading, range) switch
    {
        RangeStanding.Inside => Inside,
        RangeStanding.Above => Above,
        RangeStanding.Below => Below,
        _ => null,
    };

    /// <summary>Where a count lies that reaches a limit.</summary>
    public static RangePlace AtLimit => Above;

    /// <summary>A range in words.</summary>
    /// <param name="range">The range.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "Range 80 to 120 mg/L".</returns>
    public static string Words(TestRange range, Language language) => (range.Low, range.High) switch
    {
        ({ } low, { } high) => EntryTexts.Range.In(language, Shown.Entered(low, language), range.Unit == UnitCodes.Ph ? Shown.Entered(high, language) : Shown.Entered(high, range.Unit, language)),
        ({ } low, null) => EntryTexts.RangeFrom.In(language, Shown.Entered(low, range.Unit, language)),
        (null, { } high) => EntryTexts.RangeTo.In(language, Shown.Entered(high, range.Unit, language)),
        _ => string.Empty,
    };
}
