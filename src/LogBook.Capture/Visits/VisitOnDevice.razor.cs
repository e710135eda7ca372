using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Photos;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Capture.Visits;

/// <summary>Shows the visit form on a device: keeps its draft there and puts the closed visit into the queue.</summary>
public sealed partial class VisitOnDevice : IAsyncDisposable
{
    private Desk? _desk;
    private FirmSetUp _firm = FirmSetUp.Empty;
    private Site? _site;
    private IReadOnlyList<Visit> _previous = [];
    private VisitDraft? _draft;
    private IReadOnlyList<Issue> _refusals = [];
    private TimeProvider _clock = TimeProvider.System;
    private DevicePhotos? _photos;
    private Language _language;
    private Text? _problem;
    private ElementReference _place;
    private bool _isListening;
    private bool _isClosed;

    /// <summary>Code of the site.</summary>
    [Parameter]
    public string SiteCode { get; set; } = "";

    /// <summary>Identity of a kept draft; null to start one.</summary>
    [Parameter]
    public string? DraftId { get; set; }

    /// <summary>Code of the person at the tablet.</summary>
    [Parameter]
    public string Person { get; set; } = "";

    /// <summary>Code of the language: en, es or pt.</summary>
    [Parameter]
    public string LanguageCode { get; set; } = "en";

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (_desk is not null)
        {
            await _desk.DisposeAsync();
        }
    }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        _language = LanguageCode switch
        {
            "es" => Language.Spanish,
            "pt" => Language.Portuguese,
            _ => Language.English,
        };
        var desk = await Desk.OpenAsync(Script);
        _desk = desk;
        _clock = new DeviceClock(TimeSpan.FromMilliseconds(await desk.ClockShiftAsync()));
        if (await desk.SheetAsync(SiteCode) is not { } sheet || !ReadSheet(sheet))
        {
            _problem = DeviceTexts.NotOnDevice;
            return;
        }

        var draft = DraftId is null ? VisitDraft.Start(_site!, Person, _clock) : await ReadDraftAsync(desk, DraftId);
        if (draft is null)
        {
            _problem = DeviceTexts.DraftUnreadable;
            return;
        }

        if (DraftId is not null)
        {
            _refusals = JsonSerializer.Deserialize(await desk.IssuesAsync(DraftId), DeviceJson.Default.IssueArray) ?? [];
        }

        _previous = [.. _previous.Where(visit => visit.Id != draft.Id)];
        _photos = new DevicePhotos(desk, draft.Id);

        // A visit begins with its arrival, which is kept before the first key.
        await desk.KeepAsync(draft, _site!.Name);
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

    private static async Task<VisitDraft?> ReadDraftAsync(Desk desk, string id)
    {
        try
        {
            if (await desk.DraftAsync(id) is not { } json)
            {
                return null;
            }

            var draft = VisitDraft.FromJson(json);
            foreach (var typed in JsonSerializer.Deserialize(await desk.TypedAsync(id), DeviceJson.Default.TypedTextArray) ?? [])
            {
                draft.KeepTyped(typed.Key, typed.Text, typed.Unit);
            }

            // Reading it again makes entries of the keys.
            return VisitDraft.FromJson(draft.ToJson());
        }
        catch (JsonException)
        {
            // Left where it is: a newer LogBook may read it.
            return null;
        }
    }

    // What the server wrote is not judged again here; a visit that it keeps may be older than today's rules.
    private bool ReadSheet(string sheet)
    {
        var document = ExchangeReader.Parse<ExchangeDocument>(sheet);
        _firm = new FirmSetUp(document);
        _site = _firm.Sites.GetValueOrDefault(SiteCode);
        _previous = [.. document.Visits.OrderBy(visit => visit.Arrived.Utc)];
        return _site is not null;
    }

    private async Task KeepAsync(VisitDraft draft)
    {
        // The form saves once more when it is left, which may be because the visit is closed: its draft is closed with it.
        if (!_isClosed)
        {
            await _desk!.KeepAsync(draft, _site!.Name);
        }
    }

    private async Task CloseAsync(Visit visit)
    {
        await _desk!.CloseAsync(visit, _site!.Name);
        _isClosed = true;
    }
}
