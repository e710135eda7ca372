namespace LogBook.Application.Demo;

/// <summary>What the engine must find in the demo firm, by when, and what it must not say.</summary>
public sealed record DemoAnswer
{
    /// <summary>Story, "ST1" to "ST15", or a name.</summary>
    public required string Story { get; init; }

    /// <summary>Code of the site; none for a finding about an instrument or a lot.</summary>
    public required string? Site { get; init; }

    /// <summary>Code of the system.</summary>
    public required string? System { get; init; }

    /// <summary>Kinds of finding of which one is right; empty where nothing is wrong.</summary>
    public required IReadOnlyList<string> Kinds { get; init; }

    /// <summary>What a kind must be about to be right, where the kind alone does not tell: a code that its subject names.</summary>
    public IReadOnlyDictionary<string, string> About { get; init; } = new Dictionary<string, string>();

    /// <summary>First day on which something is wrong.</summary>
    public required DateOnly Onset { get; init; }

    /// <summary>Day by which a finding must be there.</summary>
    public required DateOnly Latest { get; init; }

    /// <summary>Wrong diagnoses, with the days on which they would be wrong.</summary>
    public required IReadOnlyList<DemoForbidden> Forbidden { get; init; }

    /// <summary>Day on which the trouble is over, where it ends; what is flagged at the site until then is not called a false alarm.</summary>
    public DateOnly? Over { get; init; }

    /// <summary>Sites concerned, for an answer about an instrument or a lot.</summary>
    public IReadOnlyList<string> Sites { get; init; } = [];

    /// <summary>Where nothing is wrong: how many findings "plan" or "act" are bearable in the whole time.</summary>
    public int? MostPlanOrAct { get; init; }

    /// <summary>In words.</summary>
    public string? Note { get; init; }
}
