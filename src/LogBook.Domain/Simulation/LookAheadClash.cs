namespace LogBook.Domain.Simulation;

/// <summary>Two doses that meet.</summary>
/// <param name="Kind">How.</param>
/// <param name="First">Output of the earlier one.</param>
/// <param name="Second">Output of the later one.</param>
/// <param name="At">When the later one is due or begins.</param>
/// <param name="Hours">Hours it waits, or hours between the two.</param>
/// <param name="GapHours">Gap asked for, h.</param>
public sealed record LookAheadClash(LookAheadClashKind Kind, string First, string Second, DateTime At, double Hours, double? GapHours);
