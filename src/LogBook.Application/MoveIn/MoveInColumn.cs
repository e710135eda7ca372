namespace LogBook.Application.MoveIn;

/// <summary>A heading of the file and what it means.</summary>
/// <param name="Key">By which it is known again.</param>
/// <param name="Heading">As it stands.</param>
/// <param name="Places">Sheets and columns where it stands.</param>
/// <param name="Examples">A few values below it.</param>
/// <param name="Meaning">What it means, as said or guessed.</param>
/// <param name="IsSaid">A person or a saved mapping said so; otherwise it is a guess.</param>
/// <param name="Missing">What is still to be said; null when it is settled.</param>
/// <param name="UnitsNamed">Units that the heading may name.</param>
public sealed record MoveInColumn(string Key, string Heading, string Places, IReadOnlyList<string> Examples, ColumnMeaning Meaning, bool IsSaid, string? Missing, IReadOnlyList<string> UnitsNamed);
