using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Entry.Cautions;
using LogBook.Entry.Closing;
using LogBook.Entry.Drafts;
using LogBook.Entry.Looks;
using LogBook.Entry.Photos;
using LogBook.Entry.Phrases;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;
using Microsoft.JSInterop;

namespace LogBook.Entry;

/// <summary>The form of one visit: shows the steps, keeps the draft up to date, hands the visit over when it is closed.</summary>
public sealed partial class VisitForm : IAsyncDisposable
{
    // With the quarter second that the script waits for the next key, well within the second in which a change must be kept.
    private static readonly TimeSpan SaveAfter = TimeSpan.FromMilliseconds(400);

    // Long enough for a host that is busy or away for a moment, short enough that little is lost with the page.
    private static readonly TimeSpan RetryAfter = TimeSpan.FromSeconds(2);

    private readonly GivenParameters _given = new();
    private FormState? _state;
    private ITimer? _timer;
    private ElementReference _root;
    private IJSObjectReference? _module;
    private DotNetObjectReference<VisitForm>? _self;
    private string? _focus;
    private FormLooks _looks = new();
    private Func<Task<string?>>? _scan;
    private bool _changed;
    private bool _closing;
    private bool _showsSheet;
    private bool _gone;

    /// <summary>Set-up of the firm.</summary>
    [Parameter, EditorRequired]
    public FirmSetUp Firm { get; set; } = FirmSetUp.Empty;

    /// <summary>The site.</summary>
    [Parameter, EditorRequired]
    public Site Site { get; set; } = default!;

    /// <summary>The site's last visits, latest last.</summary>
    [Parameter]
    public IReadOnlyList<Visit> Previous { get; set; } = [];

    /// <summary>Actions that no visit of the site has closed, also those of visits older than the last ones.</summary>
    [Parameter]
    public IReadOnlyList<StandingAction> Standing { get; set; } = [];

    /// <summary>The draft at hand.</summary>
    [Parameter, EditorRequired]
    public VisitDraft Draft { get; set; } = default!;

    /// <summary>Language of the form.</summary>
    [Parameter]
    public Language Language { get; set; }

    /// <summary>Code of the person at the form.</summary>
    [Parameter]
    public string Me { get; set; } = string.Empty;

    /// <summary>Clock of the device.</summary>
    [Parameter]
    public TimeProvider TimeProvider { get; set; } = TimeProvider.System;

    /// <summary>Where pictures are kept until the visit is sent; null where the host keeps none, and none are offered then.</summary>
    [Parameter]
    public IPhotoDesk? Photos { get; set; }

    /// <summary>Quick phrases; the built-in ones when the host gives none.</summary>
    [Parameter]
    public PhraseBook? Phrases { get; set; }

    /// <summary>Name of the service firm, for the summary that is shown before closing.</summary>
    [Parameter]
    public string FirmName { get; set; } = string.Empty;

    /// <summary>Makes a PDF of the summary and gives the name of its file, or null when it failed; null where the host makes none.</summary>
    [Parameter]
    public Func<VisitSummary, Task<string?>>? SavePdf { get; set; }

    /// <summary>Opens another visit of the site to add a late result, where the host can.</summary>
    [Parameter]
    public Func<Guid, Task>? OpenVisit { get; set; }

    /// <summary>Whether the host's page has its first heading already; the form has its own otherwise, for those who listen to it.</summary>
    [Parameter]
    public bool UnderATitle { get; set; }

    /// <summary>Whether to begin at the first result of the draft that is still to come; as usual where there is none.</summary>
    [Parameter]
    public bool AtResult { get; set; }

    /// <summary>Issues that came back after the visit was sent.</summary>
    [Parameter]
    public IReadOnlyList<Issue> Refusals { get; set; } = [];

    /// <summary>
    /// The draft changed: the host keeps it. Called within a second of the last change. A host that could not keep it says so
    /// to the person and throws: the form stays and asks again.
    /// </summary>
    [Parameter]
    public EventCallback<VisitDraft> Changed { get; set; }

