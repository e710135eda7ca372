using LogBook.Domain.Outcomes;

namespace LogBook.Application.Visits;

/// <summary>What became of a visit that was handed in.</summary>
public abstract record IntakeOutcome
{
    private IntakeOutcome()
    {
    }

    /// <summary>It is on the server. The sender may let go of its copy when the hash is that of its own document.</summary>
    /// <param name="VisitId">Identity of the visit.</param>
    /// <param name="Version">Its version.</param>
    /// <param name="Sha256">Hash of the stored document.</param>
    /// <param name="AlreadyKnown">It had been received before; nothing was written.</param>
    /// <param name="Warnings">What does not block.</param>
    public sealed record Stored(Guid VisitId, int Version, string Sha256, bool AlreadyKnown, IReadOnlyList<Issue> Warnings) : IntakeOutcome;

    /// <summary>Nothing was written.</summary>
    /// <param name="Issues">All that is to be corrected.</param>
    public sealed record Refused(IReadOnlyList<Issue> Issues) : IntakeOutcome;

    /// <summary>Its identity is taken by another content; the document is kept for a person to settle.</summary>
    /// <param name="VisitId">Identity of the visit.</param>
    /// <param name="CurrentVersion">Version that stands.</param>
    /// <param name="CurrentSha256">Hash of what stands.</param>
    /// <param name="KeptSha256">Hash of what was kept.</param>
    public sealed record Conflict(Guid VisitId, int CurrentVersion, string CurrentSha256, string KeptSha256) : IntakeOutcome;

    /// <summary>The viewer knows no such site or system, or may not hand in visits.</summary>
    public sealed record NotFound : IntakeOutcome;
}
