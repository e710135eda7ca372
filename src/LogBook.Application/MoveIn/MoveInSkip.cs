namespace LogBook.Application.MoveIn;

/// <summary>A row or sheet that does not become a visit, and why.</summary>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Row">Number of the row as spreadsheets count; 0 for the whole sheet.</param>
/// <param name="Why">Why.</param>
public sealed record MoveInSkip(string Sheet, int Row, string Why);
