using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Plans;

namespace LogBook.Entry.Closing;

/// <summary>A result of this visit that asks for action: it lies outside its range or reaches a limit of counts.</summary>
/// <param name="About">Sample point and test, as actions and reasons name it.</param>
/// <param name="Reading">The result.</param>
/// <param name="Place">Above or below.</param>
/// <param name="Range">The range that it lies outside of; null where it only reaches the limit.</param>
/// <param name="Limit">The limit of counts that it reaches, or null.</param>
public sealed record OutsideRange(string About, Reading Reading, RangePlace Place, TestRange? Range, CountLimit? Limit);
