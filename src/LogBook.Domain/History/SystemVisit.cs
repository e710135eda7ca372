using LogBook.Domain.Visits;

namespace LogBook.Domain.History;

/// <summary>One visit as seen by one system.</summary>
/// <param name="Visit">The visit, in its latest version known.</param>
/// <param name="Record">What was found and done on the system.</param>
public sealed record SystemVisit(Visit Visit, VisitedSystem Record)
{
    /// <summary>Event time: arrival, UTC.</summary>
    public DateTime At => Visit.Arrived.Utc;
}