    /// <summary>The visit is closed: the host sends it.</summary>
    [Parameter]
    public EventCallback<Visit> Close { get; set; }

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    [Inject]
    private ILogger<VisitForm> Logger { get; set; } = default!;

    private FormState State => _state!;

    private string Tag => Language switch
    {
        Language.Spanish => "es",
        Language.Portuguese => "pt",
        _ => "en",
    };

    private string? Scheme => State.Looks.Dark switch
    {
        true => "dark",
        false => "light",
        null => null,
    };

    private EntryStep? NextStep
    {
        get
        {
            var steps = State.Plan?.Steps ?? [];
            var at = steps.ToList().IndexOf(State.Step);
            return at >= 0 && at + 1 < steps.Count ? steps[at + 1] : null;
        }
    }

    /// <summary>Keeps keys that were typed into a field which was not left yet.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">As typed so far.</param>
    /// <param name="unit">Unit shown beside it.</param>
    [JSInvokable]
    public void KeepTyped(string key, string text, string? unit)
    {
        State.KeepTyped(key, text, unit);
        SaveSoon();
    }

    /// <summary>Answers behind what the page told before, and by that says that it has arrived.</summary>
    /// <returns>False when the form is being taken away.</returns>
    [JSInvokable]
    public bool Heard() => !_gone;

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        _gone = true;
        if (_timer is not null)
        {
            await _timer.DisposeAsync();
        }

