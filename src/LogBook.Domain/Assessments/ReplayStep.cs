using LogBook.Domain.History;

namespace LogBook.Domain.Assessments;

/// <summary>One moment at which something became known: versions of visits, a shift of a meter or lot, or an answer of a person.</summary>
/// <param name="Moment">UTC.</param>
/// <param name="Order">Order within the moment: visits, shifts, answers.</param>
/// <param name="Versions">Versions that came in or whose results did; empty for another step.</param>
/// <param name="Answer">The answer; null for another step.</param>
internal sealed record ReplayStep(DateTime Moment, int Order, IReadOnlyList<SystemVisit> Versions, FindingAnswer? Answer)
{
    /// <summary>The steps up to a moment, in their order. Those up to an earlier moment are their beginning.</summary>
    /// <param name="history">The system.</param>
    /// <param name="shifts">Moments at which something became known of a shift.</param>
    /// <param name="closed">What people closed.</param>
    /// <param name="asOf">Moment, UTC.</param>
    public static List<ReplayStep> Until(SystemHistory history, IEnumerable<DateTime> shifts, IReadOnlyList<FindingAnswer> closed, DateTime asOf)
    {
        var visits = history.Versions
            .Where(version => version.KnownFrom <= asOf)
            .SelectMany(version => version.LaterResults.Prepend(version.KnownFrom).Select(moment => (moment, version)))
            .Where(step => step.moment <= asOf)
            .GroupBy(step => step.moment)
            .Select(step => new ReplayStep(step.Key, 0, [.. step.Select(part => part.version)], null));
        var explained = shifts.Where(moment => moment <= asOf).Select(moment => new ReplayStep(moment, 1, [], null));
        var answers = closed.Where(answer => answer.At <= asOf)
            .OrderBy(answer => answer.Kind, StringComparer.Ordinal).ThenBy(answer => answer.AboutKey, StringComparer.Ordinal)
            .Select(answer => new ReplayStep(answer.At, 2, [], answer));
        return [.. visits.Concat(explained).Concat(answers).OrderBy(step => step.Moment).ThenBy(step => step.Order)];
    }

    /// <summary>Whether two steps take in the same: the same objects, which are never changed, stand for the same records.</summary>
    /// <param name="other">Another step.</param>
    public bool IsSameAs(ReplayStep other)
    {
        if (Moment != other.Moment || Order != other.Order || Versions.Count != other.Versions.Count || Answer != other.Answer)
        {
            return false;
        }

        for (var i = 0; i < Versions.Count; i++)
        {
            if (!ReferenceEquals(Versions[i].Visit, other.Versions[i].Visit) || !ReferenceEquals(Versions[i].Record, other.Versions[i].Record))
            {
                return false;
            }
        }

        return true;
    }
}
