using LogBook.Application.Data;
using LogBook.Application.Rescue;
using LogBook.Domain.Languages;
using LogBook.Web.Account;
using LogBook.Web.Components.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace LogBook.Web.Features.Rescue;

/// <summary>A rescue file on its way in. It is read whole before anything of it is taken.</summary>
public partial class RescuePage
{
    // A visit and the draft that amends it have one identity.
    private readonly Dictionary<Guid, RescueResult> _visits = [];
    private readonly Dictionary<Guid, RescueResult> _drafts = [];
    private readonly Dictionary<Guid, string> _whys = [];
    private readonly RescueParts _parts = new();
    private IReadOnlyDictionary<string, string> _owners = new Dictionary<string, string>(StringComparer.Ordinal);
    private RescueFile? _file;
    private Text? _said;
    private string? _problem;
    private string _why = "";
    private Guid? _discarding;
    private bool _isBusy;
    private bool _isTaking;

    [Inject]
    private RescueDesk Desk { get; set; } = default!;

    [Inject]
    private RescuedDraftStore Drafts { get; set; } = default!;

    [Inject]
    private ILogger<RescuePage> Logger { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task<Opened?> ReadAsync(Viewer viewer, CancellationToken cancellationToken) =>
        viewer.MayReview ? new Opened(await Drafts.ListAsync(viewer, cancellationToken)) : null;

    private string Time(DateTimeOffset? moment) => moment is { } at ? Shown.DayAndTime(at.UtcDateTime, TimeZoneInfo.Utc, W.Language) : "–";

    private Task OpenAsync(InputFileChangeEventArgs chosen) => BusyAsync(async () =>
    {
        _file = null;
        _visits.Clear();
        _drafts.Clear();
        _whys.Clear();
        if (chosen.File.Size > RescueReader.MostBytes)
        {
            _problem = W[RescueFileTexts.TooLarge, RescueReader.MostBytes / 1024 / 1024];
            return;
        }

        using var bytes = new MemoryStream();
        await using (var stream = chosen.File.OpenReadStream(RescueReader.MostBytes))
        {
            await stream.CopyToAsync(bytes);
        }

        var (file, problem) = await Task.Run(() => RescueReader.Read(bytes.ToArray()));
        _problem = problem is null ? null : W[problem];
        if (file is not null)
        {
            _owners = await Desk.OwnersAsync(await Viewers.GetAsync(), file);
            _file = file;
        }
    });

    // Visits first: a draft whose visit comes in by that is not needed, and an amendment needs what it amends.
    private Task TakeAsync() => TakingAsync(async (viewer, file) =>
    {
        foreach (var visit in file.Visits)
        {
            _visits[visit.Id] = await Desk.TakeVisitAsync(viewer, file, visit);
            StateHasChanged();
        }

        foreach (var draft in file.Drafts.Where(draft => draft.Text is not null))
        {
            _drafts[draft.Id] = await Desk.TakeDraftAsync(viewer, file, draft);
            StateHasChanged();
        }

        _said = RescueTexts.Done;
    });

    private Task OpenSealedAsync(RescueDraft draft) => TakingAsync(async (viewer, file) =>
    {
        _drafts[draft.Id] = await Desk.OpenDraftAsync(viewer, file, draft, _whys.GetValueOrDefault(draft.Id) ?? "");
    });

    private Task TakingAsync(Func<Viewer, RescueFile, Task> take) => BusyAsync(async () =>
    {
        _isTaking = true;
        StateHasChanged();
        try
        {
            await take(await Viewers.GetAsync(), _file!);
            if (_file!.Visits.All(visit => _visits.ContainsKey(visit.Id)) && _file.Drafts.All(draft => _drafts.ContainsKey(draft.Id)))
            {
                _parts.TakeIn(_file);
            }
        }
        catch (Exception exception) when (exception is not SignedOutException)
        {
            // Each visit and draft is whole or not there; the file may be taken in again.
            Logger.LogError(exception, "A rescue file was not taken in to its end");
            _problem = W[RescueTexts.Failed];
        }

        await ReloadAsync();
    });

    private void Ask(Guid? visit) => (_discarding, _why, _problem) = (visit, "", null);

    private Task DiscardAsync() => BusyAsync(async () =>
    {
        if (_discarding is not { } visit)
        {
            return;
        }

        if (string.IsNullOrWhiteSpace(_why))
        {
            _problem = W[RescueTexts.ReasonNeeded];
            return;
        }

        if (await Drafts.DiscardAsync(await Viewers.GetAsync(), visit, _why))
        {
            _said = RescueTexts.Discarded;
            _drafts.Remove(visit);
        }
        else
        {
            _problem = W[RescueTexts.NotDiscarded];
        }

        _discarding = null;
        await ReloadAsync();
    });

    private async Task BusyAsync(Func<Task> act)
    {
        if (_isBusy)
        {
            return;
        }

        (_isBusy, _problem, _said) = (true, null, null);
        try
        {
            await act();
        }
        finally
        {
            (_isBusy, _isTaking) = (false, false);
        }
    }

    private bool IsTaken(Guid id) => _drafts.TryGetValue(id, out var result) && result.Kind is StateKind.Done or StateKind.Neutral;

    private string? OwnerOf(RescueDraft draft) => draft.Keys.Select(key => _owners.GetValueOrDefault(key.Id)).FirstOrDefault(owner => owner is not null);

    /// <summary>What the page shows from the start.</summary>
    public sealed record Opened(IReadOnlyList<RescuedEntry> Pending);
}
