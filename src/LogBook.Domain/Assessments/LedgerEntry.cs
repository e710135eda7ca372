using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>One finding of a ledger as it stands at a moment. Never changed: a later state is another entry.</summary>
internal sealed record LedgerEntry
{
    private AssessedFinding? _worded;

    /// <summary>Opens a finding; it has no severity yet.</summary>
    /// <param name="kind">Kind of the finding.</param>
    /// <param name="about">Its subject.</param>
    /// <param name="firstSeen">Day on which it opened.</param>
    /// <param name="firstVisit">Visit that shows it.</param>
    /// <param name="earlier">First day of its earlier self.</param>
    /// <param name="indication">What is shown.</param>
    public LedgerEntry(string kind, About? about, DateOnly firstSeen, Guid? firstVisit, DateOnly? earlier, Indication indication)
    {
        (Kind, About, FirstSeen, LastSeen, FirstVisit, Earlier, Indication) = (kind, about, firstSeen, firstSeen, firstVisit, earlier, indication);
        SubjectKey = FindingLedger.KeyOf(about);
    }

    // Another state is worded anew.
    private LedgerEntry(LedgerEntry other)
    {
        (Kind, About, FirstSeen, LastSeen, FirstVisit, Earlier, Indication) = (other.Kind, other.About, other.FirstSeen, other.LastSeen, other.FirstVisit, other.Earlier, other.Indication);
        (SubjectKey, State, ClosedOn, Because, Severity, Course) = (other.SubjectKey, other.State, other.ClosedOn, other.Because, other.Severity, other.Course);
    }

    public string Kind { get; }

    public About? About { get; }

    public string SubjectKey { get; }

    public DateOnly FirstSeen { get; }

    public FindingState State { get; private init; } = FindingState.Open;

    public Severity Severity { get; private init; }

    private Guid? FirstVisit { get; }

    private DateOnly? Earlier { get; }

    private DateOnly LastSeen { get; init; }

    private DateOnly? ClosedOn { get; init; }

    private Said? Because { get; init; }

    private SeverityStep[] Course { get; init; } = [];

    private Indication Indication { get; init; }

    /// <summary>With evidence that holds.</summary>
    /// <param name="shown">What is shown now.</param>
    /// <param name="severity">Severity after folding.</param>
    /// <param name="day">Day on which it became known.</param>
    /// <param name="held">Day for which the evidence speaks.</param>
    public LedgerEntry Shown(Indication shown, Severity severity, DateOnly day, DateOnly held) =>
        this with { Indication = shown, Severity = severity, Course = CourseWith(severity, day), LastSeen = held > LastSeen ? held : LastSeen };

    /// <summary>Closed by evidence or by a person.</summary>
    public LedgerEntry ClosedAt(DateOnly day) => this with { State = FindingState.Closed, ClosedOn = day };

    /// <summary>Closed by a person, with the reason given.</summary>
    public LedgerEntry ClosedAt(DateOnly day, Said? because) => this with { State = FindingState.Closed, ClosedOn = day, Because = because };

    /// <summary>Withdrawn because something else explains it.</summary>
    public LedgerEntry WithdrawnAs(Said by, DateOnly day, DateOnly held) => this with
    {
        State = FindingState.Withdrawn,
        Severity = Severity.Watch,
        Course = CourseWith(Severity.Watch, day),
        Because = by,
        LastSeen = held > LastSeen ? held : LastSeen,
    };

    /// <summary>The finding in three languages, worked out once.</summary>
    public AssessedFinding Worded(string? site, string? system) => _worded ??=
        new AssessedFinding(In(site, system, Language.English), In(site, system, Language.Spanish), In(site, system, Language.Portuguese)) { Course = Course };

    private SeverityStep[] CourseWith(Severity severity, DateOnly day) =>
        Course.Length == 0 ? [new SeverityStep(FirstSeen, severity)]
        : Severity != severity ? [.. Course, new SeverityStep(day, severity)]
        : Course;

    private Finding In(string? site, string? system, Language language) => new()
    {
        Site = site,
        System = system,
        About = About,
        Kind = Kind,
        Severity = Severity,
        FirstSeen = FirstSeen,
        FirstVisit = FirstVisit,
        LastSeen = LastSeen,
        State = State,
        ClosedOn = ClosedOn,
        Because = Because?.In(language),
        Earlier = Earlier,
        Text = Indication.Text.In(language),
        Evidence = [.. Indication.Evidence.Select(figure => figure.In(language))],
        Suggests = [.. Indication.Suggests.Take(3).Select(cause => new Suggestion { Cause = cause.Cause, Text = cause.Words.In(language) })],
        LookAtNext = [.. Indication.LookAtNext.Select(look => look.In(language))],
    };
}
