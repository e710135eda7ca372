namespace LogBook.Domain.Visits;

/// <summary>Something to be done.</summary>
public sealed record VisitAction
{
    /// <summary>Identity; given where absent.</summary>
    public Guid? Id { get; init; }

    /// <summary>What it is for.</summary>
    public string? For { get; init; }

    /// <summary>What is to be done.</summary>
    public required string Text { get; init; }

    /// <summary>Who.</summary>
    public string? Owner { get; init; }

    /// <summary>By when.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>Open when absent.</summary>
    public ActionState? State { get; init; }
}
