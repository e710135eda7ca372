using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>One line of a sheet: a setting to enter, and what to look at before.</summary>
/// <param name="Setting">Name, value and the unit the controller shows.</param>
/// <param name="ReadOn">Day on which it was last left so; null where it was never read and the programme says it.</param>
/// <param name="Visit">Visit at which it was left.</param>
/// <param name="Programme">What the programme asks, where it is something else; otherwise null.</param>
/// <param name="Later">Changes since then that concern this line, in order.</param>
public sealed record ReEntryLine(ControllerSetting Setting, DateOnly? ReadOn, Guid? Visit, SettingValue? Programme, IReadOnlyList<LaterChange> Later);
