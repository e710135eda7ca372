using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Assessments;

/// <summary>
/// One run over the moments at which something became known about a system. It can be asked again with more records: what it has
/// taken in already stays when those records begin with the same steps, and everything after the first step that differs is worked
/// out anew.
/// </summary>
internal sealed class Replay
{
    private const int LongestLookBack = 12;

    // Places to go back to: most changes come in near the end (a late result, an amendment), a few far back.
    private const int NearMarks = 6;
    private const int StepsBetweenFarMarks = 32;

    // A second look doubts what a person wrote down of the plant, not a date that passes nor what may hurt somebody.
    private static readonly HashSet<string> NeverDoubted = new(StringComparer.Ordinal)
    {
        FindingKinds.ClockDue, FindingKinds.NotMeasured, FindingKinds.SummaryUndelivered, FindingKinds.MicrobiologyHigh, FindingKinds.MixingHazard, FindingKinds.LabelExceeded,
    };

    // What compares drums and hours run with those of the visits before: after a doubted visit it has nothing to compare with. A register that
    // contradicts what was written of it tells much.
    private static readonly HashSet<string> RestsOnLastVisit = new(StringComparer.Ordinal)
    {
        FindingKinds.OverfedThenEmpty, FindingKinds.PumpOutput, FindingKinds.FeedLow, FindingKinds.FeedHigh, FindingKinds.StockUnexplained, FindingKinds.WrongProduct,
        FindingKinds.DoseMissed,
    };

    private readonly FindingThresholds _thresholds;
    private readonly IReadOnlyList<RoundShift> _shifts;
    private readonly bool _mayGoOn;
    private readonly IReadOnlyList<IFindingRule> _rules;
    private readonly IDailyRule[] _dailyRules;
    private readonly List<ReplayStep> _done = [];
    private readonly List<ReplayMark> _marks = [];
    private readonly List<VisitFacts> _facts = [];
    private readonly List<VisitClues> _factClues = [];
    private readonly List<ClueStep> _clues = [];
    private readonly Dictionary<Guid, SystemVisit> _known = [];
    private ExplainedAway _explained;
    private LatestVerdicts _latest;
    private FindingLedger _ledger;
    private List<(string Kind, Verdict Verdict)> _lastVerdicts = [];
    private DateOnly? _lastDay;

    /// <summary>Starts a run.</summary>
    /// <param name="setUp">The system; of it only the set-up is read here.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <param name="shifts">Shifts of meters and lots.</param>
    /// <param name="mayGoOn">Whether it will be asked again; places to go back to are kept then.</param>
    public Replay(SystemHistory setUp, FindingThresholds thresholds, IReadOnlyList<RoundShift> shifts, bool mayGoOn = false)
    {
        (SetUp, _thresholds, _shifts, _mayGoOn) = (setUp, thresholds, shifts, mayGoOn);
        _rules = setUp.System.Kind == SystemKind.OpenRecirculating ? FindingRules.All : FindingRules.ForRecordsOnly;
        _dailyRules = [.. _rules.OfType<IDailyRule>()];
        _explained = new ExplainedAway(setUp, shifts);
        _latest = new LatestVerdicts(setUp, _rules, thresholds);
        _ledger = new FindingLedger(setUp.Site.Code, setUp.System.Code);
    }

    /// <summary>The system it was started for; its visits are not those that were taken in last.</summary>
    public SystemHistory SetUp { get; }

    /// <summary>Visits that it holds.</summary>
    public int Visits => _facts.Count;

    /// <summary>Whether it works with the same shifts.</summary>
    /// <param name="shifts">Shifts of meters and lots.</param>
    public bool Knows(IReadOnlyList<RoundShift> shifts) => _shifts.Count == shifts.Count
        && _shifts.Zip(shifts).All(pair => pair.First with { Steps = pair.Second.Steps } == pair.Second && pair.First.Steps.SequenceEqual(pair.Second.Steps));

