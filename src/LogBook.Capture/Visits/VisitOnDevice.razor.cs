using System.Text.Json;
using LogBook.Capture.Summaries;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Phrases;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Capture.Visits;

/// <summary>Shows the visit form on a device: keeps its draft there and puts the closed visit into the queue.</summary>
public sealed partial class VisitOnDevice
{
    private Desk? _desk;
    private DeviceSheet? _sheet;
    private VisitDraft? _draft;
    private IReadOnlyList<Issue> _refusals = [];
    private IReadOnlyList<StandingAction> _standing = [];
    private TimeProvider _clock = TimeProvider.System;
    private DevicePhotos? _photos;
    private PhraseBook _phrases = PhraseBook.Default;
    private string _firmName = "";
    private Language _language;
    private Text? _problem;
    private ElementReference _place;
    private bool _isUntouched = true;
    private bool _isListening;
    private bool _isClosed;

    /// <summary>Code of the site.</summary>
    [Parameter]
    public string SiteCode { get; set; } = "";

    /// <summary>Identity of a kept draft; null to start one.</summary>
    [Parameter]
    public string? DraftId { get; set; }

    /// <summary>Whether <see cref="DraftId"/> names a visit to amend.</summary>
    [Parameter]
    public bool Amends { get; set; }

    /// <summary>Whether to begin at the first result that is still to come.</summary>
    [Parameter]
    public bool AtResult { get; set; }

    /// <summary>Code of the person at the tablet.</summary>
    [Parameter]
    public string Person { get; set; } = "";

    /// <summary>Code of the language: en, es or pt.</summary>
    [Parameter]
    public string LanguageCode { get; set; } = "en";

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    [Inject]
    private SummaryPdf Pdf { get; set; } = default!;

    [Inject]
    private ILogger<VisitOnDevice> Logger { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        _language = DeviceTexts.LanguageOf(LanguageCode);
        var desk = await Desk.OpenAsync(Script);
        _desk = desk;

        // Asked for at once: each answer waits for the disk, not for the others.
        var (shift, sheet, settings) = (desk.ClockShiftAsync().AsTask(), desk.SheetAsync(SiteCode).AsTask(), desk.SettingsAsync());
        var (phrases, firmName, standing) = (desk.PhrasesAsync(), desk.FirmNameAsync().AsTask(), desk.ActionsAsync(SiteCode));
        _clock = new DeviceClock(TimeSpan.FromMilliseconds(await shift), TimeProvider.System);
        _sheet = DeviceSheet.Read(await sheet, SiteCode, await settings);
        _phrases = await phrases;
        _firmName = await firmName;
        _standing = await standing;
        if (_sheet is null)
        {
            _problem = DeviceTexts.NotOnDevice;
            return;
        }

        if (await OpenAsync(desk, _sheet) is not { } draft)
        {
            _problem ??= Amends ? DeviceTexts.NoAmendment : DeviceTexts.DraftUnreadable;
            return;
        }

        if (DraftId is not null)
        {
            _refusals = JsonSerializer.Deserialize(await desk.IssuesAsync(DraftId), DeviceJson.Default.IssueArray) ?? [];
        }

        _sheet = _sheet with { Previous = [.. _sheet.Previous.Where(visit => visit.Id != draft.Id)] };
        _photos = new DevicePhotos(desk, draft.Id);

        // A visit begins with its arrival, which is kept before the first key; it goes again if none comes.
        await KeepOnDeskAsync(desk, draft, _sheet.Site.Name);
        _draft = draft;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_draft is not null && !_isListening)
        {
            _isListening = true;
            await _desk!.NoteTypingAsync(_place, _draft.Id);
        }
    }

    private async Task<VisitDraft?> OpenAsync(Desk desk, DeviceSheet sheet)
    {
        if (DraftId is null)
        {
            return VisitDraft.Start(sheet.Site, Person, _clock);
        }

        if (!Amends)
        {
            return await desk.ReadDraftAsync(DraftId);
        }

        if (sheet.Previous.FirstOrDefault(visit => visit.Id.ToString("D") == DraftId) is not { } visit || !await desk.MayAmendAsync(DraftId))
        {
            return null;
        }

        if (!await desk.HasBegunAsync(DraftId))
        {
            return VisitDraft.Amend(visit, sheet.Site);
        }

        if (await desk.ReadDraftAsync(DraftId) is not { } begun)
        {
            _problem = DeviceTexts.DraftUnreadable;
            return null;
        }

        if (begun.Amended is { } amended && (amended.Version ?? 1) == (visit.Version ?? 1))
        {
            return begun;
        }

        // Begun on a version that has been replaced since: it would undo the newer one, and a fresh one would overwrite it.
        _problem = DeviceTexts.AmendmentOutdated;
        return null;
    }

    private Task AmendOther(Guid visit) => _desk!.OpenVisitAsync(SiteCode, visit).AsTask();

    private async Task KeepAsync(VisitDraft draft)
    {
        // The form saves once more when it is left, which may be because the visit is closed: its draft is closed with it.
        if (_isClosed)
        {
            return;
        }

        try
        {
            // The desk stays open when this is left: the form's last save comes after that.
            await KeepOnDeskAsync(_desk!, draft, _sheet!.Site.Name);
            Tell(null);
        }
        catch (JSException)
        {
            Tell(DeviceTexts.NotKept);
            throw;
        }
    }

    private ValueTask KeepOnDeskAsync(Desk desk, VisitDraft draft, string siteName)
    {
        // Once something was entered, nobody need compare any more.
        _isUntouched = _isUntouched && draft.IsUntouched;
        return desk.KeepAsync(draft, siteName, _isUntouched);
    }

    private void Tell(Text? problem)
    {
        if (_problem != problem)
        {
            _problem = problem;
            StateHasChanged();
        }
    }

    private async Task<string?> SavePdfAsync(VisitSummary summary)
    {
        try
        {
            return await Pdf.SaveAsync(summary, _desk!, _clock);
        }
        catch (Exception exception) when (exception is JSException or InvalidOperationException or IOException)
        {
            // Parts that are not on the device yet, or a browser that takes no file: the form goes on without.
            Logger.LogError(exception, "The PDF of the summary was not made");
            return null;
        }
    }

    private async Task CloseAsync(Visit visit)
    {
        try
        {
            await _desk!.CloseAsync(visit, _sheet!.Site.Name, _draft!.Amended);
            _isClosed = true;
        }
        catch (JSException)
        {
            Tell(DeviceTexts.NotClosed);
        }
    }
}
