using LogBook.Domain.Clocks;
using LogBook.Domain.History;

namespace LogBook.Application.RecordPacks;

/// <summary>A system in a record pack.</summary>
/// <param name="History">The system with the visits that count, whatever the period.</param>
/// <param name="Rules">What its rules asked for in the period.</param>
public sealed record PackSystem(SystemHistory History, IReadOnlyList<RuleRecord> Rules);
