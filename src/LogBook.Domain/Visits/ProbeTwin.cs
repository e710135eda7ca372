using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>What a probe check repeats on purpose: display and reference stand among the conductivity readings too.</summary>
internal static class ProbeTwin
{
    /// <summary>Display and reading are the same number entered twice: more than this apart, one of them was misread.</summary>
    private const double Tolerance = 0.02;

    /// <summary>The pairs of a conductivity probe check that say different things.</summary>
    /// <param name="record">The record with the readings.</param>
    /// <param name="probe">The probe check.</param>
    /// <param name="firm">Set-up, for the units of tests.</param>
    /// <returns>Field of the check, its value and the reading's, µS/cm; empty where there is nothing, or more than one reading, to compare with.</returns>
    public static IEnumerable<(string Field, double Here, double Among)> Differing(VisitedSystem record, ProbeReading probe, FirmSetUp firm)
    {
        if ((probe.Of ?? ProbeKind.Conductivity) != ProbeKind.Conductivity)
        {
            yield break;
        }

        if (Pair(record, probe.AsFound, probe.Unit, ReadingSource.Controller, firm) is { } shown)
        {
            yield return ("asFound", shown.Here, shown.Among);
        }

        if (probe.Reference is { } reference && Pair(record, reference, probe.Unit, ReadingSource.Reference, firm) is { } hand)
        {
            yield return ("reference", hand.Here, hand.Among);
        }
    }

    private static (double Here, double Among)? Pair(VisitedSystem record, double value, string unit, ReadingSource source, FirmSetUp firm)
    {
        var twins = record.Readings.Where(r => r.Source == source && (r.Phase is null or ReadingPhase.Found)
            && r.Test.Equals(TestCodes.Conductivity, StringComparison.OrdinalIgnoreCase) && r.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase)).ToList();
        if (twins.Count != 1 || VisitContext.ValueOf(twins[0], firm) is not { } twin
            || Units.Convert(value, unit, UnitCodes.MicrosiemensPerCm) is not { HasValue: true } converted)
        {
            return null;
        }

        return Math.Abs(converted.Value - twin) > Tolerance * Math.Max(Math.Abs(twin), Math.Abs(converted.Value)) ? (converted.Value, twin) : null;
    }
}
