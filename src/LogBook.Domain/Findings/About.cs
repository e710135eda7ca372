namespace LogBook.Domain.Findings;

/// <summary>What a finding concerns; usually one of these.</summary>
public sealed record About
{
    // What is said most often of a subject; no part of what it is.
    private Verdict? _clear;

    /// <summary>Code of a probe.</summary>
    public string? Probe { get; init; }

    /// <summary>Code of a drum.</summary>
    public string? Drum { get; init; }

    /// <summary>Code of an output.</summary>
    public string? Output { get; init; }

    /// <summary>Code of a meter.</summary>
    public string? Meter { get; init; }

    /// <summary>Code of a pump.</summary>
    public string? Pump { get; init; }

    /// <summary>Code of a test.</summary>
    public string? Test { get; init; }

    /// <summary>Code of an instrument.</summary>
    public string? Instrument { get; init; }

    /// <summary>Code of a reagent lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Code of a person.</summary>
    public string? Person { get; init; }

    /// <summary>Code of a rule.</summary>
    public string? Rule { get; init; }

    /// <summary>What of the rule, where it asks for several things: "notify".</summary>
    public string? Task { get; init; }

    /// <summary>The verdict that it was judged and there is no evidence: the same object each time.</summary>
    internal Verdict Clear(Func<About, Verdict> make) => ReferenceEquals(_clear?.About, this) ? _clear : _clear = make(this);

    /// <inheritdoc />
    public bool Equals(About? other) => other is not null
        && Probe == other.Probe && Drum == other.Drum && Output == other.Output && Meter == other.Meter && Pump == other.Pump && Test == other.Test
        && Instrument == other.Instrument && Lot == other.Lot && Person == other.Person && Rule == other.Rule && Task == other.Task;

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(
        HashCode.Combine(Probe, Drum, Output, Meter, Pump, Test), HashCode.Combine(Instrument, Lot, Person, Rule, Task));

    /// <summary>A subject as one text, by which two of them are compared: "drum:D-INH".</summary>
    /// <param name="about">The subject, or null.</param>
    /// <returns>Names and upper-case codes; empty without a subject.</returns>
    public static string Key(About? about) => about is null
        ? ""
        : string.Join(' ', Parts(about).Where(part => part.Code is not null).Select(part => $"{part.Name}:{part.Code!.ToUpperInvariant()}"));

    /// <summary>The code that a subject's text names; codes may hold spaces.</summary>
    /// <param name="key">A text of <see cref="Key"/>.</param>
    /// <param name="part">Name of the part, such as "instrument".</param>
    /// <returns>The upper-case code, or null when the subject has no such part.</returns>
    public static string? CodeIn(string key, string part)
    {
        var names = Parts(new About()).Select(one => one.Name).ToArray();
        var starts = names
            .Select(name => (Name: name, At: (" " + key).IndexOf($" {name}:", StringComparison.Ordinal)))
            .Where(start => start.At >= 0)
            .OrderBy(start => start.At)
            .ToList();
        var found = starts.FindIndex(start => start.Name == part);
        if (found < 0)
        {
            return null;
        }

        var from = starts[found].At + part.Length + 1;
        return found + 1 < starts.Count ? key[from..(starts[found + 1].At - 1)] : key[from..];
    }

    private static IEnumerable<(string Name, string? Code)> Parts(About about) =>
    [
        ("probe", about.Probe), ("drum", about.Drum), ("output", about.Output), ("meter", about.Meter), ("pump", about.Pump), ("test", about.Test),
        ("instrument", about.Instrument), ("lot", about.Lot), ("person", about.Person), ("rule", about.Rule), ("task", about.Task),
    ];
}
