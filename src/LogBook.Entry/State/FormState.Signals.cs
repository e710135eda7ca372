using LogBook.Entry.Closing;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;

namespace LogBook.Entry.State;

/// <summary>What is worked out of the draft, once for each change, and who is told that it is another.</summary>
public sealed partial class FormState : IDraftWatch
{
    private readonly List<EntryComponent> _parts = [];
    private readonly FormReads _plansRead = new();
    private Dictionary<string, List<FieldProblem>> _problemsByKey = [];
    private HashSet<string> _changed = new(StringComparer.Ordinal);
    private FormReads? _noting;
    private DraftBuild? _build;
    private List<FieldProblem>? _problems;
    private List<SystemPlan>? _plans;
    private List<OpenPoint>? _open;
    private bool _arePlansOld = true;
    private int _portion = int.MaxValue;
    private bool _isMoreWanted;

    /// <summary>Plans of the site's systems; the same ones as long as nothing in them is another.</summary>
    public IReadOnlyList<SystemPlan> Plans
    {
        get
        {
            if (_plans is null || _arePlansOld)
            {
                _arePlansOld = false;
                _plansRead.Clear();
                KeepPlans(Aside(_plansRead, () => Firm.SystemsOf(Site.Code).Select(system => SystemPlan.For(system, Firm, Previous, Draft)).ToList()));
            }

            return Noted(FormReads.Plans, _plans!);
        }
    }

    /// <summary>The visit as the draft stands.</summary>
    public DraftBuild Build => Noted(FormReads.Build, _build ??= Aside(null, () => Draft.Build(Language)));

    /// <summary>Everything to correct or to read again.</summary>
    public IReadOnlyList<FieldProblem> Problems
    {
        get
        {
            FindProblems();
            return Noted(FormReads.Problems, _problems!);
        }
    }

    /// <summary>What is open before the visit is closed.</summary>
    public IReadOnlyList<OpenPoint> Open => Noted(FormReads.Build, _open ??= Aside(null, () => CloseGate.Open(this).ToList()));

    /// <summary>The field that the person goes to: what hides it opens.</summary>
    public string? Wanted
    {
        get => Noted(FormReads.Wanted, field);
        set
        {
            field = value;
            Tell(FormReads.Wanted);
        }
    }

    /// <summary>Whether long steps are shown piece by piece, so that no tap waits for all of them.</summary>
    public bool IsGradual { get; set; }

    /// <summary>Told when a piece has to wait, the first since the pieces before it were shown: a part that opens later brings pieces of its own.</summary>
    public Action? MoreWanted { get; set; }

    /// <summary>Whether a piece of a long step is to be shown by now.</summary>
    /// <param name="at">Its place.</param>
    /// <returns>False while it has to wait.</returns>
    public bool Shows(int at)
    {
        var shows = at < Noted(FormReads.Portion, _portion);
        if (!shows && !_isMoreWanted)
        {
            _isMoreWanted = true;
            MoreWanted?.Invoke();
        }

        return shows;
    }

    /// <summary>A result that a part shows: it is shown anew when the result is another, not whenever its sources are.</summary>
    /// <typeparam name="T">Type of the result.</typeparam>
    /// <param name="of">Works it out.</param>
    /// <returns>The result.</returns>
    public T Watched<T>(Func<T> of)
    {
        var value = Aside(null, of);
        _noting?.Add(() => Aside(null, of), value);
        return value;
    }

    /// <summary>Forgets what was worked out of the draft and of what the host gave.</summary>
    public void Renew()
    {
        Forget();
        _arePlansOld = true;
    }

    /// <summary>Begins a step with its first pieces.</summary>
    /// <param name="pieces">How many.</param>
    public void BeginPortions(int pieces)
    {
        _portion = pieces;
        _isMoreWanted = false;
    }

    /// <summary>Shows the next pieces of a long step.</summary>
    /// <param name="pieces">How many.</param>
    /// <returns>False when all are shown.</returns>
    public bool ShowMore(int pieces)
    {
        if (!_isMoreWanted)
        {
            return false;
        }

        _isMoreWanted = false;
        _portion += pieces;
        Tell(FormReads.Portion);
        return true;
    }

