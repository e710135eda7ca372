namespace LogBook.Application.Reviews;

/// <summary>Findings that want somebody, most urgent first.</summary>
/// <param name="Rows">At most <see cref="AttentionQuery.PageSize"/>.</param>
/// <param name="Total">How many there are with this filter.</param>
/// <param name="Kinds">Kinds that occur among the findings the viewer sees, for the filter.</param>
/// <param name="Sites">Sites the viewer sees, for the filter.</param>
/// <param name="People">Technicians with a round, for the filter.</param>
public sealed record AttentionList(
    IReadOnlyList<AttentionRow> Rows,
    int Total,
    IReadOnlyList<string> Kinds,
    IReadOnlyList<(string Code, string Name)> Sites,
    IReadOnlyList<string> People)
{
    /// <summary>Who has taken findings on, for the filter.</summary>
    public IReadOnlyList<string> Owners { get; init; } = [];

    /// <summary>How many clocks that will run out soon are left out of <see cref="Rows"/>.</summary>
    public int DuesAhead { get; init; }

    /// <summary>How many about instruments, lots and records are left out of <see cref="Rows"/>.</summary>
    public int SecondLooks { get; init; }

    /// <summary>How many that sleep are left out of <see cref="Rows"/>.</summary>
    public int Asleep { get; init; }
}
