using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Assessments;

/// <summary>
/// Asks the rules again with known shifts of meters and lots taken off the readings: evidence that does not remain was the meter's or
/// the lot's, evidence that remains keeps at most the severity it then has. Taking a shift off never opens anything.
/// </summary>
internal sealed class ExplainedAway(SystemHistory history, IReadOnlyList<RoundShift> shifts)
{
    private static readonly Text ByMeter = new(
        "Explained by hand meter {0}, which reads {1} off on several sites (its finding is of {2}).",
        "Lo explica el medidor portátil {0}, que lee con {1} de desvío en varios sitios (su hallazgo es del {2}).",
        "Explica-se pelo medidor portátil {0}, que lê com {1} de desvio em vários locais (sua constatação é de {2}).");

    private static readonly Text ByLot = new(
        "Explained by reagent lot {0}, which reads {1} off on several sites (its finding is of {2}).",
        "Lo explica el lote de reactivo {0}, que da con {1} de desvío en varios sitios (su hallazgo es del {2}).",
        "Explica-se pelo lote de reagente {0}, que dá com {1} de desvio em vários locais (sua constatação é de {2}).");

    private readonly List<VisitFacts> _raw = [];
    private readonly List<VisitFacts> _corrected = [];

    // Facts take in late counts and stay the same object: what they stood for when they were corrected.
    private readonly List<SystemVisit> _visits = [];
    private List<(RoundShift Shift, ShiftStep Step)> _known = [];

    /// <summary>Moments at which something new became known of a shift, UTC.</summary>
    public IEnumerable<DateTime> Moments => shifts.SelectMany(shift => shift.Steps).Select(step => step.Known).Distinct();

    /// <summary>The facts of a visit without the shifts known at a moment; null where they make no difference to it.</summary>
    public VisitFacts? Corrected(IReadOnlyList<VisitFacts> raw, int index, DateTime moment)
    {
        if (shifts.Count == 0)
        {
            return null;
        }

        List<(RoundShift Shift, ShiftStep Step)> known = [.. shifts.Select(shift => (shift, Step: shift.At(moment))).Where(pair => pair.Step is not null).Select(pair => (pair.shift, pair.Step!))];
        if (known.Count == 0)
        {
            return null;
        }

        var keep = known.SequenceEqual(_known) ? _raw.Zip(raw).TakeWhile(pair => ReferenceEquals(pair.First, pair.Second)).Count() : 0;
        _known = known;
        _raw.RemoveRange(keep, _raw.Count - keep);
        _corrected.RemoveRange(keep, _corrected.Count - keep);
        _visits.RemoveRange(keep, _visits.Count - keep);
        TakeCounts(known);
        for (var i = keep; i < raw.Count; i++)
        {
            var visit = ShiftCorrection.Of(raw[i].Visit, known);
            var previous = i > 0 ? _corrected[i - 1] : null;
            _raw.Add(raw[i]);
            _visits.Add(raw[i].Visit);
            _corrected.Add(ReferenceEquals(visit, raw[i].Visit) && (i == 0 || ReferenceEquals(previous, raw[i - 1])) ? raw[i] : new VisitFacts(history, visit, previous));
        }

        return ReferenceEquals(_corrected[index], raw[index]) ? null : _corrected[index];
    }

    // A count is nobody's shift, but one that came in must stand in both, or it would seem to be explained.
    private void TakeCounts(List<(RoundShift Shift, ShiftStep Step)> known)
    {
        var hasChanged = false;
        for (var i = 0; i < _visits.Count; i++)
        {
            var isNew = !ReferenceEquals(_visits[i], _raw[i].Visit);
            hasChanged |= isNew;
            _visits[i] = _raw[i].Visit;
            if (hasChanged && !ReferenceEquals(_corrected[i], _raw[i]))
            {
                _corrected[i].TakeCounts(isNew ? ShiftCorrection.Of(_visits[i], known) : _corrected[i].Visit);
            }
        }
    }

    /// <summary>Verdicts with what the known shifts explain marked.</summary>
    public List<(string Kind, Verdict Verdict)> Weigh(List<(string Kind, Verdict Verdict)> verdicts, IEnumerable<(string Kind, Verdict Verdict)> corrected)
    {
        var without = new Dictionary<(string, About?), Verdict>(MatterComparer.Instance);
        foreach (var (kind, verdict) in corrected)
        {
            without.TryAdd((kind, verdict.About), verdict);
        }

        return verdicts.ConvertAll(pair => (pair.Kind, Weigh(pair.Kind, pair.Verdict, without.GetValueOrDefault((pair.Kind, pair.Verdict.About)))));
    }

    /// <summary>One verdict beside what its rule says without the shifts; null where it says nothing then.</summary>
    public Verdict Weigh(string kind, Verdict verdict, Verdict? without)
    {
        if (verdict.Indication is null || without?.NotJudgedBecause is not null)
        {
            return verdict;
        }

        if (without?.Indication is { } remains)
        {
            return verdict.AtMost(remains.Severity);
        }

        // A residual is the lot's matter before it is the meter's, everything else the meter's.
        var leads = kind is FindingKinds.ResidualHigh or FindingKinds.ResidualLow || verdict.About?.Test is not null ? FindingKinds.LotShift : FindingKinds.InstrumentShift;
        var (shift, step) = _known.OrderBy(pair => pair.Shift.Kind == leads ? 1 : 0).ThenBy(pair => pair.Step.Known).Last();
        var by = new Said(shift.Kind == FindingKinds.LotShift ? ByLot : ByMeter, shift.Code, new Amount(100 * step.Share, "%"), shift.FirstSeen);
        return verdict.Explained(by, _known.Min(pair => pair.Step.From == DateTime.MinValue ? DateOnly.MinValue : history.DayOf(pair.Step.From)));
    }
}
