using LogBook.Domain.Programmes;

namespace LogBook.Domain.Clocks;

/// <summary>How long the records of a site are kept.</summary>
/// <param name="Years">Years from the last entry.</param>
/// <param name="Rule">Rule that asks for them; null where it is the usual period.</param>
/// <param name="Until">Last day on which they must still be there; null under a legal hold, which has no end of its own.</param>
/// <param name="IsHeld">Whether a legal hold lies on them.</param>
public sealed record RetentionPeriod(double Years, Rule? Rule, DateOnly? Until, bool IsHeld)
{
    /// <summary>Whether nothing on file asks for the records any more.</summary>
    /// <param name="today">Day in the site's zone.</param>
    /// <returns>True after the last day; never under a legal hold.</returns>
    public bool IsOver(DateOnly today) => Until is { } until && today > until;
}
