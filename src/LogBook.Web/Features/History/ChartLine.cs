namespace LogBook.Web.Features.History;

/// <summary>A set point while it was in force.</summary>
public sealed record ChartLine(double From, double To, double Value, string Name);
