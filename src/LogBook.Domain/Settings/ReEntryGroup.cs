using LogBook.Domain.Dosing;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Settings;

/// <summary>Lines of one purpose, for feeds of one output.</summary>
/// <param name="Purpose">What they are for.</param>
/// <param name="Output">Output of a feed, or null.</param>
/// <param name="Product">Product of its drum today, or null.</param>
/// <param name="Lines">Settings to enter.</param>
/// <param name="Stops">What the label as it stands today does not allow: such a line is not entered.</param>
/// <param name="Later">Changes of pump, drum, stroke, product or label since then that concern the whole group.</param>
public sealed record ReEntryGroup(
    SettingPurpose Purpose, string? Output, Product? Product, IReadOnlyList<ReEntryLine> Lines, IReadOnlyList<LabelStop> Stops, IReadOnlyList<LaterChange> Later);
