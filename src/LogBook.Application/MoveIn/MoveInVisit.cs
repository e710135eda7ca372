using LogBook.Domain.Visits;

namespace LogBook.Application.MoveIn;

/// <summary>A visit made from rows, and the cell that each of its parts came from.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Cells">Cell by path ("systems[0].readings[2]").</param>
public sealed record MoveInVisit(Visit Visit, IReadOnlyDictionary<string, MoveInPlace> Cells);
