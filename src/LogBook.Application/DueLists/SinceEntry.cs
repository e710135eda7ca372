using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.DueLists;

/// <summary>One change since the person was there.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Day">Day at the site.</param>
/// <param name="Words">What happened.</param>
/// <param name="Visit">Visit it belongs to.</param>
/// <param name="Finding">Finding it is.</param>
/// <param name="Severity">Severity of the finding.</param>
public sealed record SinceEntry(SinceKind Kind, DateOnly Day, Said Words, Guid? Visit = null, FindingKey? Finding = null, Severity? Severity = null);
