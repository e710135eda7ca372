namespace LogBook.Web.Features.History;

/// <summary>One reading; without a value it breaks the line.</summary>
public sealed record ChartPoint(double At, double? Value, string? Qualifier, bool Outside, string? Visit, string? Text);
