using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>
/// Findings of one system, or of the firm as a whole, over time: opened by evidence, kept while the evidence holds, closed when a
/// visit judged the matter and the evidence is gone or when a person closed it, withdrawn when something else explains it. A trouble
/// that comes back is a new finding that names its earlier self. Nothing closes because time has passed.
/// </summary>
internal sealed class FindingLedger
{
    private readonly string? _site;
    private readonly string? _system;

    // An entry is never changed, only put in place of another: a copy of the ledger then costs a few lists.
    private readonly List<LedgerEntry> _entries;
    private readonly List<int> _open;

    // By kind, the latest entry of each subject: a handful, found sooner by looking than by hashing eleven codes for every verdict. The
    // arrays are never changed.
    private readonly Dictionary<string, int[]> _latest;
    private string? _kindLookedUp;
    private int[] _placesOfKind = [];

    /// <summary>Makes an empty ledger.</summary>
    /// <param name="site">Code of the site; null for the firm as a whole.</param>
    /// <param name="system">Code of the system; null for the firm as a whole.</param>
    public FindingLedger(string? site, string? system)
    {
        (_site, _system) = (site, system);
        (_entries, _open, _latest) = ([], [], new(StringComparer.Ordinal));
    }

    private FindingLedger(FindingLedger other)
    {
        (_site, _system) = (other._site, other._system);
        (_entries, _open, _latest) = ([.. other._entries], [.. other._open], new(other._latest, StringComparer.Ordinal));
    }

    /// <summary>What is open, in the order in which it opened.</summary>
    public List<(string Kind, About? About, Severity Severity)> Open
    {
        get
        {
            // Nothing opens again once it is closed or withdrawn.
            var open = new List<(string Kind, About? About, Severity Severity)>(_open.Count);
            var kept = 0;
            for (var i = 0; i < _open.Count; i++)
            {
                var entry = _entries[_open[i]];
                if (entry.State == FindingState.Open)
                {
                    _open[kept++] = _open[i];
                    open.Add((entry.Kind, entry.About, entry.Severity));
                }
            }

            _open.RemoveRange(kept, _open.Count - kept);
            return open;
        }
    }

    /// <summary>A ledger that says the same and goes its own way from here on.</summary>
    public FindingLedger Copy() => new(this);

    /// <summary>Takes in a verdict.</summary>
    /// <param name="kind">Kind of the finding.</param>
    /// <param name="verdict">What its rule says.</param>
    /// <param name="severity">Severity after folding.</param>
    /// <param name="day">Day on which it became known.</param>
    /// <param name="heldOn">Day for which the evidence speaks: that of the visit, however late a result came.</param>
    /// <param name="visitId">Visit judged, or null between visits.</param>
    public void Apply(string kind, Verdict verdict, Severity severity, DateOnly day, DateOnly heldOn, Guid? visitId)
    {
        if (verdict.NotJudgedBecause is not null)
        {
            return;
        }

        var place = PlaceOf(kind, verdict.About);
        var latest = place < 0 ? null : _entries[place];
        if (verdict.Indication is not { } shown)
        {
            if (latest is { State: FindingState.Open })
            {
                _entries[place] = latest.ClosedAt(day);
            }

            return;
        }

        if (verdict.ExplainedBy is { } by)
        {
            Withdraw(kind, verdict, place, by, day, heldOn, visitId);
            return;
        }

        var seen = verdict.SeenOn ?? day;
        var held = verdict.SeenOn ?? heldOn;
        if (latest is not { State: FindingState.Open })
        {
            place = Add(new LedgerEntry(kind, verdict.About, seen, verdict.ShownBy ?? visitId, latest?.FirstSeen, shown));
            _open.Add(place);
        }

        _entries[place] = _entries[place].Shown(shown, severity, day, held);
    }

    /// <summary>Closes a finding that a person closed; one that is no longer open stays as it is.</summary>
    /// <param name="answer">Which, when and why.</param>
    /// <param name="day">Day of the answer.</param>
    public void Close(FindingAnswer answer, DateOnly day)
    {
        var place = _entries.FindIndex(entry => entry.Kind == answer.Kind && entry.FirstSeen == answer.FirstSeen && About.Key(entry.About) == answer.AboutKey && entry.State == FindingState.Open);
        if (place >= 0)
        {
            _entries[place] = _entries[place].ClosedAt(day, answer.Because is { Length: > 0 } words ? new Said(new Text(words, words, words)) : null);
        }
    }

    // What was open before the first reading that the explanation concerns was another trouble, and its evidence is gone.
    private void Withdraw(string kind, Verdict verdict, int place, Said by, DateOnly day, DateOnly heldOn, Guid? visitId)
    {
        var latest = place < 0 ? null : _entries[place];
        if (latest is { State: FindingState.Open } && latest.FirstSeen < verdict.ExplainedFrom)
        {
            _entries[place] = latest.ClosedAt(day);
            return;
        }

        if (latest is null or { State: FindingState.Closed })
        {
            place = Add(new LedgerEntry(kind, verdict.About, verdict.SeenOn ?? day, verdict.ShownBy ?? visitId, latest?.FirstSeen, verdict.Indication!));
        }

        _entries[place] = _entries[place].WithdrawnAs(by, day, verdict.SeenOn ?? heldOn);
    }

    private int Add(LedgerEntry entry)
    {
        var (before, place) = (PlaceOf(entry.Kind, entry.About), _entries.Count);
        _entries.Add(entry);
        var places = _latest.GetValueOrDefault(entry.Kind) ?? [];
        _latest[entry.Kind] = [.. places.Where(other => other != before), place];
        _kindLookedUp = null;
        return place;
    }

    private int PlaceOf(string kind, About? about)
    {
        // Verdicts of one kind come one after the other.
        if (!ReferenceEquals(kind, _kindLookedUp))
        {
            (_kindLookedUp, _placesOfKind) = (kind, _latest.GetValueOrDefault(kind) ?? []);
        }

        foreach (var place in _placesOfKind)
        {
            if (MatterComparer.SameSubject(_entries[place].About, about))
            {
                return place;
            }
        }

        return -1;
    }

    /// <summary>The findings, by first day, kind and subject.</summary>
    /// <param name="beside">Another ledger of the same system, with other kinds, whose findings stand among these.</param>
    public IReadOnlyList<AssessedFinding> Findings(FindingLedger? beside = null) =>
    [
        .. (beside is null ? _entries : _entries.Concat(beside._entries))
            .OrderBy(entry => entry.FirstSeen)
            .ThenBy(entry => entry.Kind, StringComparer.Ordinal)
            .ThenBy(entry => entry.SubjectKey, StringComparer.Ordinal)
            .Select(entry => entry.Worded(_site, _system)),
    ];

    internal static string KeyOf(About? about) => about is null
        ? ""
        : string.Join('|', about.Probe, about.Drum, about.Output, about.Meter, about.Pump, about.Test, about.Instrument, about.Lot, about.Person, about.Rule)
            .ToUpperInvariant();
}
