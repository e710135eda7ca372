using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;

namespace LogBook.Entry.Plans;

/// <summary>A test that the form offers.</summary>
/// <param name="Key">What it is.</param>
/// <param name="Info">Name, units, limits.</param>
/// <param name="Range">Range aimed at, when the programme has one.</param>
/// <param name="UsualMode">How it was read last time: "drops", "comparator", or none for a plain number.</param>
public sealed record PlannedTest(ReadingKey Key, TestInfo Info, TestRange? Range, string UsualMode = "")
{
    /// <summary>The field that is read first.</summary>
    public string FirstField => UsualMode == "drops" ? "drops" : "value";
}
