namespace LogBook.Domain.Visits;

/// <summary>How a slide or plate was incubated.</summary>
public sealed record Incubation
{
    /// <summary>Temperature, °C.</summary>
    public double? DegC { get; init; }

    /// <summary>Time, h.</summary>
    public double? Hours { get; init; }
}
