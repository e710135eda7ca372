namespace LogBook.Entry.Drafts;

/// <summary>A record that cannot stand in the visit yet, because what it is about or how much of it is missing.</summary>
/// <param name="Missing">Key of the field that would complete it.</param>
/// <param name="Typed">Key of a field of it that was filled.</param>
public sealed record UnfinishedRecord(string Missing, string Typed);
