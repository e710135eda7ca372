namespace LogBook.Web.Features.History;

/// <summary>One reading; without a value it breaks the line.</summary>
public sealed record ChartPoint(double At, double? Value, string? Qualifier, bool Outside, string? Visit, string? Text)
{
    /// <summary>Low end of the value with its expanded uncertainty, for a figure.</summary>
    public double? Low { get; init; }

    /// <summary>High end of it.</summary>
    public double? High { get; init; }
}
