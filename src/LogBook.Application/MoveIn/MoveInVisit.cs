using LogBook.Domain.Visits;

namespace LogBook.Application.MoveIn;

/// <summary>A visit made from rows, and the cell that each of its parts came from.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Cells">Cell by path ("systems[0].readings[2]").</param>
public sealed record MoveInVisit(Visit Visit, IReadOnlyDictionary<string, MoveInPlace> Cells)
{
    /// <summary>The cell that something about the visit is about.</summary>
    /// <param name="path">Path within the visit.</param>
    /// <returns>The path of the cell's own part, where there is one, and the cell: else one within the path or beside it, else the first.</returns>
    public (string? Path, MoveInPlace At) CellOf(string path)
    {
        var (own, at) = Cells.FirstOrDefault(cell => path.StartsWith(cell.Key, StringComparison.Ordinal) && (path.Length == cell.Key.Length || path[cell.Key.Length] is '.' or '['));
        var whole = path[..Math.Max(0, path.LastIndexOf('.'))];
        return (own, at
            ?? Cells.FirstOrDefault(cell => cell.Key.Split('.').Length > 2 && cell.Key.StartsWith(path, StringComparison.Ordinal)).Value
            ?? Cells.FirstOrDefault(cell => cell.Key.Split('.').Length > 2 && whole.Contains('.', StringComparison.Ordinal) && cell.Key.StartsWith(whole + ".", StringComparison.Ordinal)).Value
            ?? Cells.Values.First());
    }
}
