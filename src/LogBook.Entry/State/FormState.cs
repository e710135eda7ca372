using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Looks;
using LogBook.Domain.Numbers;
using LogBook.Entry.Photos;
using LogBook.Entry.Phrases;
using LogBook.Entry.Plans;
using LogBook.Entry.Texts;

namespace LogBook.Entry.State;

/// <summary>What the parts of the form share while it is open: the draft, the set-up, and what is wrong where.</summary>
public sealed partial class FormState
{
    private readonly Action _edited;
    private readonly Action _shown;
    private VisitContext? _context;

    /// <summary>Starts with a draft.</summary>
    /// <param name="draft">The draft at hand.</param>
    /// <param name="firm">Set-up of the firm.</param>
    /// <param name="site">The site.</param>
    /// <param name="clock">Clock of the device.</param>
    /// <param name="edited">Called after each change of the draft.</param>
    /// <param name="shown">Called when the form itself has something new to show.</param>
    public FormState(VisitDraft draft, FirmSetUp firm, Site site, TimeProvider clock, Action edited, Action shown)
    {
        _shown = shown;
        Draft = draft;
        Firm = firm;
        Site = site;
        Clock = clock;
        _edited = edited;

        // A result whose field was never left, because the browser went away, counts as entered.
        foreach (var value in draft.Fields.Keys.Where(key => key.EndsWith("/value", StringComparison.Ordinal)).ToList())
        {
            ResultWait.Tell(draft, value, clock);
        }

        draft.Watch = this;
    }

    /// <summary>The draft at hand.</summary>
    public VisitDraft Draft { get; }

    /// <summary>Set-up of the firm.</summary>
    public FirmSetUp Firm { get; }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>Clock of the device.</summary>
    public TimeProvider Clock { get; }

    /// <summary>Language of the form.</summary>
    public Language Language { get; set; }

    /// <summary>Where pictures are kept until the visit is sent; null where the host keeps none.</summary>
    public IPhotoDesk? Photos { get; set; }

    /// <summary>How the person wants the form on this device.</summary>
    public FormLooks Looks { get; set; } = new();

    /// <summary>Tells the form that the person wants it otherwise.</summary>
    public Action<FormLooks> ChangeLooks { get; set; } = _ => { };

    /// <summary>System of units that fields begin with.</summary>
    public UnitSystem Units => Looks.Units ?? Site.Units ?? UnitSystem.Metric;

    /// <summary>Cooling systems whose tests can stand side by side.</summary>
    public IReadOnlyList<SystemPlan> SideBySideSystems => [.. Plans.Where(p => !p.RecordOnly)];

    /// <summary>Reads a code with the camera; null where the device cannot.</summary>
    public Func<Task<string?>>? Scan { get; set; }

    /// <summary>Quick phrases.</summary>
    public PhraseBook Phrases { get; set; } = PhraseBook.Default;

    /// <summary>Name of the service firm, for the summary; empty where the host does not know it.</summary>
    public string FirmName { get; set; } = string.Empty;

    /// <summary>Makes a PDF of the summary and gives the name of its file, or null when it failed; null where the host makes none.</summary>
    public Func<VisitSummary, Task<string?>>? SavePdf { get; set; }

    /// <summary>Opens another visit, where the host can.</summary>
    public Func<Guid, Task>? OpenVisit { get; set; }

    /// <summary>Code of the person at the form.</summary>
    public string Me { get; set; } = string.Empty;

    /// <summary>The site's last visits, latest last.</summary>
    public IReadOnlyList<Visit> Previous
    {
        get;
        set
        {
            if (!ReferenceEquals(field, value))
            {
                field = value;
                _context = null;
                Renew();
            }
        }
    } = [];

    /// <summary>Actions that no visit has closed, also those of visits older than the last ones.</summary>
    public IReadOnlyList<StandingAction> Standing { get; set; } = [];

