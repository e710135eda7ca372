using LogBook.Domain.Languages;

namespace LogBook.Entry.Plans;

/// <summary>Where a result lies against its range.</summary>
/// <param name="Words">In words.</param>
/// <param name="Shape">A shape that says the same.</param>
/// <param name="Style">Class of the style sheet.</param>
/// <param name="IsOutside">Whether it is outside.</param>
public sealed record RangePlace(Text Words, string Shape, string Style, bool IsOutside);
