using LogBook.Domain.Estimates;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Records;

/// <summary>A comparison of a probe for pH, ORP or temperature, as entered.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Reading">What was read.</param>
public sealed record OtherProbeReading(DateTime At, Guid Visit, ProbeKind Kind, ProbeReading Reading)
{
    /// <summary>The comparisons of a system, latest first.</summary>
    /// <param name="latest">Facts of the newest visit; null where there was none.</param>
    public static IReadOnlyList<OtherProbeReading> Of(VisitFacts? latest) => latest is null
        ? []
        : [.. latest.Back().SelectMany(visit => visit.Record.Probes.Where(reading => reading.Of is not null and not ProbeKind.Conductivity).Select(reading => new OtherProbeReading(visit.Visit.At, visit.Visit.Visit.Id, reading.Of!.Value, reading)))];
}
