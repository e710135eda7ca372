namespace LogBook.Domain.Rounds;

/// <summary>What became known about a system at one moment: clues of all its visits from one on, in place of those before.</summary>
/// <param name="Known">Moment, UTC.</param>
/// <param name="FromAt">Arrival of the first visit that changed, UTC.</param>
/// <param name="FromId">Its identity.</param>
/// <param name="Visits">Clues of the visits from that one on, by arrival and identity.</param>
public sealed record ClueStep(DateTime Known, DateTime FromAt, Guid FromId, IReadOnlyList<VisitClues> Visits);
