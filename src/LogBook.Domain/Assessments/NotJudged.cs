using LogBook.Domain.Findings;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Assessments;

/// <summary>A matter that the last visit did not let the rules judge, with the reason.</summary>
/// <param name="Kind">Kind of finding.</param>
/// <param name="About">What it would concern.</param>
/// <param name="Why">Why it was not judged.</param>
public sealed record NotJudged(string Kind, About? About, Reason Why);
