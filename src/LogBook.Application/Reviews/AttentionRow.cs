using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;

namespace LogBook.Application.Reviews;

/// <summary>One finding in the list.</summary>
/// <param name="Key">Its address.</param>
/// <param name="SiteName">Name of the site; null for a finding of the firm's own.</param>
/// <param name="SystemName">Name of the system.</param>
/// <param name="Person">Technician whose round the site is on.</param>
/// <param name="Finding">The finding in the viewer's language.</param>
/// <param name="DaysOpen">Days since it was first seen.</param>
public sealed record AttentionRow(FindingKey Key, string? SiteName, string? SystemName, string? Person, Finding Finding, int DaysOpen)
{
    /// <summary>The clock of its own, where its kind has one.</summary>
    public FindingDeadline? Deadline { get; init; }

    /// <summary>Zone of its site; null for the firm's own.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Code or name of who took it on; null where nobody did.</summary>
    public string? Owner { get; init; }

    /// <summary>Number of its row, for an answer; 0 where the row was not read for one. It changes when findings are worked out anew.</summary>
    public int Id { get; init; }
}
