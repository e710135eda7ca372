using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Calculators;

/// <summary>A number a calculation begins with, and where it comes from. It may be changed.</summary>
/// <param name="Estimate">The number with its uncertainty.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record KnownNumber(Estimate Estimate, Said Origin);
