using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>Readings of one test from one kind of source.</summary>
/// <param name="Source">Who or what read them; null for figures and for systems that are compared.</param>
/// <param name="Points">In order of time.</param>
/// <param name="Gaps">Positions in <paramref name="Points"/> before which readings are missing: no line leads to them.</param>
public sealed record HistorySeries(ReadingSource? Source, IReadOnlyList<HistoryPoint> Points, IReadOnlySet<int> Gaps)
{
    /// <summary>Name of the series where its source does not say it: a figure, or a system that is compared.</summary>
    public Text? Name { get; init; }
}
