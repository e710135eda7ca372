using LogBook.Domain.Findings;

namespace LogBook.Application.Reviews;

/// <summary>What of the findings is asked for; null means all.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="Severity">Severity.</param>
/// <param name="Person">Code of the technician whose round the site is on.</param>
/// <param name="State">State; null means open or acknowledged: what sleeps is listed when it is asked for.</param>
/// <param name="Page">Page from 1.</param>
/// <param name="SecondLook">Only what is about instruments, lots and records; for reviewers.</param>
/// <param name="Owner">Code of the person who took it on, or <see cref="Nobody"/>.</param>
public sealed record AttentionFilter(string? Kind = null, string? Site = null, Severity? Severity = null, string? Person = null, FindingState? State = null, int Page = 1, bool SecondLook = false, string? Owner = null)
{
    /// <summary>As an owner: what nobody has taken on.</summary>
    public const string Nobody = "-";
}
