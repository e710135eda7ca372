namespace LogBook.Application.Shelf;

/// <summary>Drums of all sites.</summary>
/// <param name="Now">Moment it was made for, UTC.</param>
/// <param name="Rows">Those of one page, most urgent first.</param>
/// <param name="Total">How many match the filter.</param>
/// <param name="ToOrder">All that match and need something before the visit after next, by site.</param>
/// <param name="Sites">Sites to choose from.</param>
/// <param name="People">Technicians to choose from.</param>
/// <param name="Products">Products to choose from: code and name.</param>
public sealed record ShelfList(
    DateTime Now,
    IReadOnlyList<ShelfLine> Rows,
    int Total,
    IReadOnlyList<ShelfLine> ToOrder,
    IReadOnlyList<(string Code, string Name)> Sites,
    IReadOnlyList<string> People,
    IReadOnlyList<(string Code, string Name)> Products);
