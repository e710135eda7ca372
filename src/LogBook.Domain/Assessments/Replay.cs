using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Assessments;

/// <summary>One run over the moments at which something became known about a system.</summary>
internal sealed class Replay(SystemHistory history, FindingThresholds thresholds, AssessmentInputs inputs)
{
    private const int LongestLookBack = 12;

    // A second look doubts what a person wrote down of the plant, not a date that passes nor what may hurt somebody.
    private static readonly HashSet<string> NeverDoubted = new(StringComparer.Ordinal)
    {
        FindingKinds.ClockDue, FindingKinds.NotMeasured, FindingKinds.SummaryUndelivered, FindingKinds.MicrobiologyHigh, FindingKinds.MixingHazard, FindingKinds.LabelExceeded,
    };

    private readonly List<VisitFacts> _facts = [];
    private readonly List<VisitClues> _factClues = [];
    private readonly List<ClueStep> _clues = [];
    private readonly ExplainedAway _explained = new(history, inputs.Shifts);
    private readonly FindingLedger _ledger = new(history.Site.Code, history.System.Code);
    private readonly IReadOnlyList<IFindingRule> _rules = RulesFor(history);
    private readonly IReadOnlyList<IDailyRule> _dailyRules = [.. RulesFor(history).OfType<IDailyRule>()];
    private readonly LatestVerdicts _latest = new(history, RulesFor(history), thresholds);
    private List<(string Kind, Verdict Verdict)> _lastVerdicts = [];
    private DateOnly? _lastDay;

    public SystemAssessment Until(DateTime asOf)
    {
        var known = new Dictionary<Guid, SystemVisit>();
        foreach (var (moment, act) in Steps(known, asOf).OrderBy(step => step.Moment).ThenBy(step => step.Order).Select(step => (step.Moment, step.Act)))
        {
            PassDaysUntil(history.DayOf(moment), including: false);
            act();
        }

        PassDaysUntil(history.DayOf(asOf), including: true);
        return new SystemAssessment(
            history.Site.Code,
            history.System.Code,
            asOf,
            history.Firm.Engine.Version,
            _ledger.Findings(),
            [.. _facts.SelectMany(visit => visit.Figures)])
        {
            Clues = new SystemClues(history.Site.Code, history.System.Code, _clues),
            NotJudged = [.. NotJudgedLast().OrderBy(n => n.Kind, StringComparer.Ordinal).ThenBy(n => FindingLedger.KeyOf(n.About), StringComparer.Ordinal)],
        };
    }

    private IEnumerable<(DateTime Moment, int Order, Action Act)> Steps(Dictionary<Guid, SystemVisit> known, DateTime asOf)
    {
        var visits = history.Versions
            .Where(version => version.KnownFrom <= asOf)
            .SelectMany(version => version.LaterResults.Prepend(version.KnownFrom).Select(moment => (moment, version)))
            .Where(step => step.moment <= asOf)
            .GroupBy(step => step.moment);
        foreach (var step in visits)
        {
            yield return (step.Key, 0, () =>
            {
                Learn(known, step.Key, [.. step.Select(part => part.version)]);
                JudgeVisit(step.Key);
            });
        }

        foreach (var moment in _explained.Moments.Where(moment => moment <= asOf))
        {
            yield return (moment, 1, () => ExplainOpen(moment));
        }

        foreach (var moment in SummaryUndelivered.Moments(history, inputs.Deliveries, thresholds).Where(moment => moment <= asOf))
        {
            yield return (moment, 3, () =>
            {
                var verdict = SummaryUndelivered.At(history, inputs.Deliveries, moment, thresholds);
                var day = history.DayOf(moment);
                _ledger.Apply(FindingKinds.SummaryUndelivered, verdict, verdict.Indication?.Severity ?? Severity.Watch, day, day, null);
            });
        }

        foreach (var answer in inputs.Closed.Where(answer => answer.At <= asOf).OrderBy(answer => answer.Kind, StringComparer.Ordinal).ThenBy(answer => answer.AboutKey, StringComparer.Ordinal))
        {
            yield return (answer.At, 2, () => _ledger.Close(answer, history.DayOf(answer.At)));
        }
    }

