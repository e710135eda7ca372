using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Evidence with its severity and its words, not yet put into a language.</summary>
/// <param name="Severity">How soon it wants somebody, before folding under a cause.</param>
/// <param name="Text">One sentence with value, threshold and basis.</param>
public sealed record Indication(Severity Severity, Said Text)
{
    /// <summary>Figures with their intervals and limits.</summary>
    public IReadOnlyList<EvidenceFigure> Evidence { get; init; } = [];

    /// <summary>At most three causes, likeliest first: a kind or one of load, season, reading, laboratory, with words.</summary>
    public IReadOnlyList<(string Cause, Said Words)> Suggests { get; init; } = [];

    /// <summary>What to look at next, cheapest first.</summary>
    public IReadOnlyList<Said> LookAtNext { get; init; } = [];
}
