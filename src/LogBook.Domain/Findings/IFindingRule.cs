using LogBook.Domain.Estimates;

namespace LogBook.Domain.Findings;

/// <summary>
/// One kind of finding. A rule reads the facts of a visit and of those before it; it knows no clock, no database and no
/// later visit, so judging the same facts again gives the same verdicts.
/// </summary>
public interface IFindingRule
{
    /// <summary>Kind, one of <see cref="FindingKinds"/>.</summary>
    string Kind { get; }

    /// <summary>Judges the matter at a visit.</summary>
    /// <param name="visit">The latest visit known.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>One verdict for each subject; a subject that is not named was not looked at.</returns>
    IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds);
}
