using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Assessments;

/// <summary>One run over the moments at which something became known about a system.</summary>
internal sealed class Replay(SystemHistory history, FindingThresholds thresholds)
{
    private readonly List<VisitFacts> _facts = [];
    private readonly FindingLedger _ledger = new(history.Site.Code, history.System.Code);
    private readonly IReadOnlyList<IFindingRule> _rules = history.System.Kind == SystemKind.OpenRecirculating ? FindingRules.All : FindingRules.ForRecordsOnly;
    private List<NotJudged> _notJudged = [];
    private DateOnly? _lastDay;

    public SystemAssessment Until(DateTime asOf)
    {
        var steps = history.Versions
            .Where(version => version.KnownFrom <= asOf)
            .SelectMany(version => version.LaterResults.Prepend(version.KnownFrom).Select(moment => (moment, version)))
            .Where(step => step.moment <= asOf)
            .GroupBy(step => step.moment)
            .OrderBy(group => group.Key);
        var known = new Dictionary<Guid, SystemVisit>();
        foreach (var step in steps)
        {
            PassDaysUntil(history.DayOf(step.Key), including: false);
            Learn(known, step.Key, step.Select(part => part.version));
            JudgeVisit(step.Key);
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
            NotJudged = [.. _notJudged.OrderBy(n => n.Kind, StringComparer.Ordinal).ThenBy(n => FindingLedger.KeyOf(n.About), StringComparer.Ordinal)],
        };
    }

    // Facts look backwards only, so those before the earliest changed visit stay as they are.
    private void Learn(Dictionary<Guid, SystemVisit> known, DateTime moment, IEnumerable<SystemVisit> versions)
    {
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

        var keep = _facts.FindIndex(visit => Compare((visit.Visit.At, visit.Visit.Visit.Id), earliest) >= 0);
        if (keep >= 0)
        {
            _facts.RemoveRange(keep, _facts.Count - keep);
        }

        var later = known.Values
            .Where(visit => Compare((visit.At, visit.Visit.Id), earliest) >= 0)
            .OrderBy(visit => visit.At).ThenBy(visit => visit.Visit.Id);
        foreach (var visit in later)
        {
            _facts.Add(new VisitFacts(history, visit, _facts.Count > 0 ? _facts[^1] : null));
        }
    }

    private void JudgeVisit(DateTime moment)
    {
        var latest = _facts[^1];
        var day = history.DayOf(moment);
        _lastDay = _lastDay is { } last && last > day ? last : day;
        Apply(
            [.. _rules.SelectMany(rule => rule.Judge(latest, thresholds).Select(verdict => (rule.Kind, verdict)))],
            day,
            history.DayOf(latest.Visit.KnownFrom),
            latest.Visit.Visit.Id);
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
            Apply(
                [.. _rules.OfType<IDailyRule>().SelectMany(rule => rule.JudgeDay(_facts[^1], next, thresholds).Select(verdict => (rule.Kind, verdict)))],
                next,
                next,
                null);
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
            _notJudged =
            [
                .. verdicts.Where(pair => pair.Verdict.NotJudgedBecause is not null)
                    .Select(pair => new NotJudged(pair.Kind, pair.Verdict.About, pair.Verdict.NotJudgedBecause!)),
            ];
        }
    }

    private static (DateTime At, Guid Id) Earlier((DateTime At, Guid Id) best, SystemVisit visit) =>
        Compare((visit.At, visit.Visit.Id), best) < 0 ? (visit.At, visit.Visit.Id) : best;

    private static int Compare((DateTime At, Guid Id) a, (DateTime At, Guid Id) b) =>
        a.At != b.At ? a.At.CompareTo(b.At) : a.Id.CompareTo(b.Id);
}
