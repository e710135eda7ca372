using LogBook.Application.Data;

namespace LogBook.Application.Visits;

/// <summary>What a supervisor does to a visit after it was received. The documents stay as they are.</summary>
public sealed class VisitCare
{
    /// <summary>Marks a visit as looked at.</summary>
    public Task<SaveOutcome> ReviewAsync(Viewer viewer, Guid visitId, string? note, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Takes a visit out of all figures; it stays readable.</summary>
    public Task<SaveOutcome> VoidAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Counts a voided visit again.</summary>
    public Task<SaveOutcome> RestoreAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Moves a visit that was written at the wrong site.</summary>
    public Task<SaveOutcome> MoveAsync(Viewer viewer, Guid visitId, string toSite, string why, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
