using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Entry.State;

/// <summary>Units and last values of probes.</summary>
internal static class ProbeUnits
{
    private static readonly string[] Conductivity = [UnitCodes.MicrosiemensPerCm, UnitCodes.MillisiemensPerCm];
    private static readonly string[] Ph = [UnitCodes.Ph];
    private static readonly string[] Orp = [UnitCodes.Millivolt];

    public static IReadOnlyList<string> Of(ProbeKind kind) => kind switch
    {
        ProbeKind.Ph => Ph,
        ProbeKind.Orp => Orp,
        _ => Conductivity,
    };

    public static string? Last(FormState state, string probe, Func<ProbeReading, double?> of) =>
        state.Plan?.LastOf(s => s.Probes.FirstOrDefault(p => p.Probe == probe || (p.Probe is null && s.Probes.Count == 1))) is { Record: var last } && of(last) is { } value
            ? state.Shows(value, last.Unit)
            : null;
}
