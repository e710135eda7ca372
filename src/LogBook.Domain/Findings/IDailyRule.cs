using LogBook.Domain.Estimates;

namespace LogBook.Domain.Findings;

/// <summary>A rule for what time alone can open between visits.</summary>
public interface IDailyRule : IFindingRule
{
    /// <summary>Judges the matter at the start of a day after the latest visit.</summary>
    /// <param name="latest">The latest visit known.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>One verdict for each subject.</returns>
    IEnumerable<Verdict> JudgeDay(VisitFacts latest, DateOnly day, FindingThresholds thresholds);
}
