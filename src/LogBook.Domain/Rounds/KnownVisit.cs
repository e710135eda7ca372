namespace LogBook.Domain.Rounds;

/// <summary>A visit in the round replay, with its clues compared with what its site lets expect.</summary>
internal sealed class KnownVisit(string place, string site, VisitClues clues)
{
    public string Place { get; } = place;

    public string Site { get; } = site;

    public VisitClues Clues { get; } = clues;

    /// <summary>
    /// Error of each probe with all cleanings and calibrations taken back, as found and as left, %: a probe set to a wrong meter
    /// then goes on showing that meter's error.
    /// </summary>
    public Dictionary<string, (double Found, double Left)> Undone { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Comparisons by hand meter.</summary>
    public List<(string Meter, Comparison Comparison)> ByMeter { get; } = [];

    /// <summary>Comparisons by lot; null for readings whose lot was not written down.</summary>
    public List<(string Test, string? Lot, Comparison Comparison)> ByLot { get; } = [];
}
