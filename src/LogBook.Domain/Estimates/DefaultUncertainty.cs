namespace LogBook.Domain.Estimates;

/// <summary>One default standard uncertainty (one sigma) with where it comes from.</summary>
/// <param name="Code">Stable code, one of <see cref="UncertaintyCodes"/>.</param>
/// <param name="Value">Standard uncertainty in <paramref name="Unit"/>.</param>
/// <param name="Unit">"%" of the reading unless <paramref name="Basis"/> says of what; otherwise the UCUM unit, "1" for decades and shares.</param>
/// <param name="Basis">What it stands for and where it was found.</param>
/// <param name="Source">P published, R reference chapter, K from the mass balance, C common practice without a citable source.</param>
public sealed record DefaultUncertainty(string Code, double Value, string Unit, string Basis, char Source);