    /// <summary>Issues that came back after sending.</summary>
    public IReadOnlyList<Issue> Refusals { get; set; } = [];

    /// <summary>Index of the system in hand.</summary>
    public int SystemIndex
    {
        get => Noted(FormReads.System, field);
        set
        {
            if (field != value)
            {
                field = value;
                Tell(FormReads.System);
            }
        }
    }

    /// <summary>Step in hand.</summary>
    public EntryStep Step
    {
        get => Noted(FormReads.Step, field);
        set
        {
            if (field != value)
            {
                field = value;
                Tell(FormReads.Step);
            }
        }
    }

    /// <summary>Whether the person tried to close.</summary>
    public bool TriedToClose
    {
        get;
        set
        {
            if (field != value)
            {
                field = value;
                ShowAll();
            }
        }
    }

    /// <summary>Plan of the system in hand, or null for a site without systems.</summary>
    public SystemPlan? Plan => SystemIndex < Plans.Count ? Plans[SystemIndex] : null;

    /// <summary>Key of the system in hand.</summary>
    public string SystemKey => DraftKey.Of(DraftKey.Systems, Plan?.System.Code ?? string.Empty);

    /// <summary>Whether work stopped at the door.</summary>
    public bool IsStopped => Draft.Text(DraftKey.Of(DraftKey.Visit, "kind")) == nameof(VisitKind.Stopped);

    /// <summary>Work stops here: the visit ends with its reason. What was entered stays.</summary>
    public void Stop()
    {
        const string kind = "visit/kind";
        Draft.SetText("visit/kindBefore", Draft.Text(kind));
        Step = EntryStep.Arrive;
        SetText(kind, nameof(VisitKind.Stopped));
    }

    /// <summary>Work goes on after all.</summary>
    public void GoOn() => SetText("visit/kind", Draft.Text("visit/kindBefore") is { Length: > 0 } before && before != nameof(VisitKind.Stopped) ? before : nameof(VisitKind.Routine));

    /// <summary>Key of a field of the system in hand.</summary>
    /// <param name="parts">Parts under the system.</param>
    /// <returns>The key.</returns>
    public string Key(params string[] parts) => DraftKey.Under(SystemKey, parts);

    /// <summary>A wording in the form's language.</summary>
    /// <param name="text">The wording.</param>
    /// <param name="values">Values for its places.</param>
    /// <returns>The finished text.</returns>
    public string T(Text text, params object?[] values) => values.Length == 0 ? text.In(Language) : text.In(Language, values);

    /// <summary>Name of a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The name.</returns>
    public string Name(string key) => FieldNames.Of(key, Site.Code, Firm, Language);

    /// <summary>Sets a text or a choice.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">The text.</param>
    public void SetText(string key, string? text)
    {
        Draft.SetText(key, text);
        Edited();
    }

    /// <summary>Sets the text of a number field; after "Please read again" the number asked about is kept as the first.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">As typed.</param>
    /// <param name="unit">Unit shown beside it; null for a number without unit choice.</param>
    public void SetNumber(string key, string? text, string? unit)
    {
        TellProbe(key);
        TellKit(key);
        var asked = ReadAgainAt(key) is not null ? Draft.Number(key) : null;
        Draft.SetText(key, text, unit);
        if (asked is not null && Draft.Field(key) is { First: null } field && Draft.Number(key) != asked)
        {
            Draft.Set(key, field with { First = asked });
        }

        ResultWait.Tell(Draft, key, Clock);
        Edited();
    }

    /// <summary>Sets a number that was counted with the step pad; it is never in doubt which number is meant.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="value">The number.</param>
    /// <param name="unit">Unit shown beside it.</param>
    public void SetStepped(string key, double value, string? unit)
    {
        // A sign that was typed before the number stays: "<" of the first ten is not 10.
        var sign = Reading(key).Qualifier is { } qualifier ? qualifier + " " : string.Empty;
        SetNumber(key, sign + value.ToString("0.######", Cultures.Of(Language)), unit);
        if (Draft.Number(key) is null && Draft.Field(key) is { } field)
        {
            Draft.Set(key, field with { Choice = Math.Round(value, 6) });
            Edited();
        }
    }

