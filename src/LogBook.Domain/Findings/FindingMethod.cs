using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>How one kind of finding is judged.</summary>
/// <param name="Judged">What is compared with what, and when it counts.</param>
/// <param name="Source">Where the method and its default thresholds come from.</param>
public sealed record FindingMethod(Text Judged, Text Source);
