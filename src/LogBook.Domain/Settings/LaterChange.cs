using LogBook.Domain.Languages;

namespace LogBook.Domain.Settings;

/// <summary>One change after the day of a sheet.</summary>
/// <param name="Kind">What changed.</param>
/// <param name="On">When, day in the site's zone.</param>
/// <param name="Says">The sentence.</param>
public sealed record LaterChange(LaterChangeKind Kind, DateOnly On, Said Says);
