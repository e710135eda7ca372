namespace LogBook.Web.Features.History;

/// <summary>One row of marks under the panels.</summary>
public sealed record ChartLane(string Kind, string Name, IReadOnlyList<ChartMark> Marks);
