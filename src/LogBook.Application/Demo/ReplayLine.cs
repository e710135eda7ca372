namespace LogBook.Application.Demo;

/// <summary>One thing to be found.</summary>
public sealed record ReplayLine
{
    /// <summary>Story.</summary>
    public required string Story { get; init; }

    /// <summary>Site; none for a finding about an instrument or a lot.</summary>
    public required string? Site { get; init; }

    /// <summary>Kinds of which one is right.</summary>
    public required IReadOnlyList<string> Accepted { get; init; }

    /// <summary>First day on which something is wrong.</summary>
    public required DateOnly Onset { get; init; }

    /// <summary>Day by which it must be found.</summary>
    public required DateOnly Latest { get; init; }

    /// <summary>The first right headline from the onset on.</summary>
    public required Headline? Found { get; init; }

    /// <summary>The first headline of any kind from the onset on, dates that fall due left out.</summary>
    public required Headline? First { get; init; }

    /// <summary>Wrong diagnoses named, each with the first day on which it was wrong.</summary>
    public required IReadOnlyList<Headline> Forbidden { get; init; }

    /// <summary>Whether it was found in time.</summary>
    public bool IsInTime => Found is { } found && found.From <= Latest;
}
