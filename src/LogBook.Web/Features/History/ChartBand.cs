namespace LogBook.Web.Features.History;

/// <summary>A range while it was in force.</summary>
public sealed record ChartBand(double From, double To, double? Low, double? High);
