using LogBook.Domain.History;

namespace LogBook.Domain.Assessments;

/// <summary>
/// Assesses systems and remembers, within the process, what follows from records that have not changed: facts of the visits, verdicts
/// and the state of the findings. What it gives is what <see cref="Assessment.Of(SystemHistory, DateTime, AssessmentInputs, Findings.FindingThresholds)"/>
/// gives, only sooner.
/// </summary>
/// <remarks>
/// Records are told apart as objects, which never change: whoever asks keeps the same object for the same document and another set-up
/// object for another set-up or other settings; what an authority was told of is compared by what it says. A visit that comes in late, or is amended, breaks the chain at its place: the run goes
/// back there, and everything after is worked out anew. For use by several threads: whoever assesses a system takes what is kept of it
/// and puts it back afterwards; another who asks meanwhile finds nothing and works everything out.
/// </remarks>
/// <param name="mostVisits">Visits kept at most, over all systems; those of the system longest not asked for go first.</param>
public sealed class AssessmentMemo(int mostVisits = AssessmentMemo.DefaultVisits)
{
    /// <summary>
    /// Visits kept by default. The gain is in what comes soon after: a result, an amendment, the other systems of a site, the mail
    /// that words a summary. Facts of a visit take some tens of kilobytes, so that this bounds the memory to a few tens of megabytes,
    /// whatever the size of the firm.
    /// </summary>
    public const int DefaultVisits = 1500;

    private readonly Lock _lock = new();
    private readonly List<Replay> _kept = [];

    /// <summary>Visits kept now.</summary>
    public int Visits
    {
        get
        {
            lock (_lock)
            {
                return _kept.Sum(replay => replay.Visits);
            }
        }
    }

    /// <summary>Assesses a system with what is known beside its own records.</summary>
    /// <param name="history">Set-up and visits; what became known after <paramref name="asOf"/> is not looked at.</param>
    /// <param name="asOf">Moment it is made for, UTC.</param>
    /// <param name="inputs">Shifts of meters and lots, answers of people, delivery of summaries.</param>
    /// <returns>Findings in every state and figures by visit.</returns>
    public SystemAssessment Of(SystemHistory history, DateTime asOf, AssessmentInputs inputs)
    {
        var replay = Take(history) is { } kept && IsFor(kept.SetUp, history) && kept.Knows(inputs.Shifts)
            ? kept
            : new Replay(history, history.Firm.Engine.Thresholds, inputs.Shifts, mayGoOn: true);
        var result = replay.Until(history, asOf, inputs);
        Keep(replay);
        return result;
    }

    private static bool IsFor(SystemHistory setUp, SystemHistory history) =>
        ReferenceEquals(setUp.Firm.Document, history.Firm.Document)
        && ReferenceEquals(setUp.Firm.Engine, history.Firm.Engine)
        && ReferenceEquals(setUp.Site, history.Site)
        && ReferenceEquals(setUp.System, history.System)
        && setUp.Notifications.SequenceEqual(history.Notifications);

    private static bool IsSameSystem(Replay replay, SystemHistory history) =>
        replay.SetUp.Site.Code.Equals(history.Site.Code, StringComparison.OrdinalIgnoreCase)
        && replay.SetUp.System.Code.Equals(history.System.Code, StringComparison.OrdinalIgnoreCase);

    private Replay? Take(SystemHistory history)
    {
        lock (_lock)
        {
            var place = _kept.FindIndex(replay => IsSameSystem(replay, history));
            if (place < 0)
            {
                return null;
            }

            var kept = _kept[place];
            _kept.RemoveAt(place);
            return kept;
        }
    }

    private void Keep(Replay replay)
    {
        lock (_lock)
        {
            _kept.RemoveAll(other => IsSameSystem(other, replay.SetUp));
            _kept.Add(replay);
            var left = _kept.Sum(one => one.Visits);
            while (left > mostVisits)
            {
                left -= _kept[0].Visits;
                _kept.RemoveAt(0);
            }
        }
    }
}
