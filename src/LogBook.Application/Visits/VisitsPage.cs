using LogBook.Application.Data;

namespace LogBook.Application.Visits;

/// <summary>A page of visits, latest first.</summary>
/// <param name="Rows">At most <see cref="VisitsQuery.PageSize"/>.</param>
/// <param name="Total">How many there are with this filter.</param>
/// <param name="HasNext">Whether older ones follow.</param>
/// <param name="Sites">Sites the viewer sees, for the filter.</param>
public sealed record VisitsPage(IReadOnlyList<VisitRowView> Rows, ListCount Total, bool HasNext, IReadOnlyList<(string Code, string Name)> Sites);
