namespace LogBook.Web.Features.History;

/// <summary>One test over time.</summary>
public sealed record ChartPanel(string Key, string Title, string Unit, IReadOnlyList<ChartBand> Bands, IReadOnlyList<ChartLine> Lines, IReadOnlyList<ChartSeries> Series);