    /// <summary>The assessment as of a moment.</summary>
    /// <param name="history">The system with the set-up it was started for.</param>
    /// <param name="asOf">Moment, UTC.</param>
    /// <param name="inputs">What is known beside, with the shifts it was started for.</param>
    public SystemAssessment Until(SystemHistory history, DateTime asOf, AssessmentInputs inputs)
    {
        var steps = ReplayStep.Until(history, _explained.Moments, inputs.Closed, asOf);
        GoBackTo(steps);
        while (_done.Count < steps.Count)
        {
            var step = steps[_done.Count];
            MarkBefore(steps.Count);
            PassDaysUntil(SetUp.DayOf(step.Moment), including: false);
            Take(step);
            _done.Add(step);
        }

        // The days after the last step are passed again by whoever goes on from it.
        var (ledger, lastDay) = (_ledger, _lastDay);
        _ledger = ledger.Copy();
        PassDaysUntil(SetUp.DayOf(asOf), including: true);
        var result = Result(asOf, SummaryUndelivered.Ledger(history, inputs.Deliveries, inputs.Closed, asOf, _thresholds));
        (_ledger, _lastDay) = (ledger, lastDay);
        return result;
    }

    private SystemAssessment Result(DateTime asOf, FindingLedger summaries) => new(
        SetUp.Site.Code,
        SetUp.System.Code,
        asOf,
        SetUp.Firm.Engine.Version,
        _ledger.Findings(summaries),
        AllFigures())
    {
        Clocks = _facts.Count == 0 ? [] : [.. _facts[^1].DutiesOn(SetUp.DayOf(asOf)).Select(duty => RunningClock.Of(SetUp, duty, _thresholds.DueSoonPercent.Value / 100))],
        Clues = new SystemClues(SetUp.Site.Code, SetUp.System.Code, [.. _clues]),
        Ahead = _facts.Count == 0 ? SystemAhead.Nothing : AheadReader.Of(_facts[^1], SetUp.DayOf(asOf), IsDoubted),
        NotJudged = [.. NotJudgedLast().OrderBy(n => n.Kind, StringComparer.Ordinal).ThenBy(n => FindingLedger.KeyOf(n.About), StringComparer.Ordinal)],
    };

    private List<Figure> AllFigures()
    {
        var all = new List<Figure>(_facts.Sum(visit => visit.Figures.Count));
        foreach (var visit in _facts)
        {
            all.AddRange(visit.Figures);
        }

        return all;
    }

    private bool IsDoubted(Guid visit) => _factClues.Find(clues => clues.VisitId == visit) is { } clues && SecondLookSigns.Suffice(clues.Signs);

    private void Take(ReplayStep step)
    {
        if (step.Answer is { } answer)
        {
            _ledger.Close(answer, SetUp.DayOf(step.Moment));
        }
        else if (step.Versions.Count == 0)
        {
            ExplainOpen(step.Moment);
        }
        else
        {
            Learn(step.Moment, step.Versions);
            JudgeVisit(step.Moment);
        }
    }

    // Back to the last place before the first step that is not the same any more.
    private void GoBackTo(List<ReplayStep> steps)
    {
        var same = 0;
        while (same < _done.Count && same < steps.Count && _done[same].IsSameAs(steps[same]))
        {
            same++;
        }

        if (same == _done.Count)
        {
            return;
        }

        _marks.RemoveAll(mark => mark.Done > same);
        Restore(_marks.Count > 0 ? _marks[^1] : new ReplayMark(0, [], [], [], 0, new FindingLedger(SetUp.Site.Code, SetUp.System.Code), [], null));
    }

    private void Restore(ReplayMark mark)
    {
        _done.RemoveRange(mark.Done, _done.Count - mark.Done);
        _clues.RemoveRange(mark.Clues, _clues.Count - mark.Clues);
        _facts.Clear();
        _factClues.Clear();
        _factClues.AddRange(mark.FactClues);
        _known.Clear();
        var isSame = true;
        for (var i = 0; i < mark.Facts.Length; i++)
        {
            // Facts into which a count has come since are made anew, and with them all that look back at them.
            isSame &= ReferenceEquals(mark.Facts[i].Visit, mark.Visits[i]);
            _facts.Add(isSame ? mark.Facts[i] : new VisitFacts(SetUp, mark.Visits[i], i > 0 ? _facts[i - 1] : null));
            _known[mark.Visits[i].Visit.Id] = mark.Visits[i];
        }

        (_explained, _latest) = (new ExplainedAway(SetUp, _shifts), new LatestVerdicts(SetUp, _rules, _thresholds));
        (_ledger, _lastVerdicts, _lastDay) = (mark.Ledger.Copy(), mark.LastVerdicts, mark.LastDay);
    }

