using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Dosing;

/// <summary>The setting that gives a level, in the unit of the mode.</summary>
/// <param name="Setting">
/// Seconds for each run (by make-up volume), pump output in L/h (alongside the bleed), percent (fixed share, share of the last bleed) or
/// minutes for each run (dose plan).
/// </param>
/// <param name="OnSeconds">Fixed share: seconds of each turn; otherwise null.</param>
/// <param name="Notes">What to look at before it is used.</param>
public sealed record FeedSetting(Worked Setting, double? OnSeconds, IReadOnlyList<Said> Notes);