    /// <summary>Works out the next piece of what a change makes necessary.</summary>
    /// <returns>False when all is worked out.</returns>
    public bool WorkOn()
    {
        if (_plans is null || _arePlansOld)
        {
            _ = Plans;
        }
        else if (_build is null)
        {
            _ = Build;
        }
        else if (_problems is null)
        {
            FindProblems();
        }
        else
        {
            return false;
        }

        return true;
    }

    /// <summary>Shows what is another since this was last asked.</summary>
    public void Settle()
    {
        _ = Plans;
        FindProblems();
        if (_changed.Count == 0)
        {
            return;
        }

        var changed = _changed;
        _changed = new HashSet<string>(StringComparer.Ordinal);
        if (changed.Contains(FormReads.Plans))
        {
            _shown();
        }

        Show(changed);
    }

    /// <summary>Shows everything anew.</summary>
    public void ShowAll()
    {
        foreach (var part in _parts.ToArray())
        {
            part.Show();
        }

        _shown();
    }

    /// <inheritdoc />
    void IDraftWatch.Read(string key) => _noting?.Add(key);

    /// <inheritdoc />
    void IDraftWatch.ReadUnder(string key) => _noting?.Add(FormReads.Under(key));

    /// <inheritdoc />
    void IDraftWatch.ReadParts(string key) => _noting?.Add(FormReads.Parts(key));

    /// <inheritdoc />
    void IDraftWatch.ReadAll() => _noting?.Add(FormReads.Fields);

    /// <inheritdoc />
    void IDraftWatch.Wrote(string key, bool isPart)
    {
        Forget();
        Changes(key);
        Changes(FormReads.Fields);
        for (var at = key.LastIndexOf('/'); at > 0; at = key.LastIndexOf('/', at - 1))
        {
            Changes(FormReads.Under(key[..at]));
            if (isPart)
            {
                Changes(FormReads.Parts(key[..at]));
            }
        }

        _arePlansOld = _arePlansOld || _plansRead.AreTouchedBy(_changed);
    }

    internal void Join(EntryComponent part) => _parts.Add(part);

    internal void Leave(EntryComponent part) => _parts.Remove(part);

    // From now on, what is read is noted there; the answer is where it was noted before.
    internal FormReads? Note(FormReads? reads)
    {
        var before = _noting;
        _noting = reads;
        return before;
    }

    private T Noted<T>(string topic, T value)
    {
        _noting?.Add(topic);
        return value;
    }

    private T Aside<T>(FormReads? reads, Func<T> work)
    {
        var before = Note(reads);
        try
        {
            return work();
        }
        finally
        {
            Note(before);
        }
    }

    private void Forget()
    {
        _build = null;
        _problems = null;
        _open = null;
        Changes(FormReads.Build);
    }

    private void Changes(string topic) => _changed.Add(topic);

    private void Tell(string topic) => Show(new HashSet<string>(StringComparer.Ordinal) { topic });

    private void Show(HashSet<string> changed)
    {
        foreach (var part in _parts.ToArray())
        {
            if (part.Reads.AreTouchedBy(changed))
            {
                part.Show();
            }
        }
    }

    private void KeepPlans(List<SystemPlan> plans)
    {
        if (_plans is { } before && before.Count == plans.Count && before.Zip(plans).All(pair => pair.First.Offers(pair.Second)))
        {
            return;
        }

        _plans = plans;
        Changes(FormReads.Plans);
    }

    private List<FieldProblem> ProblemsOf(string? key)
    {
        FindProblems();
        return Noted(FormReads.ProblemsAt(key), _problemsByKey.GetValueOrDefault(key ?? string.Empty) ?? []);
    }

    // Whoever showed what was wrong before is told when it is another, however often it was worked out in between.
    private void FindProblems()
    {
        if (_problems is not null)
        {
            return;
        }

        _problems = Aside(null, () => FormProblems.Of(this));
        var before = _problemsByKey;
        _problemsByKey = _problems.GroupBy(p => p.Key ?? string.Empty, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToList(), StringComparer.Ordinal);
        foreach (var key in before.Keys.Union(_problemsByKey.Keys))
        {
            if (!(before.GetValueOrDefault(key) ?? []).SequenceEqual(_problemsByKey.GetValueOrDefault(key) ?? []))
            {
                Changes(FormReads.ProblemsAt(key));
                Changes(FormReads.Problems);
            }
        }
    }
}
