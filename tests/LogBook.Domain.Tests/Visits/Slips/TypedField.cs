using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>A number that a person types into the form at one visit.</summary>
/// <param name="Name">Kind of field, as in "readings chloride" or "drums level".</param>
/// <param name="Value">What was typed.</param>
/// <param name="Unit">Unit beside it; null where the field has none to choose.</param>
/// <param name="Units">Units the field offers.</param>
/// <param name="Put">The same visit with another number and unit in this field.</param>
internal sealed record TypedField(string Name, double Value, string? Unit, IReadOnlyList<string> Units, Func<double, string?, Visit> Put);
