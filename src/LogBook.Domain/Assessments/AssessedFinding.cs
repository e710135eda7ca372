using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>A finding with its wording in every language.</summary>
/// <param name="InEnglish">The finding, worded in English.</param>
/// <param name="InSpanish">The same, worded in Spanish.</param>
/// <param name="InPortuguese">The same, worded in Portuguese.</param>
public sealed record AssessedFinding(Finding InEnglish, Finding InSpanish, Finding InPortuguese)
{
    /// <summary>How its severity went, in order of days: the first entry is the day it opened.</summary>
    public IReadOnlyList<SeverityStep> Course { get; init; } = [];

    /// <summary>The finding in a language.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>The finding.</returns>
    public Finding In(Language language) => language switch
    {
        Language.Spanish => InSpanish,
        Language.Portuguese => InPortuguese,
        _ => InEnglish,
    };
}
