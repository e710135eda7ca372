using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Assessments;

/// <summary>
/// What the records of many systems mean together: a hand meter, a reagent lot or a person that shows on several of them. A pure
/// function of the histories and a moment, replayed in the order in which things became known.
/// </summary>
/// <remarks>
/// Three steps: each system gives its clues; the clues of all give the round-wide findings and the shifts; systems that a shift
/// concerns are assessed with it, which withdraws what it explains. Clues do not depend on shifts, so nothing goes round in a circle,
/// and clues may be kept and used again as long as the records of their system have not changed.
/// </remarks>
public static class RoundAssessment
{
    /// <summary>Assesses all systems of a firm together, with the thresholds of the installation.</summary>
    /// <param name="systems">Histories of the systems, all of one firm; any order.</param>
    /// <param name="asOf">Moment it is made for, UTC.</param>
    /// <returns>Round-wide findings, and the systems' assessments without what the round explains.</returns>
    public static FirmAssessment Of(IReadOnlyList<SystemHistory> systems, DateTime asOf)
    {
        var alone = systems.Select(system => Assessment.Of(system, asOf)).ToList();
        var round = systems.Count == 0 ? new RoundResult(asOf, [], []) : Of(systems[0].Firm, alone.Select(system => system.Clues), asOf);
        return new FirmAssessment(
            round,
            [.. systems.Select((system, i) => ShiftsOf(round, alone[i].Clues) is { Count: > 0 } shifts ? Assessment.Of(system, asOf, new AssessmentInputs { Shifts = shifts }) : alone[i])]);
    }

    /// <summary>The round-wide part alone, from clues.</summary>
    /// <param name="firm">Set-up of the firm: instruments with their checks, lots, sites.</param>
    /// <param name="systems">Clues of all systems, see <see cref="SystemAssessment.Clues"/>; any order.</param>
    /// <param name="asOf">Moment it is made for, UTC; what became known later is not looked at.</param>
    /// <param name="closed">Round-wide findings that people closed.</param>
    /// <returns>Findings and shifts.</returns>
    public static RoundResult Of(FirmSetUp firm, IEnumerable<SystemClues> systems, DateTime asOf, IReadOnlyList<FindingAnswer>? closed = null) =>
        new RoundReplay(firm, closed ?? []).Until(systems, asOf);

    /// <summary>The visits that a round-wide finding rests on.</summary>
    /// <param name="firm">Set-up of the firm.</param>
    /// <param name="systems">Clues of all systems; any order.</param>
    /// <param name="asOf">Moment, UTC; what became known later is not looked at.</param>
    /// <param name="kind">Kind of the finding.</param>
    /// <param name="code">Code of the meter, the lot or the person; case does not count.</param>
    /// <param name="firstSeen">First day of the finding.</param>
    /// <returns>Latest first; none for another kind.</returns>
    public static IReadOnlyList<RoundEvidence> EvidenceOf(FirmSetUp firm, IEnumerable<SystemClues> systems, DateTime asOf, string kind, string code, DateOnly firstSeen)
    {
        var replay = new RoundReplay(firm, []);
        _ = replay.Until(systems, asOf);
        return replay.EvidenceOf(kind, code, firstSeen);
    }

    /// <summary>The shifts of meters and lots that a system has used.</summary>
    /// <param name="round">The round-wide assessment.</param>
    /// <param name="system">Clues of the system.</param>
    /// <returns>Those shifts; usually none.</returns>
    public static IReadOnlyList<RoundShift> ShiftsOf(RoundResult round, SystemClues system)
    {
        if (round.Shifts.Count == 0)
        {
            return [];
        }

        var visits = system.Steps.SelectMany(step => step.Visits).ToList();
        var meters = visits.SelectMany(visit => visit.Probes).Select(probe => probe.Instrument).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var lots = visits.SelectMany(visit => visit.Lots).Select(lot => lot.Lot).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. round.Shifts.Where(shift => shift.Kind == FindingKinds.LotShift ? lots.Contains(shift.Code) : meters.Contains(shift.Code))];
    }
}
