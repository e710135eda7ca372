using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>One line of a sheet against what stands in the controller afterwards.</summary>
/// <param name="Line">The line.</param>
/// <param name="Entered">What was read back; null where nobody looked.</param>
/// <param name="Agrees">Whether it is what the sheet says; null where nobody looked.</param>
public sealed record ReadBack(ReEntryLine Line, SettingValue? Entered, bool? Agrees);
