namespace LogBook.Domain.Visits;

/// <summary>Something the customer is asked to decide.</summary>
public sealed record Recommendation
{
    /// <summary>Identity; given where absent.</summary>
    public Guid? Id { get; init; }

    /// <summary>What is asked.</summary>
    public required string Text { get; init; }

    /// <summary>What happens otherwise.</summary>
    public string? Consequence { get; init; }

    /// <summary>Asked when absent.</summary>
    public RecommendationState? State { get; init; }
}
