using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Probes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Records;

/// <summary>A conductivity probe over time: as found, after cleaning, as left, and how it drifts between cleanings and calibrations.</summary>
/// <param name="Probe">Code of the probe.</param>
/// <param name="Points">Comparisons, oldest first.</param>
/// <param name="Lines">One line for each series with at least three errors, oldest first.</param>
public sealed record ProbeRecord(string Probe, IReadOnlyList<ProbePoint> Points, IReadOnlyList<DriftLine> Lines)
{
    /// <summary>The records of all conductivity probes of a system.</summary>
    /// <param name="latest">Facts of the newest visit; null where there was none.</param>
    /// <returns>One record for each probe that was ever compared, by code.</returns>
    public static IReadOnlyList<ProbeRecord> Of(VisitFacts? latest)
    {
        if (latest is null)
        {
            return [];
        }

        var visits = latest.Back().Reverse().ToList();
        return
        [
            .. visits.SelectMany(visit => visit.Probes).Select(probe => probe.Probe).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)
                .Select(code => Of(latest.History, visits, code)),
        ];
    }

    private static ProbeRecord Of(SystemHistory history, List<VisitFacts> visits, string code)
    {
        var compared = visits
            .Select(visit => (visit, probe: visit.Probes.FirstOrDefault(probe => Same(probe.Probe, code))))
            .Where(pair => pair.probe is not null)
            .Select(pair => (pair.visit, probe: pair.probe!))
            .ToList();
        var lines = new List<DriftLine>();
        for (var i = 0; i < compared.Count; i++)
        {
            // A series ends where the next comparison begins another one.
            var (visit, probe) = compared[i];
            var drift = visit.Drift(probe);
            var isLast = i == compared.Count - 1;
            if (drift.SlopePerDay.HasValue && (isLast || compared[i + 1].visit.Drift(compared[i + 1].probe).From != drift.From))
            {
                lines.Add(LineOf(visit, drift, isLast && !probe.Restarts));
            }
        }

        return new ProbeRecord(code, [.. compared.Select(pair => PointOf(history, pair.visit, pair.probe))], lines);
    }

    private static DriftLine LineOf(VisitFacts visit, ProbeDrift drift, bool isRunning)
    {
        var slope = drift.SlopePerDay.Value.Value;
        var usual = VisitIntervals.UsualDays(visit);
        var next = visit.Visit.At.AddDays(usual);
        var atNext = drift.Forecast!.Value;
        return new DriftLine(
            drift,
            drift.From,
            isRunning ? next : visit.Visit.At,
            atNext - (slope * (next - drift.From).TotalDays),
            isRunning ? atNext : atNext - (slope * usual),
            isRunning ? drift.ForecastLow : null,
            isRunning ? drift.ForecastHigh : null);
    }

    private static ProbePoint PointOf(SystemHistory history, VisitFacts visit, ProbeFacts probe)
    {
        bool Has(EventType type) => visit.Record.Events.Any(happened => happened.Type == type && (happened.Of is null || Same(happened.Of, probe.Probe)));
        return new ProbePoint(
            visit.Visit.At,
            visit.Visit.Visit.Id,
            probe,
            probe.ErrorFound.Then(found => probe.ErrorCleaned.Map(cleaned => new ProbeErrorSplit(found, found.Minus(cleaned), cleaned))),
            probe.Reference.HasValue ? ProbeReadsOff.TolerancePercent(probe, history.Firm.Engine.Thresholds) : null,
            Has(EventType.ProbeRenewed),
            probe.Reading.AfterCleaning is not null || Has(EventType.ProbeCleaned));
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
