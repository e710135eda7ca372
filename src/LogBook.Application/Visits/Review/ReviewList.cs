namespace LogBook.Application.Visits.Review;

/// <summary>Visits that wait for a review.</summary>
/// <param name="Rows">A page of them, oldest first.</param>
/// <param name="Total">How many there are with this filter.</param>
/// <param name="Older">How many wait from before the period.</param>
/// <param name="Share">Share of visits drawn for a closer look, 0 to 1.</param>
/// <param name="Sample">What the draw says, by technician.</param>
public sealed record ReviewList(IReadOnlyList<ReviewRow> Rows, int Total, int Older, double Share, IReadOnlyList<ReviewSampleRow> Sample);
