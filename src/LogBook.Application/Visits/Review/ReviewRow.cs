using LogBook.Application.DueLists;

namespace LogBook.Application.Visits.Review;

/// <summary>A visit that waits for its review.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="IsDrawn">Drawn for a closer look.</param>
/// <param name="Findings">Findings that began with it.</param>
/// <param name="HasSecondLook">One of them asks for a second look at its records.</param>
/// <param name="OpenActions">Actions that it left open.</param>
/// <param name="Note">What the technician noted, with what was left open and why.</param>
/// <param name="IsUnsigned">Nobody signed it.</param>
public sealed record ReviewRow(VisitRowView Visit, bool IsDrawn, SeverityCounts Findings, bool HasSecondLook, int OpenActions, string? Note, bool IsUnsigned)
{
    /// <summary>Whether something asks for reading it before it is signed off.</summary>
    public bool IsMarked => IsDrawn || HasSecondLook || Findings.Act > 0 || Visit.CurrentVersion > 1;
}
