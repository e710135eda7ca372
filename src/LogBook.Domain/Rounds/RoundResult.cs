using LogBook.Domain.Assessments;

namespace LogBook.Domain.Rounds;

/// <summary>What the records of all systems of a firm together mean as of a moment.</summary>
/// <param name="AsOf">Moment it was made for, UTC.</param>
/// <param name="Findings">Findings about instruments, lots and people in every state, by first day, kind and subject.</param>
/// <param name="Shifts">Meters and lots that read off, by first day, kind and code.</param>
public sealed record RoundResult(DateTime AsOf, IReadOnlyList<AssessedFinding> Findings, IReadOnlyList<RoundShift> Shifts);
