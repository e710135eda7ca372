using LogBook.Application.Data;

namespace LogBook.Application.Sites;

/// <summary>A set-up record in a list.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="Code">Code as first written.</param>
/// <param name="Site">For a system: code of its site.</param>
/// <param name="From">For a rule: first day in force.</param>
/// <param name="Name">Name.</param>
/// <param name="Document">Canonical JSON of the exchange record.</param>
/// <param name="Version">Version for the next save.</param>
/// <param name="RetiredAt">Since when out of use.</param>
/// <param name="RetiredWhy">Why.</param>
public sealed record SetUpEntry(
    SetUpKind Kind, string Code, string? Site, DateOnly? From, string Name, string Document, int Version, DateTime? RetiredAt, string? RetiredWhy);
