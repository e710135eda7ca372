using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;

namespace LogBook.Entry.Plans;

/// <summary>A test that the form offers.</summary>
/// <param name="Key">What it is.</param>
/// <param name="Info">Name, units, limits.</param>
/// <param name="Range">Range aimed at, when the programme has one.</param>
public sealed record PlannedTest(ReadingKey Key, TestInfo Info, TestRange? Range);