    // Facts look backwards only, so those before the earliest changed visit stay as they are.
    private void Learn(Dictionary<Guid, SystemVisit> known, DateTime moment, IReadOnlyList<SystemVisit> versions)
    {
        if (versions.All(version => OnlyCountsCameIn(known, version, moment)))
        {
            LearnCounts(known, moment, versions);
            return;
        }

        var earliest = (At: DateTime.MaxValue, Id: Guid.Empty);
        foreach (var version in versions)
        {
            var id = version.Visit.Id;
            if (known.TryGetValue(id, out var before))
            {
                earliest = Earlier(earliest, before);
                if ((before.Visit.Version ?? 1) > (version.Visit.Version ?? 1))
                {
                    continue;
                }
            }

            known[id] = version.AsKnownAt(moment);
            earliest = Earlier(earliest, version);
        }

        var keep = _facts.Count;
        while (keep > 0 && Compare((_facts[keep - 1].Visit.At, _facts[keep - 1].Visit.Visit.Id), earliest) >= 0)
        {
            keep--;
        }

        var isNewest = keep == _facts.Count;
        var later = versions.Select(version => version.Visit.Id).Concat(_facts.Skip(keep).Select(visit => visit.Visit.Visit.Id)).Distinct().Select(id => known[id]).ToList();
        later.Sort((a, b) => Compare((a.At, a.Visit.Id), (b.At, b.Visit.Id)));
        _facts.RemoveRange(keep, _facts.Count - keep);
        _factClues.RemoveRange(keep, _factClues.Count - keep);
        var come = new List<VisitClues>();
        foreach (var visit in later)
        {
            _facts.Add(new VisitFacts(history, visit, _facts.Count > 0 ? _facts[^1] : null));
            _factClues.Add(ClueReader.Of(_facts[^1], thresholds));
            come.Add(_factClues[^1]);
        }

        if (!isNewest || come.Exists(clues => !clues.IsEmpty))
        {
            _clues.Add(new ClueStep(moment, earliest.At, earliest.Id, [.. come.Where(clues => !clues.IsEmpty)]));
        }
    }

    // Most late results are counts from slides and laboratories.
    private static bool OnlyCountsCameIn(Dictionary<Guid, SystemVisit> known, SystemVisit version, DateTime moment) =>
        moment > version.KnownFrom
        && known.TryGetValue(version.Visit.Id, out var before)
        && before.Visit.Version == version.Visit.Version
        && version.Record.Readings.All(reading => reading.ResultAt?.Utc != moment || TestCodes.IsCount(reading.Test));

    private void LearnCounts(Dictionary<Guid, SystemVisit> known, DateTime moment, IReadOnlyList<SystemVisit> versions)
    {
        foreach (var version in versions)
        {
            known[version.Visit.Id] = version.AsKnownAt(moment);
        }

        var left = versions.Count;
        for (var i = _facts.Count - 1; left > 0; i--)
        {
            var id = _facts[i].Visit.Visit.Id;
            var isOne = versions.Any(version => version.Visit.Id == id);
            _facts[i].TakeCounts(isOne ? known[id] : _facts[i].Visit);
            left -= isOne ? 1 : 0;
        }
    }

    private void JudgeVisit(DateTime moment)
    {
        var latest = _facts[^1];
        var day = history.DayOf(moment);
        _lastDay = _lastDay is { } last && last > day ? last : day;
        var verdicts = _latest.On(latest);
        if (_explained.Corrected(_facts, _facts.Count - 1, moment) is { } corrected)
        {
            verdicts = _explained.Weigh(verdicts, Verdicts(corrected));
        }

        if (SecondLookSigns.Suffice(_factClues[^1].Signs))
        {
            verdicts = verdicts.ConvertAll(pair => (pair.Kind, Doubted(pair.Kind, pair.Verdict)));
        }

        Apply(verdicts, day, history.DayOf(latest.Visit.KnownFrom), latest.Visit.Visit.Id);
    }

    private List<(string Kind, Verdict Verdict)> Verdicts(VisitFacts visit) => [.. _rules.SelectMany(rule => rule.Judge(visit, thresholds).Select(verdict => (rule.Kind, verdict)))];

