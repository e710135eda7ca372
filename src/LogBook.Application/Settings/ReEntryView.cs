using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Settings;

namespace LogBook.Application.Settings;

/// <summary>The re-entry sheet of one system for a day.</summary>
/// <param name="Heading">Site and system.</param>
/// <param name="Today">Today in the site's zone.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Findings">Open findings of the system that a person should know before settings are entered.</param>
/// <param name="ReadBackOn">Day of the first visit after the day at which settings were read, or null.</param>
/// <param name="ReadBack">What was left there against the sheet; empty where there is no such visit.</param>
/// <param name="WeekToday">Week of the dose plan today, counted as on the sheet; null without one.</param>
public sealed record ReEntryView(
    SystemHeading Heading, DateOnly Today, ReEntrySheet Sheet, IReadOnlyList<AttentionRow> Findings, DateOnly? ReadBackOn, IReadOnlyList<ReadBack> ReadBack, int? WeekToday)
{
    /// <summary>The same findings with the group each of them is about; without one where it is about none.</summary>
    public required IReadOnlyList<(AttentionRow Row, ReEntryGroup? Group)> Placed { get; init; }

    /// <summary>Findings about no group of the sheet.</summary>
    public IEnumerable<AttentionRow> OfTheWhole => Placed.Where(pair => pair.Group is null).Select(pair => pair.Row);

    /// <summary>Findings to show beside a group.</summary>
    /// <param name="group">A group of the sheet.</param>
    public IEnumerable<AttentionRow> Beside(ReEntryGroup group) => Placed.Where(pair => ReferenceEquals(pair.Group, group)).Select(pair => pair.Row);
}
