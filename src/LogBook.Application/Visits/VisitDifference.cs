using LogBook.Domain.Languages;

namespace LogBook.Application.Visits;

/// <summary>One place where two versions differ.</summary>
/// <param name="Where">What it is, in words.</param>
/// <param name="Before">As it was; null where there was nothing.</param>
/// <param name="After">As it is; null where there is nothing any more.</param>
public sealed record VisitDifference(Text Where, Text? Before, Text? After);
