using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Microbiology;

/// <summary>Arithmetic of counts, on the logarithmic scale on which they are read.</summary>
/// <remarks>
/// Levels and what to do at them are dated rules of their country (rule data), never code. A dip slide reads to half a decade, a plate count to
/// a quarter; "&lt; 10" is a limit and not a number. Temperature and time of incubation belong to the result. Units convert by
/// <see cref="Quantities.Units"/>. Reference: 10-microbiology.md, 10-microbiology.csv.
/// </remarks>
public static class Counts
{
    /// <summary>Decades between two counts, log(before/after).</summary>
    /// <param name="before">Count, above zero.</param>
    /// <param name="after">Count in the same unit, by the same method, above zero.</param>
    /// <returns>Positive for a fall; none for a count of zero or below.</returns>
    /// <remarks>Reference: 10-microbiology.csv, log_reduction.</remarks>
    public static Computed<double> LogReduction(double before, double after) =>
        double.IsFinite(before) && before > 0 && double.IsFinite(after) && after > 0
            ? Computed<double>.Of(Math.Log10(before / after))
            : Computed<double>.None(CountReasons.NotACount);

    /// <summary>Whether two counts differ by more than their methods scatter, k = 2.</summary>
    /// <param name="one">Count, above zero.</param>
    /// <param name="other">Count in the same unit, above zero.</param>
    /// <param name="decadesEach">Standard uncertainty of one count, decades.</param>
    /// <returns>True for a difference beyond scatter; none for a count of zero or below.</returns>
    public static Computed<bool> Differ(double one, double other, double decadesEach) =>
        LogReduction(one, other).Map(decades => Math.Abs(decades) > 2 * Math.Sqrt(2) * decadesEach);
}
