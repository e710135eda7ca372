using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>One threshold or default uncertainty that an installation may set.</summary>
/// <param name="Code">"thresholds:" with a property of <see cref="Findings.FindingThresholds"/> in camel case, or "uncertainties:" with a code of <see cref="Estimates.UncertaintyCodes"/>.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Name">What it says, for people.</param>
/// <param name="Unit">UCUM unit of the value; "1" for a ratio or a count.</param>
/// <param name="Default">Value without a change.</param>
/// <param name="Basis">Where the default comes from.</param>
/// <param name="Lowest">Least value that makes sense.</param>
/// <param name="Highest">Greatest value that makes sense.</param>
/// <param name="IsWhole">Whether only whole numbers make sense.</param>
/// <param name="IsOfFirm">Whether it is about several systems at once, so that one system cannot have its own.</param>
public sealed record EngineSetting(
    string Code, SettingGroup Group, Text Name, string Unit, double Default, Text Basis, double Lowest, double Highest, bool IsWhole, bool IsOfFirm);
