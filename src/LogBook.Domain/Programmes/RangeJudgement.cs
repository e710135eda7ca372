using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Programmes;

/// <summary>Where a result as entered stands against a range: the one comparison behind form, sheet, history and summary.</summary>
/// <remarks>
/// It compares the number as entered, without its uncertainty: a mark "above range" is a fact about the entry.
/// Whether the plant is out of range is for findings, which weigh the uncertainty.
/// </remarks>
public static class RangeJudgement
{
    /// <summary>The range that a programme sets for a reading's test and point.</summary>
    /// <param name="programme">Programme in force on the day of the visit, or null.</param>
    /// <param name="at">Sample point.</param>
    /// <param name="test">Code of the test.</param>
    /// <returns>The range, or null.</returns>
    public static TestRange? RangeOf(Programme? programme, string at, string test) => programme?.Ranges.FirstOrDefault(range =>
        range.At.Equals(at, StringComparison.OrdinalIgnoreCase) && range.Test.Equals(test, StringComparison.OrdinalIgnoreCase));

    /// <summary>The number of a reading in its own unit: the value, or drops times the value of a drop, times its dilution.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The number, or null when it has none.</returns>
    public static double? NumberOf(Reading reading)
    {
        if (reading.Value is { } value)
        {
            return value;
        }

        var counted = reading.Drops * reading.PerDrop;
        return reading.Dilution is { Sample: > 0 } dilution ? counted * dilution.Total / dilution.Sample : counted;
    }

    /// <summary>Where a reading stands.</summary>
    /// <param name="reading">The reading as entered.</param>
    /// <param name="range">The range in force, or null.</param>
    /// <returns>Its standing; a censored result is decided only where its limit decides it.</returns>
    public static RangeStanding Of(Reading reading, TestRange? range)
    {
        if (range is null || (range.Low is null && range.High is null))
        {
            return RangeStanding.NoRange;
        }

        if (reading.NotQuantifiable == true || reading.NotTaken is not null || NumberOf(reading) is not { } number)
        {
            return RangeStanding.Undecided;
        }

        var inRangeUnit = Units.Convert(number, reading.Unit, range.Unit).Then(converted => InBasisOf(converted, reading, range));
        return inRangeUnit.HasValue ? Of(inRangeUnit.Value, reading.Qualifier, range) : RangeStanding.Undecided;
    }

    private static Computed<double> InBasisOf(double value, Reading reading, TestRange range)
    {
        var own = Bases.OfTest(reading.Test);
        var from = reading.Basis ?? own;
        var to = range.Basis ?? own;
        return from is null || to is null || from.Equals(to, StringComparison.OrdinalIgnoreCase)
            ? Computed<double>.Of(value)
            : BasisConversion.Convert(value, from, to);
    }

    private static RangeStanding Of(double value, string? qualifier, TestRange range) => qualifier switch
    {
        // "< 10" is below a low end of 10 or more; against a high end it is inside when there is no low end to fall under.
        "<" when range.Low is { } low && value <= low => RangeStanding.Below,
        "<" when range.Low is null && value <= range.High => RangeStanding.Inside,
        "<" => RangeStanding.Undecided,
        ">" when range.High is { } high && value >= high => RangeStanding.Above,
        ">" when range.High is null && value >= range.Low => RangeStanding.Inside,
        ">" => RangeStanding.Undecided,
        _ when value < range.Low => RangeStanding.Below,
        _ when value > range.High => RangeStanding.Above,
        _ => RangeStanding.Inside,
    };
}
