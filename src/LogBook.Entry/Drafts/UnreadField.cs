using LogBook.Domain.Numbers;

namespace LogBook.Entry.Drafts;

/// <summary>A field whose text could not become a value yet.</summary>
/// <param name="Key">Key of the field.</param>
/// <param name="Text">As typed.</param>
/// <param name="Reading">What was understood; null for a time or a day.</param>
public sealed record UnreadField(string Key, string Text, NumberReading? Reading);
