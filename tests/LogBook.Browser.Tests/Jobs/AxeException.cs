namespace LogBook.Browser.Tests.Jobs;

/// <summary>A place that axe cannot judge by itself and that a person has judged.</summary>
/// <param name="Rule">The rule it could not decide.</param>
/// <param name="Selector">Elements it may concern, as CSS: an element it matches is excepted, no other.</param>
/// <param name="Why">What a person found there.</param>
public sealed record AxeException(string Rule, string Selector, string Why);
