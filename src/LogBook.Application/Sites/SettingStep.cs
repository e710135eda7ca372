namespace LogBook.Application.Sites;

/// <summary>One change of a setting in the past.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Who">Who.</param>
/// <param name="Value">Value from then on; null for back to the default.</param>
/// <param name="Why">Reason given.</param>
public sealed record SettingStep(DateTime At, string Who, double? Value, string? Why);
