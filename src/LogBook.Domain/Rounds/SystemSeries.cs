using LogBook.Domain.Estimates;

namespace LogBook.Domain.Rounds;

/// <summary>The visits of one system as known so far, each compared with what the site let expect before it.</summary>
/// <remarks>
/// A probe is expected to be right, and as far off as the median of its comparisons one to seven months earlier; a residual to be the median of
/// the last results with other lots. What stands under a known shift serves no expectation.
/// </remarks>
internal sealed class SystemSeries(string site, string system, Func<string, DateTime, bool> isShiftedMeter, Func<string, bool> isShiftedLot)
{
    private const double BaselineFromDays = 210;
    private const double BaselineToDays = 25;
    private const double SetLatelyDays = 40;
    private const int ProbeBaselineLeast = 2;
    private const int ProbeBaselineMost = 6;
    private const int LotBaselineMost = 12;
    private const int LotBaselineLeast = 3;

    private readonly List<KnownVisit> _visits = [];

    public IReadOnlyList<KnownVisit> Visits => _visits;

    /// <summary>Takes in a step.</summary>
    /// <returns>Visits that are no longer as they were, and those in their place.</returns>
    public (IReadOnlyList<KnownVisit> Gone, IReadOnlyList<KnownVisit> Come) Take(ClueStep step)
    {
        var keep = _visits.FindIndex(visit => visit.Clues.At > step.FromAt || (visit.Clues.At == step.FromAt && visit.Clues.VisitId.CompareTo(step.FromId) >= 0));
        List<KnownVisit> gone = keep < 0 ? [] : _visits[keep..];
        if (keep >= 0)
        {
            _visits.RemoveRange(keep, _visits.Count - keep);
        }

        var come = new List<KnownVisit>();
        foreach (var clues in step.Visits)
        {
            var visit = new KnownVisit($"{site}/{system}", site, clues);
            Compare(visit);
            _visits.Add(visit);
            come.Add(visit);
        }

        return (gone, come);
    }

    private void Compare(KnownVisit visit)
    {
        foreach (var probe in visit.Clues.Probes)
        {
            var before = LastOf(probe.Probe) is { } last ? last.Undone[probe.Probe].Left : 0;
            var found = probe.Found + before;
            visit.Undone[probe.Probe] = (found, found - (probe.Found + probe.Moved));
            CompareProbe(visit, probe, found);
        }

        foreach (var lot in visit.Clues.Lots)
        {
            CompareLot(visit, lot);
        }
    }

    private KnownVisit? LastOf(string probe)
    {
        for (var i = _visits.Count - 1; i >= 0; i--)
        {
            if (_visits[i].Undone.ContainsKey(probe))
            {
                return _visits[i];
            }
        }

        return null;
    }

    private void CompareProbe(KnownVisit visit, ProbeClue probe, double found)
    {
        var usual = new List<double>();
        for (var i = _visits.Count - 1; i >= 0 && usual.Count < ProbeBaselineMost; i--)
        {
            var earlier = _visits[i];
            var days = (visit.Clues.At - earlier.Clues.At).TotalDays;
            if (days > BaselineFromDays)
            {
                break;
            }

            if (days >= BaselineToDays && earlier.Undone.TryGetValue(probe.Probe, out var undone)
                && !isShiftedMeter(earlier.Clues.Probes.First(p => p.Probe.Equals(probe.Probe, StringComparison.OrdinalIgnoreCase)).Instrument, earlier.Clues.At))
            {
                usual.Add(undone.Found);
            }
        }

        if (usual.Count >= ProbeBaselineLeast)
        {
            var ofSite = Scatter(probe.Uncertainty, usual.Count);
            // A meter that moves within what a good check allows moves the change by up to twice that, and the level by once: the mean
            // of both tells it better from one that reads off.
            var change = found - Statistics.Median(usual);
            visit.ByMeter.Add((probe.Instrument, new Comparison(visit.Place, visit.Site, visit.Clues.At, (change + Level(visit, probe)) / 2, change, probe.Uncertainty, ofSite)));
        }
    }

    // Error as found, with what this meter has set lately or under a known shift taken back.
    private double Level(KnownVisit visit, ProbeClue probe)
    {
        var level = probe.Found;
        for (var i = _visits.Count - 1; i >= 0 && (visit.Clues.At - _visits[i].Clues.At).TotalDays <= BaselineFromDays; i--)
        {
            var at = _visits[i].Clues.At;
            level -= _visits[i].Clues.Probes
                .Where(p => p.WasSet && ((visit.Clues.At - at).TotalDays <= SetLatelyDays || isShiftedMeter(p.Instrument, at)) && p.Probe.Equals(probe.Probe, StringComparison.OrdinalIgnoreCase) && p.Instrument.Equals(probe.Instrument, StringComparison.OrdinalIgnoreCase))
                .Sum(p => p.Moved);
        }

        return level;
    }

    private void CompareLot(KnownVisit visit, LotClue lot)
    {
        if (lot.UseSide != 0)
        {
            return;
        }

        var usual = new List<double>();
        for (var i = _visits.Count - 1; i >= 0 && usual.Count < LotBaselineMost; i--)
        {
            var earlier = _visits[i];
            if ((visit.Clues.At - earlier.Clues.At).TotalDays > BaselineFromDays)
            {
                break;
            }

            if (earlier.Clues.Lots.FirstOrDefault(l => l.Test.Equals(lot.Test, StringComparison.OrdinalIgnoreCase)) is { UseSide: 0 } then && then.Basis == lot.Basis
                && !string.Equals(then.Lot, lot.Lot, StringComparison.OrdinalIgnoreCase) && (then.Lot is null || !isShiftedLot(then.Lot)))
            {
                usual.Add(then.Value);
            }
        }

        if (usual.Count >= LotBaselineLeast)
        {
            var percent = 100 * ((lot.Value / Statistics.Median(usual)) - 1);
            visit.ByLot.Add((lot.Test, lot.Lot, new Comparison(visit.Place, visit.Site, visit.Clues.At, percent, percent, lot.Uncertainty, Scatter(lot.Uncertainty, usual.Count))));
        }
    }

    // Standard error of a median of so many values.
    private static double Scatter(double uncertainty, int count) => 1.2533 * uncertainty / Math.Sqrt(count);
}
