namespace LogBook.Domain.Assessments;

/// <summary>A value that an installation has put in the place of a default.</summary>
/// <param name="Code">Code of the <see cref="EngineSetting"/>.</param>
/// <param name="Value">Value in the setting's unit.</param>
/// <param name="Site">Code of a site, when it is for one system only.</param>
/// <param name="System">Code of the system of that site.</param>
public sealed record EngineSettingChange(string Code, double Value, string? Site = null, string? System = null);
