using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Settings;

/// <summary>From the target over the setting to what was measured.</summary>
/// <param name="Output">Output of a feed; null for the bleed.</param>
/// <param name="Product">Code of the product fed; null for the bleed.</param>
/// <param name="Target">Cycles aimed at, or level in mg/L; null where none is on file.</param>
/// <param name="TargetUnit">"1" for cycles, "mg/L".</param>
/// <param name="Settings">Settings that should bring it there.</param>
/// <param name="AtSetting">What this setting gives by the balance, in the target's unit; null where it cannot be worked out.</param>
/// <param name="Measured">Last measurement on or before the day, or null.</param>
/// <param name="MeasuredOn">Its day.</param>
/// <param name="MeasuredAs">What was measured.</param>
public sealed record TargetLine(
    string? Output, string? Product, double? Target, string TargetUnit, IReadOnlyList<ControllerSetting> Settings, Worked? AtSetting, Estimate? Measured, DateOnly? MeasuredOn, Text? MeasuredAs);
