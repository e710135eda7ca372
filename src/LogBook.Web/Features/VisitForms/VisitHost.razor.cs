using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Web.Account;
using Microsoft.AspNetCore.Components;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Shows the visit form on the server: keeps its draft, sends the visit, and lets go of the draft only after the receipt.</summary>
public sealed partial class VisitHost : IDisposable
{
    // One save at a time: two would race for the draft's version.
    private readonly SemaphoreSlim _saving = new(1, 1);
    private VisitSheet? _sheet;
    private IReadOnlyList<Issue> _refusals = [];
    private Text? _problem;
    private DateTime? _savedAt;
    private string _me = "";
    private int _version;
    private bool _isLoaded;
    private bool _isSending;
    private bool _isGone;
    private bool _startsOver;

    /// <summary>Brings what the form needs; null when there is nothing for this viewer.</summary>
    [Parameter, EditorRequired]
    public Func<Task<VisitSheet?>> Open { get; set; } = default!;

    /// <summary>Whether to begin at the first result that is still to come.</summary>
    [Parameter]
    public bool AtResult { get; set; }

    /// <summary>What stands between the title and the form.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    private DraftStore Drafts { get; set; } = default!;

    [Inject]
    private VisitIntake Intake { get; set; } = default!;

    [Inject]
    private VisitPhotos Photos { get; set; } = default!;

    [Inject]
    private DraftPhotos Pictures { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private ILogger<VisitHost> Logger { get; set; } = default!;

    /// <inheritdoc />
    public void Dispose() => _isGone = true;

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        var viewer = await Viewers.GetAsync();
        _me = viewer.PersonCode ?? viewer.Who;
        _sheet = await Open();
        _version = _sheet?.DraftVersion ?? 0;
        _isLoaded = true;
    }

    private string Time(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, SiteTime.Zone(_sheet!.Site.TimeZone)).ToString("HH:mm:ss", W.Culture);

    // The form keeps its draft when it is left.
    private Task AmendOther(Guid visit)
    {
        Navigation.NavigateTo($"/visits/{visit:D}/amend?at=result");
        return Task.CompletedTask;
    }

    private async Task StartOverAsync()
    {
        _startsOver = false;
        await _saving.WaitAsync();
        try
        {
            await Drafts.DiscardAsync(await Viewers.GetAsync(), _sheet!.Draft.Id, "begun on a version that was replaced");
            _sheet = await Open();
            _version = _sheet?.DraftVersion ?? 0;
            _problem = null;
        }
        finally
        {
            _saving.Release();
        }
    }

    private async Task KeepAsync(VisitDraft draft)
    {
        // A caution that was read makes no draft: nobody has entered anything.
        if (_isSending || (_version == 0 && draft.IsUntouched))
        {
            return;
        }

        await _saving.WaitAsync();
        try
        {
            // The form saves once more when it is left, which may be because the visit has been received: nothing to keep then.
            if (_isSending)
            {
                return;
            }

            var outcome = await Drafts.SaveAsync(await Viewers.GetAsync(), draft.Id, draft.Site, draft.ToJson(), _version);
            if (outcome is SaveOutcome.Saved saved)
            {
                _version = saved.Version;
                _savedAt = Clock.GetUtcNow().UtcDateTime;
                _problem = null;
            }
            else
            {
                _problem = outcome is SaveOutcome.ChangedMeanwhile ? VisitTexts.ChangedElsewhere : VisitTexts.NotAllowed;
            }
        }
        catch (Exception exception) when (exception is not SignedOutException)
        {
            // A full disk or a database that is away for a moment must not take the form with it.
            Logger.LogError(exception, "The draft of visit {Visit} was not kept", draft.Id);
            _problem = VisitTexts.NotSaved;
            if (!_isGone)
            {
                await InvokeAsync(StateHasChanged);
            }

            // The form tries again when it hears of it.
            throw;
        }
        finally
        {
            _saving.Release();
        }

        if (!_isGone)
        {
            await InvokeAsync(StateHasChanged);
        }
    }

    private async Task SendAsync(Visit visit)
    {
        if (_isSending)
        {
            return;
        }

        await _saving.WaitAsync();
        _isSending = true;
        try
        {
            var viewer = await Viewers.GetAsync();
            switch (await Intake.ReceiveAsync(viewer, visit, IntakeSource.Page))
            {
                case IntakeOutcome.Stored stored:
                    await HandOverAsync(viewer, visit);
                    await Drafts.DeleteReceivedAsync(viewer, stored.VisitId, stored.Sha256);
                    Navigation.NavigateTo($"/visits/{stored.VisitId:D}");
                    return;
                case IntakeOutcome.Refused refused:
                    _refusals = refused.Issues;
                    break;
                case IntakeOutcome.Conflict:
                    _problem = VisitTexts.Conflict;
                    break;
                default:
                    _problem = VisitTexts.NotAllowed;
                    break;
            }

            _isSending = false;
        }
        catch (Exception exception) when (exception is not SignedOutException)
        {
            Logger.LogError(exception, "Visit {Visit} was not received", visit.Id);
            _problem = VisitTexts.SendFailed;
            _isSending = false;
        }
        finally
        {
            _saving.Release();
        }
    }

    // The visit is received and says which pictures it wants; one that could not be handed over stays kept and is named on its page.
    private async Task HandOverAsync(Viewer viewer, Visit visit)
    {
        try
        {
            if (await Pictures.HandOverAsync(viewer, visit) is > 0 and var left)
            {
                Logger.LogWarning("{Left} photos of visit {Visit} were not handed over", left, visit.Id);
            }
        }
        catch (IOException exception)
        {
            Logger.LogError(exception, "The photos of visit {Visit} were not handed over", visit.Id);
        }
    }
}
