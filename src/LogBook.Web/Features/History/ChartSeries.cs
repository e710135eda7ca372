namespace LogBook.Web.Features.History;

/// <summary>Readings from one source.</summary>
public sealed record ChartSeries(string Name, string Symbol, bool Hollow, bool Dashed, IReadOnlyList<ChartPoint> Points);
