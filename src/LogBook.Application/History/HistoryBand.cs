namespace LogBook.Application.History;

/// <summary>A range or a set point while it was in force.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Day after the last.</param>
/// <param name="Low">Low end; null is open.</param>
/// <param name="High">High end; null is open.</param>
public sealed record HistoryBand(DateOnly From, DateOnly To, double? Low, double? High);
