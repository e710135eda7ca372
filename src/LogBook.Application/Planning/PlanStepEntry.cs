namespace LogBook.Application.Planning;

/// <summary>One change of a day's plan, from the audit trail.</summary>
/// <param name="At">When.</param>
/// <param name="Who">Who.</param>
/// <param name="Why">Reason, where one was given.</param>
public sealed record PlanStepEntry(DateTime At, string Who, string? Why);
