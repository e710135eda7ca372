namespace LogBook.Capture.Visits;

/// <summary>Keys that went to the device before the form had heard of them.</summary>
/// <param name="Key">Key of the field.</param>
/// <param name="Text">As typed.</param>
/// <param name="Unit">Unit shown beside it.</param>
internal sealed record TypedText(string Key, string Text, string? Unit);
