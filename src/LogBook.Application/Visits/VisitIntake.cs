using LogBook.Application.Data;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>The one way in for visits.</summary>
public sealed class VisitIntake
{
    /// <summary>Checks and stores a visit document: <c>{"format": …, "visits": [one]}</c> or the bare visit.</summary>
    public Task<IntakeOutcome> ReceiveAsync(Viewer viewer, string visitJson, IntakeSource source, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Checks and stores a visit.</summary>
    public Task<IntakeOutcome> ReceiveAsync(Viewer viewer, Visit visit, IntakeSource source, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
