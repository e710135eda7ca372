using LogBook.Domain.Estimates;

namespace LogBook.Application.Shelf;

/// <summary>Which drums are asked for; kept in the address.</summary>
/// <param name="Site">Code of a site.</param>
/// <param name="Person">Code of the technician whose round it is on.</param>
/// <param name="Product">Code of a product.</param>
/// <param name="Standing">How long it lasts; null for all.</param>
/// <param name="Page">Page, from 1.</param>
public sealed record ShelfFilter(string? Site = null, string? Person = null, string? Product = null, StockStanding? Standing = null, int Page = 1);