    private void MarkBefore(int count)
    {
        var isFar = _done.Count % StepsBetweenFarMarks == 0;
        if (!_mayGoOn || _done.Count == 0 || (!isFar && count - _done.Count > NearMarks) || (_marks.Count > 0 && _marks[^1].Done == _done.Count))
        {
            return;
        }

        _marks.Add(new ReplayMark(_done.Count, [.. _facts], [.. _facts.Select(visit => visit.Visit)], [.. _factClues], _clues.Count, _ledger.Copy(), _lastVerdicts, _lastDay));
        _marks.RemoveAll(mark => mark.Done % StepsBetweenFarMarks != 0 && _done.Count - mark.Done >= NearMarks);
    }

    // Facts look backwards only, so those before the earliest changed visit stay as they are.
    private void Learn(DateTime moment, IReadOnlyList<SystemVisit> versions)
    {
        if (OnlyCountsCameIn(versions, moment))
        {
            LearnCounts(moment, versions);
            return;
        }

        if (versions.Count == 1 && IsNewest(versions[0]))
        {
            LearnNewest(moment, versions[0]);
            return;
        }

        var earliest = (At: DateTime.MaxValue, Id: Guid.Empty);
        foreach (var version in versions)
        {
            var id = version.Visit.Id;
            if (_known.TryGetValue(id, out var before))
            {
                earliest = Earlier(earliest, before);
                if ((before.Visit.Version ?? 1) > (version.Visit.Version ?? 1))
                {
                    continue;
                }
            }

            _known[id] = version.AsKnownAt(moment);
            earliest = Earlier(earliest, version);
        }

        var keep = _facts.Count;
        while (keep > 0 && Compare((_facts[keep - 1].Visit.At, _facts[keep - 1].Visit.Visit.Id), earliest) >= 0)
        {
            keep--;
        }

        var isNewest = keep == _facts.Count;
        var later = versions.Select(version => version.Visit.Id).Concat(_facts.Skip(keep).Select(visit => visit.Visit.Visit.Id)).Distinct().Select(id => _known[id]).ToList();
        later.Sort((a, b) => Compare((a.At, a.Visit.Id), (b.At, b.Visit.Id)));
        _facts.RemoveRange(keep, _facts.Count - keep);
        _factClues.RemoveRange(keep, _factClues.Count - keep);
        var come = new List<VisitClues>();
        foreach (var visit in later)
        {
            _facts.Add(new VisitFacts(SetUp, visit, _facts.Count > 0 ? _facts[^1] : null));
            _factClues.Add(ClueReader.Of(_facts[^1], _thresholds));
            come.Add(_factClues[^1]);
        }

        if (!isNewest || come.Exists(clues => !clues.IsEmpty))
        {
            _clues.Add(new ClueStep(moment, earliest.At, earliest.Id, [.. come.Where(clues => !clues.IsEmpty)]));
        }
    }

    // Nearly every step: one visit after all that are known.
    private bool IsNewest(SystemVisit version) => !_known.ContainsKey(version.Visit.Id)
        && (_facts.Count == 0 || Compare((_facts[^1].Visit.At, _facts[^1].Visit.Visit.Id), (version.At, version.Visit.Id)) < 0);

    private void LearnNewest(DateTime moment, SystemVisit version)
    {
        var known = version.AsKnownAt(moment);
        _known[version.Visit.Id] = known;
        _facts.Add(new VisitFacts(SetUp, known, _facts.Count > 0 ? _facts[^1] : null));
        var clues = ClueReader.Of(_facts[^1], _thresholds);
        _factClues.Add(clues);
        if (!clues.IsEmpty)
        {
            _clues.Add(new ClueStep(moment, version.At, version.Visit.Id, [clues]));
        }
    }