    /// <summary>Keeps what is being typed, without judging it.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">As typed so far.</param>
    /// <param name="unit">Unit shown beside it.</param>
    public void KeepTyped(string key, string text, string? unit)
    {
        TellProbe(key);
        TellKit(key);
        Draft.KeepTyped(key, text, unit);
    }

    /// <summary>Sets the unit of a number field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="unit">UCUM unit.</param>
    public void SetUnit(string key, string? unit)
    {
        Draft.Set(key, (Draft.Field(key) ?? new DraftField()) with { Unit = unit, Confirmed = false });
        Edited();
    }

    /// <summary>Answers which number an unclear text is.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="choice">The number meant.</param>
    public void Answer(string key, double choice)
    {
        Draft.Set(key, (Draft.Field(key) ?? new DraftField()) with { Choice = choice });
        Edited();
    }

    /// <summary>Confirms a doubted value.</summary>
    /// <param name="key">Key of the field.</param>
    public void Confirm(string key)
    {
        if (Draft.Field(key) is { } field)
        {
            Draft.Set(key, field with { Confirmed = true, First = field.First ?? Draft.Number(key) });
            Edited();
        }
    }

    /// <summary>Adds a row to a list.</summary>
    /// <param name="list">Key of the list.</param>
    /// <returns>Key of the row.</returns>
    public string AddRow(string list)
    {
        var row = list.EndsWith("/actions", StringComparison.Ordinal) || list.EndsWith("/recommendations", StringComparison.Ordinal)
            ? Draft.AddRow(list, Clock)
            : Draft.AddRow(list);
        Edited();
        return row;
    }

    /// <summary>Takes a row away.</summary>
    /// <param name="row">Key of the row.</param>
    public void RemoveRow(string row)
    {
        Draft.RemoveRow(row);
        Edited();
    }

    /// <summary>Problems shown at a field: its own, and those of its group at the group's first field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>Problems.</returns>
    public IReadOnlyList<FieldProblem> ProblemsAt(string key)
    {
        var slash = key.LastIndexOf('/');
        var leads = key[(slash + 1)..] is "value" or "drops" or "level" or "hours" or "asFound" or "dial" or "found" or "millilitres" or "amount" or "text";
        var own = ProblemsOf(key);
        if (!leads)
        {
            return own;
        }

        var group = ProblemsOf(key[..slash]);
        return group.Count == 0 ? own : own.Count == 0 ? group : [.. Problems.Where(p => p.Key == key || p.Key == key[..slash])];
    }

    /// <summary>The doubt about a field that the person has not answered yet.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The problem, or null.</returns>
    public FieldProblem? ReadAgainAt(string key) => Draft.Field(key)?.Confirmed == true ? null : ProblemsAt(key).FirstOrDefault(p => !p.Blocks);

    /// <summary>A value with its unit, as entered.</summary>
    /// <param name="value">The value.</param>
    /// <param name="unit">UCUM unit, or none.</param>
    /// <param name="qualifier">Sign before it.</param>
    /// <returns>Words.</returns>
    public string Shows(double value, string? unit, string? qualifier = null)
    {
        var number = string.IsNullOrEmpty(unit) ? Shown.Entered(value, Language) : Shown.Entered(value, unit, Language);
        return qualifier is null ? number : qualifier + " " + number;
    }

    /// <summary>A computed value with its unit.</summary>
    /// <param name="value">The value.</param>
    /// <param name="unit">UCUM unit.</param>
    /// <returns>Words, rounded to what a reader needs.</returns>
    public string ShowsComputed(double value, string unit) => Shown.Computed(value, Language) + "\u00a0" + Shown.Unit(unit, Language);

