namespace LogBook.Application.Shelf;

/// <summary>The make-up of all systems.</summary>
/// <param name="Rows">Those of one page: with an open finding first, then by how far they are off.</param>
/// <param name="Total">How many there are.</param>
/// <param name="Sites">Sites to choose from.</param>
public sealed record MakeUpList(IReadOnlyList<MakeUpLine> Rows, int Total, IReadOnlyList<(string Code, string Name)> Sites);
