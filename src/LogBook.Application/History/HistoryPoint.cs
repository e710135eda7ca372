using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>One reading in the history of a system.</summary>
/// <param name="At">Wall time at the site.</param>
/// <param name="Visit">The visit it belongs to.</param>
/// <param name="Value">Value in the panel's unit; null where the result was not quantifiable.</param>
/// <param name="Qualifier">"&lt;" or "&gt;" for a censored result.</param>
/// <param name="Source">Who or what read it.</param>
/// <param name="Standing">Where it stands against the range in force on its day.</param>
public sealed record HistoryPoint(DateTime At, Guid Visit, double? Value, string? Qualifier, ReadingSource? Source, RangeStanding Standing)
{
    /// <summary>Low end of the value with its expanded uncertainty; null for a reading.</summary>
    public double? Low { get; init; }

    /// <summary>High end of it.</summary>
    public double? High { get; init; }
}
