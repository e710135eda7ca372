namespace LogBook.Domain.Assessments;

/// <summary>A finding that a person closed. It stays closed; should its evidence come back, that is a new finding which names this one.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="AboutKey">Subject, as <see cref="Findings.About.Key"/> gives it; empty when it concerns the system.</param>
/// <param name="FirstSeen">First day of the appearance that was closed.</param>
/// <param name="At">When it was closed, UTC.</param>
/// <param name="Because">Why, in the words of the person.</param>
public sealed record FindingAnswer(string Kind, string AboutKey, DateOnly FirstSeen, DateTime At, string? Because);
