namespace LogBook.Application.Demo;

/// <summary>How well the engine does on one demo firm.</summary>
public sealed record ReplayReport
{
    /// <summary>Seed of the firm.</summary>
    public required ulong Seed { get; init; }

    /// <summary>One line for each thing to be found.</summary>
    public required IReadOnlyList<ReplayLine> Lines { get; init; }

    /// <summary>Sites at which nothing is wrong.</summary>
    public required IReadOnlyList<ReplayControl> Control { get; init; }

    /// <summary>Years of systems at which no story runs, added up.</summary>
    public required double HealthyYears { get; init; }

    /// <summary>Headlines that began there, true dues not counted.</summary>
    public required IReadOnlyList<Headline> FalseFlags { get; init; }

    /// <summary>Stories with a trouble to find.</summary>
    public IReadOnlyList<string> Stories => [.. Lines.Select(l => l.Story).Where(IsStory).Distinct(StringComparer.Ordinal)];

    /// <summary>Stories of which everything was found in time.</summary>
    public IReadOnlyList<string> InTime => [.. Stories.Where(s => Lines.Where(l => l.Story == s).All(l => l.IsInTime))];

    /// <summary>Wrong diagnoses that were named.</summary>
    public int Forbidden => Lines.Sum(l => l.Forbidden.Count);

    /// <summary>False flags for each year of a healthy system.</summary>
    public double FalseFlagsPerYear => HealthyYears > 0 ? FalseFlags.Count / HealthyYears : 0;

    private static bool IsStory(string name) => name.StartsWith("ST", StringComparison.Ordinal);
}
