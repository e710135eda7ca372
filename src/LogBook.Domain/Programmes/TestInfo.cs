using LogBook.Domain.Languages;

namespace LogBook.Domain.Programmes;

/// <summary>What the format says of one test.</summary>
/// <param name="Code">Code of the test.</param>
/// <param name="Name">Name for people.</param>
/// <param name="Basis">What the result is expressed as; null where it has no basis.</param>
/// <param name="Units">UCUM units it takes, the first being the one in which limits and step are given.</param>
/// <param name="Step">Usual smallest step, in the first unit; null where it varies.</param>
/// <param name="Lowest">Below this a value is read again, in the first unit; null means that zero is the end and less is refused.</param>
/// <param name="Highest">Above this a value is read again, in the first unit; null where nothing is known.</param>
public sealed record TestInfo(string Code, Text Name, string? Basis, IReadOnlyList<string> Units, double? Step, double? Lowest, double? Highest)
{
    /// <summary>Whether a value below zero is possible in the first unit.</summary>
    public bool MayBeNegative => Lowest < 0;
}
