using LogBook.Domain.Languages;

namespace LogBook.Domain.Clocks;

/// <summary>Something on record that was done after a result came in.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">Visit that records it; null for a notification.</param>
/// <param name="What">What was done.</param>
public sealed record ResponseAct(DateTime At, Guid? Visit, Said What);
