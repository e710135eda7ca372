using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Capture.Visits;

/// <summary>Reads a sheet, begins a visit and draws its first picture; nobody sees it and nothing keeps it. Ends when a form is asked for.</summary>
/// <remarks>
/// What .NET does for the first time in a browser takes it some twenty times as long as the second time, and most of it is how a record
/// becomes of its JSON, the rest how a part of the form is drawn. Here that is done before somebody waits, in pieces between which the page
/// answers: how each record is read, then a row of each kind, the whole, a draft, and one part of the form after the other.
/// </remarks>
public sealed partial class Rehearsal
{
    // The lists of a document whose rows are worth a piece of their own.
    private static readonly (string Name, Action<string> Read)[] Rows =
    [
        ("products", row => ExchangeReader.Parse<Product>(row)),
        ("sites", row => ExchangeReader.Parse<Site>(row)),
        ("systems", row => ExchangeReader.Parse<WaterSystem>(row)),
        ("visits", row => ExchangeReader.Parse<Visit>(row)),
    ];

    private readonly List<RenderFragment> _parts = [];
    private FormState? _state;

    /// <summary>Code of a site.</summary>
    [Parameter]
    public string SiteCode { get; set; } = "";

    /// <summary>What the device holds of it, as exchange document.</summary>
    [Parameter]
    public string Sheet { get; set; } = "";

    [Inject]
    private IJSRuntime Script { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        await using var runtime = await Script.InvokeAsync<IJSObjectReference>("import", "./runtime.js");
        try
        {
            foreach (var piece in Pieces())
            {
                if (!await runtime.InvokeAsync<bool>("isFree"))
                {
                    return;
                }

                piece();
            }

            _state = null;
        }
        catch (JsonException)
        {
            // The form of that site says so when it is asked for.
        }

        await runtime.InvokeVoidAsync("endRehearsal");
    }

    private IEnumerable<Action> Pieces()
    {
        foreach (var part in ExchangeJson.PartsFirst)
        {
            yield return () => ExchangeJson.Default.GetTypeInfo(part);
        }

        using var document = JsonDocument.Parse(Sheet);
        foreach (var (name, read) in Rows)
        {
            if (document.RootElement.TryGetProperty(name, out var rows) && rows.GetArrayLength() > 0)
            {
                var row = rows[0].GetRawText();
                yield return () => read(row);
            }
        }

        DeviceSheet? sheet = null;
        yield return () => sheet = DeviceSheet.Read(Sheet, SiteCode);
        if (sheet is null)
        {
            yield break;
        }

        VisitDraft? draft = null;
        yield return () => draft = VisitDraft.FromJson(VisitDraft.Start(sheet.Site, "", TimeProvider.System).ToJson());
        if (draft is null)
        {
            yield break;
        }

        yield return () => Begin(sheet, draft);
        if (_state?.Plan is not { } plan)
        {
            yield break;
        }

        _state.Step = plan.Steps[0];
        foreach (var part in PartsInTurn)
        {
            yield return () =>
            {
                _parts.Add(part);
                StateHasChanged();
            };
        }
    }

    private void Begin(DeviceSheet sheet, VisitDraft draft)
    {
        _state = new FormState(draft, sheet.Firm, sheet.Site, TimeProvider.System, static () => { }, static () => { }) { IsGradual = true, Previous = sheet.Previous };
        _state.Renew();
    }
}
