using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.TakeOver;

/// <summary>One dated line of a site's story.</summary>
/// <param name="Day">Day at the site.</param>
/// <param name="System">Code of the system; null for what concerns the whole site.</param>
/// <param name="Words">What happened.</param>
/// <param name="Visit">Visit that tells it; null for what time alone opened.</param>
/// <param name="Severity">Severity of a finding; null for anything else.</param>
public sealed record TakeOverLine(DateOnly Day, string? System, Said Words, Guid? Visit, Severity? Severity = null);
