namespace LogBook.Domain.Visits;

/// <summary>Pump output measured in a column.</summary>
public sealed record Drawdown
{
    /// <summary>Code of the pump.</summary>
    public required string Pump { get; init; }

    /// <summary>Volume drawn, mL.</summary>
    public required double Millilitres { get; init; }

    /// <summary>Time, s.</summary>
    public required double Seconds { get; init; }
}
