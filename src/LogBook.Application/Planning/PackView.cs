using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>The pack list of a person's day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Person">Code of the person.</param>
/// <param name="Name">Name of the person.</param>
/// <param name="Stops">Sites in order: code and name.</param>
/// <param name="List">What to pack.</param>
/// <param name="NeverTogether">Products of the list that must never meet, by their labels.</param>
/// <param name="Firm">Names of products and instruments, and the threshold of the standard check.</param>
public sealed record PackView(
    DateOnly Day,
    string Person,
    string Name,
    IReadOnlyList<(string Code, string Name)> Stops,
    PackList List,
    IReadOnlyList<(Product First, Product Second)> NeverTogether,
    FirmSetUp Firm);
