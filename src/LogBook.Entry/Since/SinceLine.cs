namespace LogBook.Entry.Since;

/// <summary>One thing to know before starting.</summary>
/// <param name="Words">What it is, in the form's language.</param>
/// <param name="Shape">A shape that repeats how it wants attention; none for a plain note.</param>
/// <param name="Visit">Visit to open for it, or null.</param>
/// <param name="Opens">Words of the button that opens it.</param>
public sealed record SinceLine(string Words, string Shape = "", Guid? Visit = null, string? Opens = null);
