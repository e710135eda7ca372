using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Plans;

namespace LogBook.Entry.Closing;

/// <summary>A result of this visit that lies outside its range.</summary>
/// <param name="About">Sample point and test, as actions and reasons name it.</param>
/// <param name="Reading">The result.</param>
/// <param name="Range">The range.</param>
/// <param name="Place">Above or below.</param>
public sealed record OutsideRange(string About, Reading Reading, TestRange Range, RangePlace Place);
