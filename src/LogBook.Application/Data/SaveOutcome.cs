using LogBook.Domain.Outcomes;

namespace LogBook.Application.Data;

/// <summary>What became of a change that somebody asked for.</summary>
public abstract record SaveOutcome
{
    private SaveOutcome()
    {
    }

    /// <summary>Done.</summary>
    /// <param name="Version">Version that stands now.</param>
    public sealed record Saved(int Version) : SaveOutcome;

    /// <summary>Nothing was written.</summary>
    /// <param name="Issues">All that is to be corrected.</param>
    public sealed record Invalid(IReadOnlyList<Issue> Issues) : SaveOutcome;

    /// <summary>Somebody else changed it since it was read; nothing was written.</summary>
    /// <param name="Current">Canonical JSON of what stands.</param>
    /// <param name="Version">Version that stands.</param>
    public sealed record ChangedMeanwhile(string Current, int Version) : SaveOutcome;

    /// <summary>The viewer knows no such record.</summary>
    public sealed record NotFound : SaveOutcome;

    /// <summary>The viewer's role does not allow it.</summary>
    public sealed record NotAllowed : SaveOutcome;
}
