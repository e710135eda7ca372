using LogBook.Domain.Visits;

namespace LogBook.Domain.History;

/// <summary>One visit as seen by one system.</summary>
/// <param name="Visit">The visit, in its latest version known.</param>
/// <param name="Record">What was found and done on the system.</param>
public sealed record SystemVisit(Visit Visit, VisitedSystem Record)
{
    /// <summary>Stands for a result that is still to come: the sample is known, its number is not.</summary>
    public const string ResultPending = "result pending";

    /// <summary>Event time: arrival, UTC.</summary>
    public DateTime At => Visit.Arrived.Utc;

    /// <summary>
    /// Moment from which this version is known, UTC: an amendment from when it was amended, a first version from departure
    /// (or, where that is missing, from the entry or the arrival).
    /// </summary>
    public DateTime KnownFrom => (Visit.Version ?? 1) > 1 && Visit.AmendedAt is { } amended
        ? amended.Utc
        : (Visit.Left ?? Visit.EnteredAt ?? Visit.Arrived).Utc;

    /// <summary>Moments after <see cref="KnownFrom"/> at which results came in, UTC, in order.</summary>
    public IEnumerable<DateTime> LaterResults => Record.Readings
        .Where(reading => reading.ResultAt is { } result && result.Utc > KnownFrom)
        .Select(reading => reading.ResultAt!.Value.Utc)
        .Distinct()
        .Order();

    /// <summary>The same visit with the results that came in after a moment still to come: that a sample was taken stays known.</summary>
    /// <param name="moment">UTC.</param>
    /// <returns>The visit as it was known.</returns>
    public SystemVisit AsKnownAt(DateTime moment) => Record.Readings.All(reading => IsKnown(reading, moment))
        ? this
        : this with { Record = Record with { Readings = [.. Record.Readings.Select(reading => IsKnown(reading, moment) ? reading : Pending(reading))] } };

    private static Reading Pending(Reading reading) =>
        reading with { Value = null, Drops = null, Qualifier = null, NotQuantifiable = null, NotTaken = ResultPending, ResultAt = null };

    private static bool IsKnown(Reading reading, DateTime moment) => reading.ResultAt is not { } result || result.Utc <= moment;
}
