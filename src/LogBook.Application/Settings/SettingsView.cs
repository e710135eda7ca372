using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Settings;

namespace LogBook.Application.Settings;

/// <summary>Settings then and now of one system.</summary>
/// <param name="Heading">Site and system.</param>
/// <param name="Today">Today in the site's zone.</param>
/// <param name="Settings">The settings up to the day asked for.</param>
/// <param name="VisitDays">Days of visits at which settings were read, latest first.</param>
/// <param name="Findings">Open findings about settings, doses and holds.</param>
public sealed record SettingsView(SystemHeading Heading, DateOnly Today, SettingsThenAndNow Settings, IReadOnlyList<DateOnly> VisitDays, IReadOnlyList<AttentionRow> Findings);
