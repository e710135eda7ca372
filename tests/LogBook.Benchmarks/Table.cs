namespace LogBook.Benchmarks;

/// <summary>What was measured, line by line.</summary>
internal sealed class Table
{
    /// <summary>Whether a goal was missed.</summary>
    public bool HasMissed { get; private set; }

    /// <summary>Prints a line.</summary>
    public void Row(string what, string measured, string? goal = null, bool holds = true)
    {
        HasMissed |= !holds;
        Console.WriteLine($"{what,-88} {measured,-28} {(goal is null ? "" : holds ? $"goal: {goal}" : $"MISSED goal: {goal}")}".TrimEnd());
    }
}
