using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>
/// Findings of one system, or of the firm as a whole, over time: opened by evidence, kept while the evidence holds, closed when a
/// visit judged the matter and the evidence is gone or when a person closed it, withdrawn when something else explains it. A trouble
/// that comes back is a new finding that names its earlier self. Nothing closes because time has passed.
/// </summary>
internal sealed class FindingLedger(string? site, string? system)
{
    private readonly List<Entry> _entries = [];
    private readonly List<Entry> _open = [];
    private readonly Dictionary<(string Kind, About? About), Entry> _latest = new(MatterComparer.Instance);

    /// <summary>What is open, in the order in which it opened.</summary>
    public IEnumerable<(string Kind, About? About, Severity Severity)> Open
    {
        get
        {
            // Nothing opens again once it is closed or withdrawn.
            _open.RemoveAll(entry => entry.State != FindingState.Open);
            return _open.Select(entry => (entry.Kind, entry.About, entry.Severity));
        }
    }

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

        var key = (kind, verdict.About);
        var open = _latest.TryGetValue(key, out var latest) && latest.State == FindingState.Open ? latest : null;
        if (verdict.Indication is not { } shown)
        {
            open?.Close(day);
            return;
        }

        if (verdict.ExplainedBy is { } by)
        {
            Withdraw(kind, verdict, latest, by, day, heldOn, visitId);
            return;
        }

        var seen = verdict.SeenOn ?? day;
        if (open is null)
        {
            open = new Entry(kind, verdict.About, seen, verdict.ShownBy ?? visitId, latest?.FirstSeen);
            _entries.Add(open);
            _open.Add(open);
            _latest[key] = open;
        }

        open.Step(open.Course.Count == 0 ? seen : day, severity);
        open.Indication = shown;
        var held = verdict.SeenOn ?? heldOn;
        open.LastSeen = held > open.LastSeen ? held : open.LastSeen;
    }

    /// <summary>Closes a finding that a person closed; one that is no longer open stays as it is.</summary>
    /// <param name="answer">Which, when and why.</param>
    /// <param name="day">Day of the answer.</param>
    public void Close(FindingAnswer answer, DateOnly day)
    {
        if (_entries.Find(entry => entry.Kind == answer.Kind && entry.FirstSeen == answer.FirstSeen && About.Key(entry.About) == answer.AboutKey && entry.State == FindingState.Open) is { } open)
        {
            open.Close(day);
            open.Because = answer.Because is { Length: > 0 } words ? new Said(new Text(words, words, words)) : null;
        }
    }

    // What was open before the first reading that the explanation concerns was another trouble, and its evidence is gone.
    private void Withdraw(string kind, Verdict verdict, Entry? latest, Said by, DateOnly day, DateOnly heldOn, Guid? visitId)
    {
        if (latest is { State: FindingState.Open } && latest.FirstSeen < verdict.ExplainedFrom)
        {
            latest.Close(day);
        }
        else if (latest is null or { State: FindingState.Closed })
        {
            _latest[(kind, verdict.About)] = latest = new Entry(kind, verdict.About, verdict.SeenOn ?? day, verdict.ShownBy ?? visitId, latest?.FirstSeen) { Indication = verdict.Indication! };
            _entries.Add(latest);
        }

        if (latest!.State != FindingState.Closed)
        {
            latest.State = FindingState.Withdrawn;
            latest.Step(latest.Course.Count == 0 ? latest.FirstSeen : day, Severity.Watch);
            latest.Because = by;
            var held = verdict.SeenOn ?? heldOn;
            latest.LastSeen = held > latest.LastSeen ? held : latest.LastSeen;
        }
    }

    /// <summary>The findings, by first day, kind and subject.</summary>
    public IReadOnlyList<AssessedFinding> Findings() =>
    [
        .. _entries
            .OrderBy(entry => entry.FirstSeen)
            .ThenBy(entry => entry.Kind, StringComparer.Ordinal)
            .ThenBy(entry => KeyOf(entry.About), StringComparer.Ordinal)
            .Select(entry => new AssessedFinding(
                Worded(entry, Language.English), Worded(entry, Language.Spanish), Worded(entry, Language.Portuguese)) { Course = [.. entry.Course] }),
    ];

    internal static string KeyOf(About? about) => about is null
        ? ""
        : string.Join('|', about.Probe, about.Drum, about.Output, about.Meter, about.Pump, about.Test, about.Instrument, about.Lot, about.Person, about.Rule)
            .ToUpperInvariant();

    private Finding Worded(Entry entry, Language language) => new()
    {
        Site = site,
        System = system,
        About = entry.About,
        Kind = entry.Kind,
        Severity = entry.Severity,
        FirstSeen = entry.FirstSeen,
        FirstVisit = entry.FirstVisit,
        LastSeen = entry.LastSeen,
        State = entry.State,
        ClosedOn = entry.ClosedOn,
        Because = entry.Because?.In(language),
        Earlier = entry.Earlier,
        Text = entry.Indication.Text.In(language),
        Evidence = [.. entry.Indication.Evidence.Select(figure => figure.In(language))],
        Suggests = [.. entry.Indication.Suggests.Take(3).Select(cause => new Suggestion { Cause = cause.Cause, Text = cause.Words.In(language) })],
        LookAtNext = [.. entry.Indication.LookAtNext.Select(look => look.In(language))],
    };

    private sealed class Entry(string kind, About? about, DateOnly firstSeen, Guid? firstVisit, DateOnly? earlier)
    {
        public string Kind { get; } = kind;

        public About? About { get; } = about;

        public DateOnly FirstSeen { get; } = firstSeen;

        public Guid? FirstVisit { get; } = firstVisit;

        public DateOnly? Earlier { get; } = earlier;

        public DateOnly LastSeen { get; set; } = firstSeen;

        public FindingState State { get; set; } = FindingState.Open;

        public DateOnly? ClosedOn { get; private set; }

        public Said? Because { get; set; }

        public Severity Severity { get; private set; }

        public List<SeverityStep> Course { get; } = [];

        public void Step(DateOnly on, Severity severity)
        {
            if (Course.Count == 0 || Severity != severity)
            {
                Course.Add(new SeverityStep(on, severity));
            }

            Severity = severity;
        }

        public Indication Indication { get; set; } = null!;

        public void Close(DateOnly day) => (State, ClosedOn) = (FindingState.Closed, day);
    }
}
