using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>As-found errors of a probe since its last calibration, cleaning or renewal, by one hand meter.</summary>
/// <param name="Points">Visit and error, %, oldest first, the visit itself included.</param>
public sealed record ProbeSeries(IReadOnlyList<(VisitFacts Visit, Estimate Error)> Points)
{
    /// <summary>Days from the first point to each.</summary>
    public IReadOnlyList<double> Days => [.. Points.Select(point => (point.Visit.Visit.At - Points[0].Visit.Visit.At).TotalDays)];

    /// <summary>Errors, %.</summary>
    public IReadOnlyList<double> Errors => [.. Points.Select(point => point.Error.Value)];

    /// <summary>The series that ends with a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="probe">Its comparison of the probe.</param>
    /// <returns>The series; it breaks at another hand meter, whose own error would look like drift.</returns>
    public static ProbeSeries Of(VisitFacts visit, ProbeFacts probe)
    {
        var points = new List<(VisitFacts Visit, Estimate Error)>();
        for (var earlier = visit; earlier is not null; earlier = earlier.Previous)
        {
            var facts = earlier.Probe(probe.Probe);
            if (earlier != visit && (facts?.Restarts == true || Renewed(earlier, probe.Probe)))
            {
                break;
            }

            if (facts is null || !facts.ErrorFound.HasValue)
            {
                continue;
            }

            if (!string.Equals(facts.Instrument, probe.Instrument, StringComparison.OrdinalIgnoreCase))
            {
                break;
            }

            points.Add((earlier, facts.ErrorFound.Value));
            if (Renewed(earlier, probe.Probe))
            {
                break;
            }
        }

        points.Reverse();
        return new ProbeSeries(points);
    }

    private static bool Renewed(VisitFacts visit, string probe) => visit.Record.Events.Count > 0 && visit.Record.Events.Any(e =>
        e.Type is EventType.ProbeCleaned or EventType.ProbeRenewed && (e.Of is null || e.Of.Equals(probe, StringComparison.OrdinalIgnoreCase)));
}
