using LogBook.Domain.Programmes;

namespace LogBook.Domain.Clocks;

/// <summary>A rule of an authority or a guide to start from: off until somebody checks it with the authority and takes it over.</summary>
/// <remarks>
/// Law and guidance change. A template is data with a source, never advice. The first day in force is from memory where the
/// source does not name it; where a source says "monthly" 31 days are allowed.
/// </remarks>
public sealed record RuleTemplate
{
    /// <summary>How well it is known.</summary>
    public required TemplateStatus Status { get; init; }

    /// <summary>Years for which its records are kept; null where the source does not say.</summary>
    public double? KeepYears { get; init; }

    /// <summary>The rule.</summary>
    public required Rule Rule { get; init; }
}
