namespace LogBook.Domain.Rounds.Planning;

/// <summary>How long a routine visit took.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Minutes">Minutes from arrival to departure.</param>
/// <param name="IsDoubted">Whether its record carries enough signs for a second look: it then tells nothing about the time needed.</param>
public sealed record VisitLength(Guid Visit, double Minutes, bool IsDoubted);
