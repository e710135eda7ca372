using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Assessments;

/// <summary>
/// What the rules say of the latest visit. Most moments at which something becomes known are late results of counts: the facts of the
/// visit then stay, and only the rules that look at counts are asked again.
/// </summary>
internal sealed class LatestVerdicts(SystemHistory history, IReadOnlyList<IFindingRule> rules, FindingThresholds thresholds)
{
    private readonly List<(string Kind, Verdict Verdict)>[] _byRule = [.. rules.Select(_ => new List<(string, Verdict)>())];

    // A product may be followed by any test: where that is a count, every rule may look at one.
    private readonly bool _allReadCounts = history.Firm.Document.Products.Any(product => product.Residual is { } shows && TestCodes.IsCount(shows.Test));
    private VisitFacts? _of;
    private int _lastCount;

    /// <summary>The verdicts of all rules, in their order.</summary>
    /// <param name="visit">Facts of the latest visit: the same facts as before when nothing but counts came in since.</param>
    public List<(string Kind, Verdict Verdict)> On(VisitFacts visit)
    {
        var all = new List<(string, Verdict)>(_lastCount);
        for (var i = 0; i < rules.Count; i++)
        {
            if (_allReadCounts || visit != _of || rules[i] is IReadsCounts)
            {
                _byRule[i].Clear();
                foreach (var verdict in rules[i].Judge(visit, thresholds))
                {
                    _byRule[i].Add((rules[i].Kind, verdict));
                }
            }

            all.AddRange(_byRule[i]);
        }

        (_of, _lastCount) = (visit, all.Count);
        return all;
    }
}
