namespace LogBook.Domain.Programmes;

/// <summary>A lot of test reagent.</summary>
public sealed record ReagentLot
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Code of its test.</summary>
    public required string Test { get; init; }

    /// <summary>Smallest step the kit can tell, in the test's unit.</summary>
    public double? Step { get; init; }

    /// <summary>Last day of use.</summary>
    public DateOnly? Expires { get; init; }
}
