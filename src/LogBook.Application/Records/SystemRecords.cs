using LogBook.Application.History;
using LogBook.Domain.Records;

namespace LogBook.Application.Records;

/// <summary>What the records of a system tell of its probes, meters and pumps.</summary>
/// <param name="Heading">The system.</param>
/// <param name="From">Day of the first visit at the site, or today.</param>
/// <param name="To">Day after today.</param>
/// <param name="Probes">Conductivity probes.</param>
/// <param name="OtherProbes">Comparisons of other probes, latest first.</param>
/// <param name="Followed">Feeds that follow a display, latest first.</param>
/// <param name="Checks">Standard checks of the hand meters that the probes were compared with, latest first.</param>
/// <param name="Meters">Water meters.</param>
/// <param name="Pumps">Feed pumps.</param>
/// <param name="Figures">Stored figures of what is shown, for "How was this worked out?", by time.</param>
public sealed record SystemRecords(
    SystemHeading Heading,
    DateOnly From,
    DateOnly To,
    IReadOnlyList<ProbeRecord> Probes,
    IReadOnlyList<OtherProbeReading> OtherProbes,
    IReadOnlyList<DisplayFed> Followed,
    IReadOnlyList<StandardCheck> Checks,
    IReadOnlyList<MeterRecord> Meters,
    IReadOnlyList<PumpRecord> Pumps,
    IReadOnlyList<HistoryFigure> Figures)
{
    /// <summary>Zone of the site.</summary>
    public TimeZoneInfo Zone { get; } = TimeZoneInfo.FindSystemTimeZoneById(Heading.TimeZone);

    /// <summary>Wall time at the site.</summary>
    public DateTime Wall(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, Zone);
}
