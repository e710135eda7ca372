using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Rounds;

/// <summary>One run over the moments at which something became known about any system of the firm, or about a meter in a standard.</summary>
internal sealed class RoundReplay
{
    private readonly FirmSetUp _firm;
    private readonly FindingThresholds _thresholds;
    private readonly IReadOnlyList<FindingAnswer> _answers;
    private readonly List<SystemSeries> _series = [];
    private readonly FindingLedger _ledger = new(null, null);
    private readonly Dictionary<string, ShiftState> _meters = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(string Test, string Lot), ShiftState> _lots = [];
    private readonly Dictionary<(string Test, string Place), (string? Lot, DateTime At)> _lotInUse = [];
    private readonly Dictionary<string, List<KnownVisit>> _doubted = new(StringComparer.OrdinalIgnoreCase);

    public RoundReplay(FirmSetUp firm, IReadOnlyList<FindingAnswer> answers)
    {
        _firm = firm;
        _thresholds = firm.Engine.Thresholds;
        _answers = answers;
    }

    public RoundResult Until(IEnumerable<SystemClues> systems, DateTime asOf)
    {
        var steps = new List<(DateTime Known, int Order, string Name, Action Take)>();
        foreach (var system in systems.OrderBy(s => s.Site, StringComparer.OrdinalIgnoreCase).ThenBy(s => s.System, StringComparer.OrdinalIgnoreCase))
        {
            var series = new SystemSeries(
                system.Site, system.System, (meter, at) => _meters.TryGetValue(meter, out var state) && state.Covers(at), lot => _lots.Any(pair => pair.Value.WasEver && string.Equals(pair.Key.Lot, lot, StringComparison.OrdinalIgnoreCase)));
            _series.Add(series);
            steps.AddRange(system.Steps.Where(step => step.Known <= asOf).Select(step => (step.Known, 1, $"{system.Site}/{system.System}".ToUpperInvariant(), (Action)(() => Learn(series, system, step)))));
        }

        foreach (var meter in _firm.Document.Instruments.OrderBy(i => i.Code, StringComparer.OrdinalIgnoreCase).Where(InstrumentShift.IsJudged))
        {
            steps.AddRange(meter.Checks.Where(check => check.At.Utc <= asOf).Select(check => (check.At.Utc, 0, meter.Code.ToUpperInvariant(), (Action)(() => Check(meter.Code, check)))));
        }

        steps.AddRange(_answers.Where(answer => answer.At <= asOf).Select(answer => (answer.At, 2, answer.Kind + answer.AboutKey, (Action)(() => _ledger.Close(answer, DayOf(null, answer.At))))));
        foreach (var step in steps.OrderBy(s => s.Known).ThenBy(s => s.Order).ThenBy(s => s.Name, StringComparer.Ordinal))
        {
            step.Take();
        }

        return new RoundResult(
            asOf,
            _ledger.Findings(),
            [.. _meters.Values.Concat(_lots.Values).SelectMany(state => state.Shifts)
                .OrderBy(s => s.FirstSeen).ThenBy(s => s.Kind, StringComparer.Ordinal).ThenBy(s => s.Code, StringComparer.OrdinalIgnoreCase).ThenBy(s => s.Test, StringComparer.Ordinal)]);
    }

