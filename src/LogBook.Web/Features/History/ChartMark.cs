namespace LogBook.Web.Features.History;

/// <summary>One mark.</summary>
public sealed record ChartMark(double At, string Symbol, bool Hollow, string? Visit, string Text);