        await SaveAsync();
        _self?.Dispose();
        if (_module is not null)
        {
            try
            {
                await _module.DisposeAsync();
            }
            catch (JSDisconnectedException)
            {
                // The page is gone, and its script with it.
            }
        }
    }

    /// <inheritdoc />
    public override Task SetParametersAsync(ParameterView parameters)
    {
        // A host that tells of each draft it has kept gives the same again: nothing of the form is another by that.
        if (_given.Take(parameters))
        {
            return base.SetParametersAsync(parameters);
        }

        parameters.SetParameterProperties(this);
        return Task.CompletedTask;
    }

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        var isNew = _state?.Draft != Draft;
        if (isNew)
        {
            _state = new FormState(Draft, Firm, Site, TimeProvider, Edited, StateHasChanged) { IsGradual = OperatingSystem.IsBrowser(), MoreWanted = FillOn };
            _state.Language = Language;
            _state.Previous = Previous;
            _state.Looks = _looks;
            _state.Scan = _scan;
            _state.ChangeLooks = looks => _ = InvokeAsync(() => ChangeLooksAsync(looks));
            _state.Step = _state.Plan?.Steps[0] ?? EntryStep.Close;
        }

        _state!.Language = Language;
        _state.Me = Me;
        _state.Photos = Photos;
        _state.Phrases = Phrases ?? PhraseBook.Default;
        _state.OpenVisit = OpenVisit;
        _state.FirmName = FirmName;
        _state.SavePdf = SavePdf;
        _state.Previous = Previous;
        _state.Standing = Standing;
        _state.Refusals = Refusals;
        _state.Renew();
        if (isNew && AtResult && ResultWait.First(Draft) is { } result)
        {
            (_state.SystemIndex, _state.Step) = FieldPlaces.Of(_state, result);
            _state.WarnOfStep();
            _state.Wanted = result;
            _focus = DraftKey.ElementId(result);
        }

        _state.ShowAll();
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _module = await Script.InvokeAsync<IJSObjectReference>("import", "./_content/LogBook.Entry/entry.js");
            _self = DotNetObjectReference.Create(this);
            await _module.InvokeVoidAsync("attach", _root, _self);
            if (await _module.InvokeAsync<bool>("canScan"))
            {
                State.Scan = _scan = ScanAsync;
            }

            _looks = FormLooks.Read(await _module.InvokeAsync<string?>("looks"));
            if (_looks != State.Looks || _scan is not null)
            {
                State.Looks = _looks;
                State.ShowAll();
            }
        }

        if (_focus is { } id && _module is not null && MayGoTo(id))
        {
            _focus = null;
            await _module.InvokeVoidAsync("focusField", id);
        }
    }

    private async Task ChangeLooksAsync(FormLooks looks)
    {
        State.Looks = _looks = looks;
        State.ShowAll();
        if (_module is not null)
        {
            await _module.InvokeVoidAsync("keepLooks", looks.Write());
        }
    }

    private async Task<string?> ScanAsync() =>
        _module is null ? null : await _module.InvokeAsync<string?>("scan", _root, State.T(StepTexts.ScanStop));

    private void Stop()
    {
        State.Stop();
        _focus = DraftKey.ElementId("visit/reason");
    }

    private void ChooseSystem(int index)
    {
        LeaveStep();
        State.SystemIndex = index;
        if (State.Plan?.Steps.Contains(State.Step) != true)
        {
            State.Step = State.Plan?.Steps[0] ?? EntryStep.Close;
            State.LeaveCautions();
        }

        // Another system may have other dangers at the same step.
        State.WarnOfStep();
        EnterStep(null);
    }

    // The step that is left keeps its place: back from the summary, the person goes on where they were.
    private void ShowSheet(bool shows)
    {
        LeaveStep();
        _showsSheet = shows;
        EnterStep(Heading);
    }

    private void Show(EntryStep step)
    {
        LeaveStep();
        _showsSheet = false;
        State.Step = step;
        State.LeaveCautions();
        State.WarnOfStep();

        EnterStep(Heading);
    }

    private void GoToPoint(OpenPoint point) => GoTo(point.System, point.Step, point.Key);

    private void GoToKey(string key)
    {
        var (system, step) = FieldPlaces.Of(State, key);
        GoTo(system, step, key);
    }

    private void GoTo(int system, EntryStep step, string key)
    {
        LeaveStep();
        _showsSheet = false;
        if (step != State.Step)
        {
            State.LeaveCautions();
        }

        State.SystemIndex = system;
        State.Step = step;
        State.WarnOfStep();
        State.Wanted = key;
        EnterStep(DraftKey.ElementId(key));
    }

    private async Task CloseAsync()
    {
        // A second press while the first is under way would send twice.
        if (_closing)
        {
            return;
        }

        State.TriedToClose = true;
        if (!CloseGate.MayClose(State))
        {
            _focus = State.Problems.Any(p => p.Blocks) ? "visit-problems" : "still-open";
            return;
        }

        _closing = true;
        try
        {
            var visit = CloseGate.Finish(State);
            _changed = true;
            await SaveAsync();
            await Close.InvokeAsync(visit);
        }
        finally
        {
            _closing = false;
        }
    }

    private void SaveSoon()
    {
        // What is due is not put off: somebody who never pauses would keep nothing.
        if (_changed)
        {
            return;
        }

        _changed = true;
        SaveIn(SaveAfter);
    }

    private void SaveIn(TimeSpan time)
    {
        _timer ??= TimeProvider.CreateTimer(_ => _ = InvokeAsync(SaveAsync), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _timer.Change(time, Timeout.InfiniteTimeSpan);
    }

    private async Task SaveAsync()
    {
        if (!_changed)
        {
            return;
        }

        _changed = false;
        try
        {
            await Changed.InvokeAsync(Draft);
        }
        catch (Exception exception) when (!_gone)
        {
            // A full disk or a script that failed must not end the form: what was entered stands in it and is kept later.
            Logger.LogWarning(exception, "The draft of visit {Visit} was not kept; it is tried again", Draft.Id);
            _changed = true;
            SaveIn(RetryAfter);
        }
        catch (Exception exception) when (_gone)
        {
            Logger.LogError(exception, "The draft of visit {Visit} was not kept when its form was left", Draft.Id);
        }
    }
}