    // What may have been made up opens no headline, and closes none.
    private static Verdict Doubted(string kind, Verdict verdict) => NeverDoubted.Contains(kind) ? verdict
        : verdict.Indication is not null ? verdict.AtMost(Severity.Watch)
        : verdict.NotJudgedBecause is not null ? verdict
        : Verdict.NotJudged(verdict.About, VisitReasons.Doubted);

    // A shift found at another site: what is open here is looked at again, each at the last visit that judged it.
    private void ExplainOpen(DateTime moment)
    {
        if (_facts.Count == 0)
        {
            return;
        }

        var day = history.DayOf(moment);
        foreach (var (kind, about, _) in _ledger.Open.ToList())
        {
            if (_rules.FirstOrDefault(rule => rule.Kind == kind) is { } rule)
            {
                ExplainOpen(rule, about, moment, day);
            }
        }
    }

    private void ExplainOpen(IFindingRule rule, About? about, DateTime moment, DateOnly day)
    {
        Verdict? Of(VisitFacts visit) => rule.Judge(visit, thresholds).FirstOrDefault(verdict => MatterComparer.SameSubject(verdict.About, about));
        for (var i = _facts.Count - 1; i >= Math.Max(0, _facts.Count - LongestLookBack); i--)
        {
            if (_explained.Corrected(_facts, i, moment) is not { } corrected)
            {
                return;
            }

            if (Of(_facts[i]) is not { NotJudgedBecause: null } verdict)
            {
                continue;
            }

            if (_explained.Weigh(rule.Kind, verdict, Of(corrected)) is { Indication: not null } weighed && (weighed.ExplainedBy is not null || weighed.Indication!.Severity < verdict.Indication!.Severity))
            {
                var heldOn = history.DayOf(_facts[i].Visit.KnownFrom);
                _ledger.Apply(rule.Kind, weighed, weighed.Indication!.Severity, day, heldOn, _facts[i].Visit.Visit.Id);
            }

            return;
        }
    }

    private void PassDaysUntil(DateOnly day, bool including)
    {
        if (_facts.Count == 0 || _lastDay is not { } last)
        {
            return;
        }

        var end = including ? day : day.AddDays(-1);
        for (var next = last.AddDays(1); next <= end; next = next.AddDays(1))
        {
            List<(string Kind, Verdict Verdict)> verdicts = [];
            foreach (var rule in _dailyRules)
            {
                verdicts.AddRange(rule.JudgeDay(_facts[^1], next, thresholds).Select(verdict => (rule.Kind, verdict)));
            }

            if (verdicts.Count > 0)
            {
                Apply(verdicts, next, next, null);
            }

            _lastDay = next;
        }
    }

    private void Apply(List<(string Kind, Verdict Verdict)> verdicts, DateOnly day, DateOnly heldOn, Guid? visitId)
    {
        var folding = new Folding(_ledger.Open, verdicts);
        foreach (var (kind, verdict) in verdicts)
        {
            _ledger.Apply(kind, verdict, folding.SeverityOf(kind, verdict), day, heldOn, visitId);
        }

        if (visitId is not null)
        {
            _lastVerdicts = verdicts;
        }
    }

    private IEnumerable<NotJudged> NotJudgedLast() => _lastVerdicts.Where(pair => pair.Verdict.NotJudgedBecause is not null)
        .Select(pair => new NotJudged(pair.Kind, pair.Verdict.About, pair.Verdict.NotJudgedBecause!));

    private static IReadOnlyList<IFindingRule> RulesFor(SystemHistory history) =>
        history.System.Kind == SystemKind.OpenRecirculating ? FindingRules.All : FindingRules.ForRecordsOnly;

    private static (DateTime At, Guid Id) Earlier((DateTime At, Guid Id) best, SystemVisit visit) =>
        Compare((visit.At, visit.Visit.Id), best) < 0 ? (visit.At, visit.Visit.Id) : best;

    private static int Compare((DateTime At, Guid Id) a, (DateTime At, Guid Id) b) =>
        a.At != b.At ? a.At.CompareTo(b.At) : a.Id.CompareTo(b.Id);
}
