using LogBook.Domain.Estimates;

namespace LogBook.Domain.Findings;

/// <summary>First evidence is "watch"; a second visit or a large excess makes it "plan" (findings, rule 2).</summary>
internal static class Confirm
{
    private const int LongestLookBack = 12;

    /// <summary>Whether the last earlier visit that judged the matter had evidence too.</summary>
    /// <param name="visit">The visit with evidence now.</param>
    /// <param name="evidence">Evidence at a visit; null where it was not judged.</param>
    public static bool ByEarlierVisit(VisitFacts visit, Func<VisitFacts, bool?> evidence)
    {
        foreach (var earlier in visit.Back().Skip(1).Take(LongestLookBack))
        {
            if (evidence(earlier) is { } held)
            {
                return held;
            }
        }

        return false;
    }

    /// <summary>Whether the make-up that two visits rest on is one reading: what it got wrong they both get wrong, and are one witness.</summary>
    /// <param name="earlier">The earlier visit.</param>
    /// <param name="later">The later visit.</param>
    /// <param name="tests">Tests of the make-up that the matter rests on; one of them read anew is enough.</param>
    public static bool RestOnOneMakeUp(VisitFacts earlier, VisitFacts later, params ReadOnlySpan<string> tests)
    {
        for (var visit = later; visit is not null && visit != earlier; visit = visit.Previous)
        {
            foreach (var test in tests)
            {
                if (visit.MakeUpReading(test) is not null)
                {
                    return false;
                }
            }
        }

        return true;
    }

    public static Severity Severity(bool confirmed, bool largeExcess) => confirmed || largeExcess ? Findings.Severity.Plan : Findings.Severity.Watch;
}
