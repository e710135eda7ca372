namespace LogBook.Entry.Plans;

/// <summary>A setting of the controller that the programme knows.</summary>
/// <param name="Name">Name in the record.</param>
/// <param name="Programme">Value in the programme: a number or a text.</param>
/// <param name="Unit">UCUM unit; empty for a bare number, null for a text.</param>
/// <param name="EachVisit">Read at each visit, not only at the full walk.</param>
public sealed record PlannedSetting(string Name, object Programme, string? Unit, bool EachVisit);
