using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>One setting by the name of the exchange format.</summary>
/// <param name="Name">Field of the programme, or output and field ("biocide-1/starts").</param>
/// <param name="Value">Its value; lists joined with commas.</param>
/// <param name="Unit">UCUM unit of a number; "s" for seconds, null for a text or a bare number.</param>
public sealed record ControllerSetting(string Name, SettingValue Value, string? Unit);