    // Most late results are counts from slides and laboratories.
    private bool OnlyCountsCameIn(IReadOnlyList<SystemVisit> versions, DateTime moment)
    {
        for (var i = 0; i < versions.Count; i++)
        {
            var version = versions[i];
            if (moment <= version.KnownFrom || !_known.TryGetValue(version.Visit.Id, out var before) || before.Visit.Version != version.Visit.Version)
            {
                return false;
            }

            var readings = version.Record.Readings;
            for (var j = 0; j < readings.Count; j++)
            {
                if (readings[j].ResultAt is { } result && result.Utc == moment && !TestCodes.IsCount(readings[j].Test))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private void LearnCounts(DateTime moment, IReadOnlyList<SystemVisit> versions)
    {
        foreach (var version in versions)
        {
            _known[version.Visit.Id] = version.AsKnownAt(moment);
        }

        var left = versions.Count;
        for (var i = _facts.Count - 1; left > 0; i--)
        {
            var id = _facts[i].Visit.Visit.Id;
            var isOne = IsAmong(versions, id);
            _facts[i].TakeCounts(isOne ? _known[id] : _facts[i].Visit);
            left -= isOne ? 1 : 0;
        }
    }

    private static bool IsAmong(IReadOnlyList<SystemVisit> versions, Guid id)
    {
        for (var i = 0; i < versions.Count; i++)
        {
            if (versions[i].Visit.Id == id)
            {
                return true;
            }
        }

        return false;
    }

    private void JudgeVisit(DateTime moment)
    {
        var latest = _facts[^1];
        var day = SetUp.DayOf(moment);
        _lastDay = _lastDay is { } last && last > day ? last : day;
        var verdicts = _latest.On(latest);
        if (_explained.Corrected(_facts, _facts.Count - 1, moment) is { } corrected)
        {
            verdicts = _explained.Weigh(verdicts, Verdicts(corrected));
        }

        if (latest.IsDoubted || latest.Previous is { IsDoubted: true })
        {
            verdicts = verdicts.ConvertAll(pair => (pair.Kind, IsDoubted(latest, pair.Kind) ? Doubted(pair.Verdict) : pair.Verdict));
        }

        Apply(verdicts, day, SetUp.DayOf(latest.Visit.KnownFrom), latest.Visit.Visit.Id);
    }

    private List<(string Kind, Verdict Verdict)> Verdicts(VisitFacts visit) => [.. _rules.SelectMany(rule => rule.Judge(visit, _thresholds).Select(verdict => (rule.Kind, verdict)))];

    private static bool IsDoubted(VisitFacts visit, string kind) => visit.IsDoubted ? !NeverDoubted.Contains(kind) : RestsOnLastVisit.Contains(kind);

    // What may have been made up opens no headline, and closes none.
    private static Verdict Doubted(Verdict verdict) => verdict.Indication is not null ? verdict.AtMost(Severity.Watch)
        : verdict.NotJudgedBecause is not null ? verdict
        : Verdict.NotJudged(verdict.About, VisitReasons.Doubted);

    // A shift found at another site: what is open here is looked at again, each at the last visit that judged it.
    private void ExplainOpen(DateTime moment)
    {
        if (_facts.Count == 0)
        {
            return;
        }

        var day = SetUp.DayOf(moment);
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
        Verdict? Of(VisitFacts visit) => rule.Judge(visit, _thresholds).FirstOrDefault(verdict => MatterComparer.SameSubject(verdict.About, about));
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
                var heldOn = SetUp.DayOf(_facts[i].Visit.KnownFrom);
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
            List<(string Kind, Verdict Verdict)>? verdicts = null;
            foreach (var rule in _dailyRules)
            {
                foreach (var verdict in rule.JudgeDay(_facts[^1], next, _thresholds))
                {
                    (verdicts ??= []).Add((rule.Kind, verdict));
                }
            }

            if (verdicts is not null)
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

    private static (DateTime At, Guid Id) Earlier((DateTime At, Guid Id) best, SystemVisit visit) =>
        Compare((visit.At, visit.Visit.Id), best) < 0 ? (visit.At, visit.Visit.Id) : best;

    private static int Compare((DateTime At, Guid Id) a, (DateTime At, Guid Id) b) =>
        a.At != b.At ? a.At.CompareTo(b.At) : a.Id.CompareTo(b.Id);
}
