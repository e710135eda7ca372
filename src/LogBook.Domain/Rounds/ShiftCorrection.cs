using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Rounds;

/// <summary>Takes a known shift off the readings that it concerns, so that a rule can be asked whether its evidence would remain.</summary>
internal static class ShiftCorrection
{
    /// <summary>The visit with the shifts taken off; the same object where none concerns it.</summary>
    public static SystemVisit Of(SystemVisit visit, IReadOnlyList<(RoundShift Shift, ShiftStep Step)> known)
    {
        foreach (var (shift, step) in known)
        {
            if (visit.At >= step.From && (step.Until is null || visit.At < step.Until))
            {
                visit = shift.Kind == FindingKinds.LotShift ? ForLot(visit, shift, step.Share) : ForMeter(visit, shift, step.Share);
            }
        }

        return visit;
    }

    private static SystemVisit ForLot(SystemVisit visit, RoundShift shift, double share)
    {
        bool Concerns(Reading reading) => shift.Code.Equals(reading.Lot, StringComparison.OrdinalIgnoreCase) && shift.Test.Equals(reading.Test, StringComparison.OrdinalIgnoreCase);
        return visit.Record.Readings.Any(Concerns) ? With(visit, Concerns, share, []) : visit;
    }

    private static SystemVisit ForMeter(SystemVisit visit, RoundShift shift, double share)
    {
        bool Is(string? code) => shift.Code.Equals(code, StringComparison.OrdinalIgnoreCase);
        bool Concerns(Reading reading) => Is(reading.Instrument) && reading.Test.Equals(shift.Test, StringComparison.OrdinalIgnoreCase) && reading.Source != ReadingSource.Controller;
        var readings = visit.Record.Readings.Any(Concerns);
        var probes = visit.Record.Probes.Any(probe => Is(probe.Instrument) && probe.Reference is not null);
        return !readings && !probes
            ? visit
            : With(visit, Concerns, share, [.. visit.Record.Probes.Select(probe => Is(probe.Instrument) && probe.Reference is { } reference ? probe with { Reference = reference / (1 + share) } : probe)]);
    }

    private static SystemVisit With(SystemVisit visit, Func<Reading, bool> concerns, double share, IReadOnlyList<ProbeReading> probes) => visit with
    {
        Record = visit.Record with
        {
            Readings = [.. visit.Record.Readings.Select(reading => concerns(reading) && RangeJudgement.NumberOf(reading) is { } number
                ? reading with { Value = number / (1 + share), Drops = null }
                : reading)],
            Probes = probes.Count > 0 ? probes : visit.Record.Probes,
        },
    };
}