    /// <summary>Visits that a finding rests on, latest first; after <see cref="Until"/>.</summary>
    /// <param name="kind">Kind of the finding.</param>
    /// <param name="code">Code of the meter, the lot or the person.</param>
    /// <param name="firstSeen">First day of the finding: a shift rests on what was read since it began, which lies before that day.</param>
    public IReadOnlyList<RoundEvidence> EvidenceOf(string kind, string code, DateOnly firstSeen)
    {
        var began = BeganAt(kind, code, firstSeen);
        return
        [
            .. _series.SelectMany(series => series.Visits).SelectMany(visit => LinesOf(visit, kind, code))
                .Where(line => line.Percent is null || line.At >= began)
                .OrderByDescending(line => line.At).ThenBy(line => line.Site, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.System, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static IEnumerable<RoundEvidence> LinesOf(KnownVisit visit, string kind, string code)
    {
        bool IsIt(string? other) => string.Equals(other, code, StringComparison.OrdinalIgnoreCase);
        RoundEvidence Line(double? percent, IReadOnlyList<SignClue> signs) =>
            new(visit.Site, visit.Place[(visit.Site.Length + 1)..], visit.Clues.VisitId, visit.Clues.At, visit.Clues.Technician, percent, signs);
        return kind switch
        {
            FindingKinds.InstrumentShift => visit.ByMeter.Where(pair => IsIt(pair.Meter)).Select(pair => Line(100 * InstrumentShift.ShareOf(pair.Comparison.Percent), [])),
            FindingKinds.LotShift => visit.ByLot.Where(pair => IsIt(pair.Lot)).Select(pair => Line(pair.Comparison.Percent, [])),
            FindingKinds.SecondLook when IsIt(visit.Clues.Technician) && SecondLookSigns.Suffice(visit.Clues.Signs) => [Line(null, visit.Clues.Signs)],
            _ => [],
        };
    }

    private DateTime BeganAt(string kind, string code, DateOnly firstSeen) => _meters.Values.Concat(_lots.Values).SelectMany(state => state.Shifts)
        .Where(shift => shift.Kind == kind && shift.FirstSeen == firstSeen && shift.Code.Equals(code, StringComparison.OrdinalIgnoreCase))
        .Select(shift => (DateTime?)shift.Steps[0].From).Min() ?? DateTime.MinValue;

    private void Learn(SystemSeries series, SystemClues system, ClueStep step)
    {
        var (gone, come) = series.Take(step);
        foreach (var visit in gone)
        {
            Forget(visit);
        }

        foreach (var visit in come)
        {
            Remember(visit);
        }

        if (come.Count == 0 && gone.Count == 0)
        {
            return;
        }

        var day = DayOf(system.Site, step.Known);
        var visitId = come.Count > 0 ? come[^1].Clues.VisitId : (Guid?)null;
        var touched = gone.Concat(come).ToList();
        foreach (var meter in touched.SelectMany(v => v.ByMeter).Select(c => c.Meter).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase))
        {
            JudgeMeter(MeterOf(meter), step.Known, day, visitId);
        }

        foreach (var (test, lot) in touched.SelectMany(v => v.ByLot).Where(c => c.Lot is not null).Select(c => (Key(c.Test), Key(c.Lot!))).Distinct().Order())
        {
            JudgeLot(LotOf(test, lot), step.Known, day, visitId);
        }

        foreach (var state in _lots.Values.Where(state => state.IsOpen && touched.Exists(v => v.Clues.Lots.Any(l => Key(l.Test) == Key(state.Test)))))
        {
            CloseUnused(state, step.Known, day);
        }

        foreach (var person in touched.Select(v => v.Clues.Technician).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase))
        {
            JudgePerson(person, come, gone, day);
        }
    }

    private void Remember(KnownVisit visit)
    {
        foreach (var (meter, comparison) in visit.ByMeter)
        {
            MeterOf(meter).Comparisons.Add(comparison);
        }

        foreach (var (test, lot, comparison) in visit.ByLot)
        {
            LotOf(Key(test), Key(lot ?? "")).Comparisons.Add(comparison);
        }

        foreach (var lot in visit.Clues.Lots)
        {
            var key = (Key(lot.Test), visit.Place);
            if (!_lotInUse.TryGetValue(key, out var last) || last.At <= visit.Clues.At)
            {
                _lotInUse[key] = (lot.Lot, visit.Clues.At);
            }
        }

        if (SecondLookSigns.Suffice(visit.Clues.Signs))
        {
            if (!_doubted.TryGetValue(visit.Clues.Technician, out var visits))
            {
                _doubted[visit.Clues.Technician] = visits = [];
            }

            visits.Add(visit);
        }
    }

    private void Forget(KnownVisit visit)
    {
        foreach (var (meter, comparison) in visit.ByMeter)
        {
            MeterOf(meter).Comparisons.RemoveAll(c => ReferenceEquals(c, comparison));
        }

        foreach (var (test, lot, comparison) in visit.ByLot)
        {
            LotOf(Key(test), Key(lot ?? "")).Comparisons.RemoveAll(c => ReferenceEquals(c, comparison));
        }

        if (_doubted.TryGetValue(visit.Clues.Technician, out var visits))
        {
            visits.RemoveAll(v => ReferenceEquals(v, visit));
        }
    }

    private void Check(string code, Sites.InstrumentCheck check)
    {
        var meter = MeterOf(code);
        var day = DayOf(null, check.At.Utc);
        var off = (check.Read / check.Standard) - 1;
        if (Math.Abs(100 * off) <= _thresholds.StandardPercent.Value)
        {
            meter.GoodCheck = check.At.Utc;
            if (meter.IsOpen)
            {
                meter.Close(check.At.Utc, check.At.Utc);
                _ledger.Apply(meter.Kind, Verdict.Clear(new About { Instrument = code }), Severity.Watch, day, day, null);
            }

            return;
        }

        if (meter.IsOpen)
        {
            meter.Follow(check.At.Utc, off);
        }
        else
        {
            meter.Open(day, check.At.Utc, off, InstrumentShift.Onset(meter, check.At.Utc, -off, _thresholds));
        }

        Show(meter, InstrumentShift.ByStandard(code, check, off, SetBy(code, meter.GoodCheck), _thresholds), day, null);
    }

    private void JudgeMeter(ShiftState meter, DateTime known, DateOnly day, Guid? visitId)
    {
        if (!InstrumentShift.IsJudged(_firm.Instruments.GetValueOrDefault(meter.Code)))
        {
            return;
        }

        var others = _meters.Values.Where(other => other != meter).SelectMany(other => other.Comparisons);
        if (!meter.IsOpen)
        {
            if (InstrumentShift.Find(meter, others, known, _firm.Engine) is { } found)
            {
                meter.Open(day, known, InstrumentShift.ShareOf(found.Median), InstrumentShift.Onset(meter, known, found.Median, _thresholds));
                Show(meter, InstrumentShift.BySites(meter, found, SetBy(meter.Code, meter.GoodCheck), _thresholds), day, visitId);
            }

            return;
        }

        var now = meter.Now!;
        if (InstrumentShift.Unmoved(meter, known, _thresholds) is { } end)
        {
            meter.Close(known, end);
            _ledger.Apply(meter.Kind, Verdict.Clear(new About { Instrument = meter.Code }), Severity.Watch, day, day, visitId);
        }
        else if (meter.Comparisons.Where(c => c.At >= now.From).ToList() is { Count: > 0 } since && ShiftStatistic.Of(since) is var statistic && statistic.Count >= _thresholds.ShiftComparisons.Value)
        {
            meter.Follow(known, InstrumentShift.ShareOf(statistic.Median));
            Show(meter, InstrumentShift.BySites(meter, statistic, SetBy(meter.Code, meter.GoodCheck), _thresholds), day, visitId);
        }
    }

    private void JudgeLot(ShiftState lot, DateTime known, DateOnly day, Guid? visitId)
    {
        if (lot.Code.Length == 0)
        {
            return;
        }

        if (!lot.IsOpen)
        {
            var others = _lots.Values.Where(other => other != lot && other.Test == lot.Test).SelectMany(other => other.Comparisons);
            if (LotShift.Find(lot, others, known, _thresholds) is { } found)
            {
                lot.Open(day, known, found.Median / 100, DateTime.MinValue);
                Show(lot, LotShift.BySites(NameOf(lot), lot.Test, found, _thresholds), day, visitId);
            }
        }
        else if (lot.Comparisons.Count == 0 || LotShift.Unmoved(lot, _thresholds))
        {
            lot.Close(known, known);
            _ledger.Apply(lot.Kind, Verdict.Clear(LotShift.AboutOf(NameOf(lot))), Severity.Watch, day, day, visitId);
        }
        else
        {
            var statistic = ShiftStatistic.Of(lot.Comparisons);
            lot.Follow(known, statistic.Median / 100);
            Show(lot, LotShift.BySites(NameOf(lot), lot.Test, statistic, _thresholds), day, visitId);
        }
    }

    // A lot that every site has put away needs nobody any more; its old results stay corrected.
    private void CloseUnused(ShiftState lot, DateTime known, DateOnly day)
    {
        if (_lotInUse.Where(pair => pair.Key.Test == lot.Test).All(pair => Key(pair.Value.Lot ?? "") != lot.Code))
        {
            lot.Close(known, known);
            _ledger.Apply(lot.Kind, Verdict.Clear(LotShift.AboutOf(NameOf(lot))), Severity.Watch, day, day, null);
        }
    }

    private void JudgePerson(string person, IReadOnlyList<KnownVisit> come, IReadOnlyList<KnownVisit> gone, DateOnly day)
    {
        if (!_doubted.TryGetValue(person, out var visits) || come.LastOrDefault(v => visits.Contains(v)) is not { } latest)
        {
            // An amendment may have taken away what was odd; a later honest visit does not.
            if (visits is { Count: 0 } && gone.Count > 0)
            {
                _ledger.Apply(FindingKinds.SecondLook, Verdict.Clear(new About { Person = person }), Severity.Watch, day, day, null);
            }

            return;
        }

        var lately = visits.Where(v => v.Clues.At > latest.Clues.At.AddDays(-SecondLook.RememberedDays) && v.Clues.At <= latest.Clues.At)
            .OrderBy(v => v.Clues.At).ThenBy(v => v.Clues.VisitId).ToList();
        _ledger.Apply(
            FindingKinds.SecondLook,
            Verdict.Found(new About { Person = person }, SecondLook.Shown(person, [.. lately.Select(v => (v.Place, DayOf(v.Site, v.Clues.At), v.Clues.Signs))], _thresholds)),
            SecondLook.SeverityOf(lately.Count),
            day,
            DayOf(latest.Site, latest.Clues.At),
            latest.Clues.VisitId);
    }

    private void Show(ShiftState state, Indication shown, DateOnly day, Guid? visitId) => _ledger.Apply(
        state.Kind,
        Verdict.Found(state.Kind == FindingKinds.LotShift ? LotShift.AboutOf(NameOf(state)) : new About { Instrument = state.Code }, shown),
        shown.Severity,
        day,
        day,
        visitId);

    /// <summary>Probes that were set to a meter after a moment, latest setting of each.</summary>
    private List<(string Place, string Probe, DateOnly Day)> SetBy(string meter, DateTime? after) =>
    [
        .. _series.SelectMany(series => series.Visits)
            .Where(visit => after is null || visit.Clues.At > after)
            .SelectMany(visit => visit.Clues.Probes.Where(p => p.WasSet && p.Instrument.Equals(meter, StringComparison.OrdinalIgnoreCase)).Select(p => (visit.Place, p.Probe, Day: DayOf(visit.Site, visit.Clues.At))))
            .GroupBy(set => (set.Place, set.Probe.ToUpperInvariant())).Select(group => group.MaxBy(set => set.Day))
            .OrderBy(set => set.Day).ThenBy(set => set.Place, StringComparer.Ordinal),
    ];

    private ShiftState MeterOf(string code)
    {
        if (!_meters.TryGetValue(code, out var state))
        {
            var name = _firm.Instruments.GetValueOrDefault(code)?.Code ?? code;
            _meters[code] = state = new ShiftState(FindingKinds.InstrumentShift, name, TestCodes.Conductivity);
        }

        return state;
    }

    private ShiftState LotOf(string test, string lot)
    {
        if (!_lots.TryGetValue((test, lot), out var state))
        {
            _lots[(test, lot)] = state = new ShiftState(FindingKinds.LotShift, lot, test);
        }

        return state;
    }

    private string NameOf(ShiftState lot) => _firm.Lots.GetValueOrDefault(lot.Code)?.Code ?? lot.Code;

    private DateOnly DayOf(string? site, DateTime utc)
    {
        var zone = site is not null && _firm.Sites.TryGetValue(site, out var known) ? TimeZoneInfo.FindSystemTimeZoneById(known.TimeZone) : TimeZoneInfo.Utc;
        return DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, zone));
    }

    // Codes are compared without regard to case.
    private static string Key(string code) => code.ToUpperInvariant();
}
