using LogBook.Bank.Firms;
using LogBook.Domain.Simulation;

namespace LogBook.Bank.Faults;

/// <summary>A fault that can be planted.</summary>
/// <param name="Name">Name in the table.</param>
/// <param name="Needs">What its system must have.</param>
/// <param name="Plant">Makes it for a system; the day is its onset.</param>
internal sealed record FaultSpec(string Name, Traits Needs, Func<BankSystem, SplitMix, DateOnly, Fault> Plant);