    /// <summary>Name of a unit in a list of choices; pH and ratios have words too.</summary>
    /// <param name="unit">UCUM unit.</param>
    /// <returns>Words.</returns>
    public string UnitName(string unit) => unit == UnitCodes.One ? string.Empty : Shown.Unit(unit, Language);

    /// <summary>What is understood of a number field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The reading.</returns>
    public NumberReading Reading(string key) => Draft.Reading(key, Language);

    /// <summary>What the domain says of the visit as it stands: the same checks as at saving and on receipt.</summary>
    /// <returns>Issues.</returns>
    public IReadOnlyList<Issue> Checked()
    {
        if (_context is null || _context.Language != Language)
        {
            _context = new VisitContext(Firm, Previous, Language);
        }

        return VisitChecks.Check(Build.Visit, _context);
    }

    /// <summary>Tells the form that the draft is another.</summary>
    public void Edited() => _edited();

    // A record says what its probe measures; a draft alone does not know the set-up.
    private void TellProbe(string key)
    {
        var parts = DraftKey.Parts(key);
        if (parts.Count == 5 && parts[2] == "probes" && Firm.System(Site.Code, parts[1])?.Probes.FirstOrDefault(p => p.Code == parts[3]) is { } probe)
        {
            var of = DraftKey.Of(parts[0], parts[1], parts[2], parts[3], "of");
            if (Draft.Text(of).Length == 0)
            {
                Draft.SetText(of, probe.Of.ToString());
            }

            // Who measured with a hand meter last time most likely holds the same one now; it stands there to be changed.
            var instrument = DraftKey.Of(parts[0], parts[1], parts[2], parts[3], "instrument");
            if (parts[4] == "reference" && Draft.Field(instrument) is null && OwnMeter(parts[1], parts[3]) is { } meter)
            {
                Draft.SetText(instrument, meter);
            }
        }
    }

    private string? OwnMeter(string system, string probe) => Draft.Amended is not null ? null : Previous
        .Where(v => v.Technician.Equals(Draft.Technician, StringComparison.OrdinalIgnoreCase) && v.Arrived < Draft.Arrived())
        .OrderBy(v => v.Arrived.Utc)
        .SelectMany(v => v.Systems.Where(s => s.System.Equals(system, StringComparison.OrdinalIgnoreCase)))
        .SelectMany(s => s.Probes.Where(p => p.Instrument is not null && (p.Probe is null || p.Probe == probe)))
        .LastOrDefault()?.Instrument;

    // Counting begins the mode; what a drop stands for is no reading and comes from the last visit.
    private void TellKit(string key)
    {
        var parts = DraftKey.Parts(key);
        if (parts.Count != 5 || parts[2] != "readings" || ReadingKey.Parse(parts[3]) is not { } reading || Plans.FirstOrDefault(p => p.System.Code == parts[1]) is not { } plan)
        {
            return;
        }

        var group = DraftKey.Of(parts[0], parts[1], parts[2], parts[3]);
        string Under(string name) => DraftKey.Under(group, name);
        var usual = plan.Tests.Concat(plan.SampleTests).FirstOrDefault(t => t.Key == reading)?.UsualMode ?? string.Empty;
        switch (parts[4])
        {
            case "drops" when Draft.Text(Under("mode")).Length == 0:
                Draft.SetText(Under("mode"), "drops");
                if (Draft.Field(Under("perDrop")) is null && plan.LastOf(reading)?.Reading is { PerDrop: { } perDrop } last)
                {
                    Draft.SetText(Under("perDrop"), perDrop.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture), last.Unit);
                }

                break;
            case "value" when usual == "comparator" && Draft.Text(Under("mode")).Length == 0:
                Draft.SetText(Under("mode"), usual);
                Draft.SetText(Under("method"), ReadingMode.Comparator);
                break;
            default:
                break;
        }
    }
}
