using LogBook.Domain.Rounds;

namespace LogBook.Domain.Assessments;

/// <summary>What an assessment takes in beside the records of the system itself.</summary>
public sealed record AssessmentInputs
{
    /// <summary>Nothing beside the records.</summary>
    public static AssessmentInputs None { get; } = new();

    /// <summary>Hand meters and reagent lots that read off, from the round-wide assessment.</summary>
    public IReadOnlyList<RoundShift> Shifts { get; init; } = [];

    /// <summary>Findings that people closed.</summary>
    public IReadOnlyList<FindingAnswer> Closed { get; init; } = [];

    /// <summary>What became of the visit summaries.</summary>
    public IReadOnlyList<SummaryDelivery> Deliveries { get; init; } = [];
}
