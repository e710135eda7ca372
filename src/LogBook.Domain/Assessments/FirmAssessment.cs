using LogBook.Domain.Rounds;

namespace LogBook.Domain.Assessments;

/// <summary>What all records of a firm mean as of a moment: each system by itself, and all of them together.</summary>
/// <param name="Round">Findings about instruments, lots and people.</param>
/// <param name="Systems">Assessments of the systems, with what the round explains withdrawn, in the order given.</param>
public sealed record FirmAssessment(RoundResult Round, IReadOnlyList<SystemAssessment> Systems);
