namespace LogBook.Entry.State;

/// <summary>What a part of the form, or something worked out for it, has read.</summary>
internal sealed class FormReads
{
    /// <summary>The visit as the draft makes it: another with each change.</summary>
    public const string Build = "=build";

    /// <summary>All that is wrong.</summary>
    public const string Problems = "=problems";

    /// <summary>What the form offers for the systems.</summary>
    public const string Plans = "=plans";

    /// <summary>The step in hand.</summary>
    public const string Step = "=step";

    /// <summary>The system in hand.</summary>
    public const string System = "=system";

    /// <summary>Cautions to show.</summary>
    public const string Cautions = "=cautions";

    /// <summary>How far a long step is shown.</summary>
    public const string Portion = "=portion";

    /// <summary>The field that the person goes to.</summary>
    public const string Wanted = "=wanted";

    /// <summary>Any field.</summary>
    public const string Fields = "=fields";

    private readonly HashSet<string> _topics = new(StringComparer.Ordinal);
    private readonly List<(Func<object?> Of, object? Value)> _results = [];

    /// <summary>Whether anything under a key has a text.</summary>
    /// <param name="key">Start of the keys.</param>
    /// <returns>The topic.</returns>
    public static string Under(string key) => key + "/";

    /// <summary>Which parts there are under a key.</summary>
    /// <param name="key">Start of the keys.</param>
    /// <returns>The topic.</returns>
    public static string Parts(string key) => key + "/#";

    /// <summary>What is wrong at a field.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>The topic.</returns>
    public static string ProblemsAt(string? key) => "!" + key;

    /// <summary>Forgets everything.</summary>
    public void Clear()
    {
        _topics.Clear();
        _results.Clear();
    }

    /// <summary>Notes what was read.</summary>
    /// <param name="topic">A key of the draft, or one of the topics above.</param>
    public void Add(string topic) => _topics.Add(topic);

    /// <summary>Notes a result of which only another value matters.</summary>
    /// <param name="of">Works it out.</param>
    /// <param name="value">What it was.</param>
    public void Add(Func<object?> of, object? value) => _results.Add((of, value));

    /// <summary>Whether any of it is another now.</summary>
    /// <param name="changed">Topics that changed.</param>
    /// <returns>True when it must be read anew.</returns>
    public bool AreTouchedBy(HashSet<string> changed)
    {
        foreach (var topic in changed)
        {
            if (_topics.Contains(topic))
            {
                return true;
            }
        }

        return changed.Contains(Build) && _results.Exists(result => !Equals(result.Of(), result.Value));
    }
}
