namespace LogBook.Application.Visits;

/// <summary>A page of visits, latest first.</summary>
/// <param name="Rows">At most <see cref="VisitsQuery.PageSize"/>.</param>
/// <param name="Total">How many there are with this filter.</param>
/// <param name="Sites">Sites the viewer sees, for the filter.</param>
public sealed record VisitsPage(IReadOnlyList<VisitRowView> Rows, int Total, IReadOnlyList<(string Code, string Name)> Sites);
