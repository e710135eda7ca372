using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Closing;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;
using LogBook.Entry.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Capture.Visits;

/// <summary>Reads a closed visit back from the device; next to it, if given, what stands on the server.</summary>
public sealed partial class ClosedVisit
{
    private readonly List<ClosedPart> _parts = [];
    private Language _language;
    private Text? _problem;
    private string? _title;

    /// <summary>Code of the site.</summary>
    [Parameter]
    public string SiteCode { get; set; } = "";

    /// <summary>Identity of the visit.</summary>
    [Parameter]
    public string DraftId { get; set; } = "";

    /// <summary>Code of the language: en, es or pt.</summary>
    [Parameter]
    public string LanguageCode { get; set; } = "en";

    /// <summary>The visit as the server holds it, in the exchange format.</summary>
    [Parameter]
    public string? Other { get; set; }

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        _language = DeviceTexts.LanguageOf(LanguageCode);
        await using var desk = await Desk.OpenAsync(Script);
        if (DeviceSheet.Read(await desk.SheetAsync(SiteCode), SiteCode) is not { } sheet)
        {
            _problem = DeviceTexts.NotOnDevice;
            return;
        }

        // Not its draft: that may hold an amendment by now, or be gone.
        if (await desk.ReadClosedAsync(DraftId) is not { } closed)
        {
            _problem = DeviceTexts.ClosedUnreadable;
            return;
        }

        var here = StateOf(sheet, VisitDraft.Amend(closed, sheet.Site));
        var there = Other is null ? null : StateOf(sheet, VisitDraft.Amend(ExchangeReader.Parse<Visit>(Other), sheet.Site));
        Add(T(EntryTexts.Visit), DraftKey.Visit, here, there);
        foreach (var plan in here.Plans)
        {
            Add(plan.System.Name, DraftKey.Of(DraftKey.Systems, plan.System.Code), here, there);
        }

        _title = sheet.Site.Name;
    }

    private FormState StateOf(DeviceSheet sheet, VisitDraft draft)
    {
        var state = new FormState(draft, sheet.Firm, sheet.Site, TimeProvider.System, static () => { }, static () => { }) { Language = _language, Previous = sheet.Previous };
        state.Renew();
        return state;
    }

    private void Add(string title, string top, FormState here, FormState? there)
    {
        var other = there is null ? [] : ReadBack.Of(there, top).ToDictionary(line => line.Key);
        var own = ReadBack.Of(here, top);
        List<ClosedLine> lines =
        [
            .. own.Select(line => new ClosedLine(line.Key, line.Name, line.Value, other.TryGetValue(line.Key, out var found) ? found.Value : null)),
            .. other.Values.Where(line => own.All(mine => mine.Key != line.Key)).Select(line => new ClosedLine(line.Key, line.Name, null, line.Value)),
        ];
        if (lines.Count > 0)
        {
            _parts.Add(new(title, lines));
        }
    }

    private string T(Text text) => text.In(_language);

    private sealed record ClosedPart(string Title, IReadOnlyList<ClosedLine> Lines);

    private sealed record ClosedLine(string Key, string Name, string? Here, string? There);
}
