using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Web.Features.SetUp.Forms;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.JSInterop;

namespace LogBook.Web.Features.SetUp;

/// <summary>A form of the set-up.</summary>
public sealed partial class RecordEditor
{
    private IReadOnlyList<FormIssue> _found = [];
    private JsonObject? _base;
    private FormGroup? _theirs;
    private JsonObject? _theirJson;
    private ElementReference _summary;
    private bool _mustFocus;
    private bool _isBusy;
    private bool _isGood;
    private string? _said;

    /// <summary>Fields of the form.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<FormField> Fields { get; set; } = [];

    /// <summary>The record to begin with; read once.</summary>
    [Parameter, EditorRequired]
    public JsonObject Record { get; set; } = default!;

    /// <summary>What the form knows.</summary>
    [Parameter, EditorRequired]
    public FormScope Scope { get; set; } = default!;

    /// <summary>Whether the record is new.</summary>
    [Parameter]
    public bool IsNew { get; set; }

    /// <summary>Whether it was saved a moment ago, by the form of a new record that led here.</summary>
    [Parameter]
    public bool WasSaved { get; set; }

    /// <summary>Saves. Issues have paths within the record.</summary>
    [Parameter, EditorRequired]
    public Func<Viewer, JsonObject, Task<SaveOutcome>> Save { get; set; } = default!;

    /// <summary>The record that stands now, out of what the store gave; from here on the page saves upon that version.</summary>
    [Parameter, EditorRequired]
    public Func<SaveOutcome.ChangedMeanwhile, JsonObject> Stands { get; set; } = default!;

    /// <summary>What to do once the record is saved.</summary>
    [Parameter]
    public EventCallback<JsonObject> OnSaved { get; set; }

    /// <summary>Cautions for what stands in the form.</summary>
    [Parameter]
    public Func<FormGroup, IEnumerable<string>> Cautions { get; set; } = static _ => [];

    /// <summary>What must be said yes to before saving; null when there is nothing in the way.</summary>
    [Parameter]
    public Func<string?> Hindrance { get; set; } = static () => null;

    /// <summary>Stands above the button.</summary>
    [Parameter]
    public RenderFragment? BeforeSave { get; set; }

    /// <summary>Where the way back leads.</summary>
    [Parameter, EditorRequired]
    public string Back { get; set; } = "/setup";

    /// <summary>Whether something was typed since the last save.</summary>
    public bool IsTouched => Form.IsTouched;

    private FormGroup Group { get; set; } = default!;

    private FormState Form { get; set; } = default!;

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        Form = new FormState(Scope, StateHasChanged) { IsNew = IsNew };
        Begin(Record);
        if (WasSaved)
        {
            (_said, _isGood) = (W[SetUpTexts.Saved], true);
        }
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_mustFocus)
        {
            _mustFocus = false;
            await _summary.FocusAsync();
        }
    }

    private void Begin(JsonObject record)
    {
        _base = (JsonObject)record.DeepClone();
        Group = FormReader.Read(Fields, record, Scope.Language);
    }

    private async Task SaveAsync()
    {
        // A second click arrives before the button is shown as disabled.
        if (_isBusy)
        {
            return;
        }

        _isBusy = true;
        try
        {
            (_said, _theirs) = (null, null);
            if (Hindrance() is { } hindrance)
            {
                Say([new FormIssue(null, hindrance)]);
                return;
            }

            var viewer = await Viewers.GetAsync();
            var (json, unread) = FormWriter.Write(Fields, Group, Scope.Language);
            if (unread.Count > 0)
            {
                Say(unread);
                return;
            }

            await TakeAsync(await Save(viewer, json), json);
        }
        finally
        {
            _isBusy = false;
        }
    }

    private async Task TakeAsync(SaveOutcome outcome, JsonObject json)
    {
        switch (outcome)
        {
            case SaveOutcome.Saved:
                Say([]);
                Form.IsTouched = false;
                (_said, _isGood) = (W[SetUpTexts.Saved], true);
                await OnSaved.InvokeAsync(json);
                break;
            case SaveOutcome.Invalid invalid:
                Say(FormPlaces.InOrder(Fields, Group, invalid.Issues.Select(issue => FormPlaces.Of(Fields, Group, issue, Scope.Language))));
                break;
            case SaveOutcome.ChangedMeanwhile changed:
                Say([]);
                _theirJson = Stands(changed);
                _theirs = FormReader.Read(Fields, _theirJson, Scope.Language);
                _mustFocus = true;
                break;
            case SaveOutcome.NotAllowed:
                Say([]);
                (_said, _isGood) = (W[SetUpTexts.NotAllowed], false);
                break;
            default:
                Say([]);
                (_said, _isGood) = (W[SetUpTexts.Gone], false);
                break;
        }
    }

    private void Say(IReadOnlyList<FormIssue> issues)
    {
        _found = issues;
        Form.Issues = issues;
        _mustFocus = issues.Count > 0;
    }

    private void TakeOver()
    {
        Begin(_theirJson!);
        (_theirs, _said, _isGood) = (null, W[SetUpTexts.TakenOver], true);
        Form.IsTouched = false;
    }

    // What this person changed goes upon what stands now; what they left alone is taken as it stands.
    private void GoOn()
    {
        var (mine, _) = FormWriter.Write(Fields, Group, Scope.Language);
        var merged = (JsonObject)_theirJson!.DeepClone();
        foreach (var name in mine.Concat(_base!).Select(pair => pair.Key).Distinct(StringComparer.Ordinal).ToList())
        {
            if (!JsonNode.DeepEquals(mine[name], _base![name]))
            {
                merged.Remove(name);
                if (mine[name] is { } value)
                {
                    merged[name] = value.DeepClone();
                }
            }
        }

        Begin(merged);
        _base = (JsonObject)_theirJson.DeepClone();
        (_theirs, _said, _isGood) = (null, W[SetUpTexts.GoingOn], true);
        Form.IsTouched = true;
    }

    private async Task AskBeforeLeavingAsync(LocationChangingContext context)
    {
        if (Form.IsTouched && !await Js.InvokeAsync<bool>("confirm", W[SetUpTexts.Leave]))
        {
            context.PreventNavigation();
        }
    }
}
