using LogBook.Application.Data;
using LogBook.Application.MoveIn;
using LogBook.Application.Sites;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Web.Account;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace LogBook.Web.Features.SetUp.MoveIn;

/// <summary>A spreadsheet on its way in. All of it stays on the page until it is handed to the intake.</summary>
public partial class MoveInPage
{
    private const int Shown = 40;
    private const int Few = 10;
    private const string Template = "/setup/move-in/template.xlsx";

    private readonly Dictionary<string, string> _answers = new(StringComparer.Ordinal);
    private readonly Stack<string> _given = new();
    private IReadOnlyList<MoveInSheet> _sheets = [];
    private IReadOnlyList<Issue> _refusals = [];
    private MoveInMapping _mapping = new();
    private MoveInResult? _result;
    private string? _fileName;
    private string? _problem;
    private string? _said;
    private string _name = "";
    private bool _isBusy;
    private bool _isMoving;

    [Inject]
    private MoveInDesk Desk { get; set; } = default!;

    [Inject]
    private MappingStore Mappings { get; set; } = default!;

    [Inject]
    private SetUpStore Store { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task<Opened?> ReadAsync(Viewer viewer, CancellationToken cancellationToken) => !MoveInDesk.MayMoveIn(viewer)
        ? null
        : new Opened(await Store.FirmAsync(viewer, withRetired: true, cancellationToken: cancellationToken), await Mappings.ListAsync(viewer, cancellationToken));

    private static DateOnly DayOf(MoveInVisit made) => DateOnly.FromDateTime(made.Visit.Arrived.Wall);

    private Task OpenAsync(InputFileChangeEventArgs chosen) => BusyAsync(async () =>
    {
        (_result, _fileName, _sheets) = (null, chosen.File.Name, []);
        _answers.Clear();
        _given.Clear();
        if (chosen.File.Size > MoveInReader.MostBytes)
        {
            _problem = W[MoveInTexts.TooLarge, MoveInReader.MostBytes / 1024 / 1024];
            return;
        }

        using var bytes = new MemoryStream();
        await using (var stream = chosen.File.OpenReadStream(MoveInReader.MostBytes))
        {
            await stream.CopyToAsync(bytes);
        }

        (_sheets, _problem) = await Task.Run(() => MoveInReader.Read(chosen.File.Name, bytes.ToArray(), W.Language));
        if (_problem is not null)
        {
            return;
        }

        // Who moves a file in seldom made its visits: the technician is said by a person, not taken to be the viewer.
        _mapping = MappingStore.Best(Model!.Mappings, _sheets) ?? new MoveInMapping();
        _name = _mapping.Name.Length > 0 ? _mapping.Name : Path.GetFileNameWithoutExtension(chosen.File.Name);
        _said = _mapping.Name.Length > 0 ? W[MoveInPageTexts.KeptFits, _mapping.Name] : null;
        await WorkOutAsync();
    });

    private Task UseAsync(ChangeEventArgs e) => ChangeAsync(Model!.Mappings.FirstOrDefault(mapping => mapping.Name == e.Value?.ToString()) ?? new MoveInMapping { Technician = _mapping.Technician });

    private Task PlaceAsync(string sheet, object? site) => ChangeAsync(_mapping with { Sites = With(_mapping.Sites, sheet, site?.ToString() ?? "") });

    private Task PersonAsync(ChangeEventArgs e) => ChangeAsync(_mapping with { Technician = e.Value?.ToString() is { Length: > 0 } code ? code : null });

    private Task SayAsync((string Key, ColumnMeaning Meaning) said) => ChangeAsync(_mapping with { Columns = With(_mapping.Columns, said.Key, said.Meaning) });

    private Task ChangeAsync(MoveInMapping mapping)
    {
        _mapping = mapping;
        return BusyAsync(WorkOutAsync);
    }

    private Task AnswerAsync(string id, string answer) => BusyAsync(async () =>
    {
        _answers[id] = answer;
        _given.Push(id);
        await WorkOutAsync();
    });

    private Task UndoAsync() => BusyAsync(async () =>
    {
        if (_given.TryPop(out var id))
        {
            _answers.Remove(id);
            await WorkOutAsync();
        }
    });

    // Whose it is, is asked before each act: what a person may do can change while the page stands open.
    private async Task WorkOutAsync() => _result = await Desk.WorkOutAsync(await Viewers.GetAsync(), _fileName!, _sheets, _mapping, new Dictionary<string, string>(_answers, StringComparer.Ordinal));

    private Task KeepAsync() => BusyAsync(async () =>
    {
        // What was guessed and looked at is kept as said.
        var kept = _mapping with { Name = _name, Columns = _result!.Columns.ToDictionary(column => column.Key, column => column.Meaning, StringComparer.Ordinal) };
        switch (await Mappings.SaveAsync(await Viewers.GetAsync(), kept))
        {
            case SaveOutcome.Saved:
                (_mapping, _said) = (kept with { Name = _name.Trim() }, W[MoveInPageTexts.WasKept, _name.Trim()]);
                await ReloadAsync();
                await WorkOutAsync();
                break;
            case SaveOutcome.Invalid invalid:
                _problem = invalid.Issues[0].Message;
                break;
            default:
                _problem = W[MoveInTexts.NotAllowed];
                break;
        }
    });

    private Task MoveAsync(bool keepStored) => BusyAsync(async () =>
    {
        _isMoving = true;
        StateHasChanged();
        var viewer = await Viewers.GetAsync();
        var outcome = await Task.Run(() => Desk.MoveAsync(viewer, _result!, keepStored));
        if (keepStored && MoveInDesk.AreAllStored(outcome.Issues))
        {
            (_said, _result, _fileName) = (W[MoveInPageTexts.MovedOthers, outcome.Visits, outcome.AlreadyKnown, outcome.Issues.Count], null, null);
        }
        else if (outcome.Issues.Count > 0)
        {
            (_problem, _refusals) = (W[MoveInPageTexts.Refused], outcome.Issues);
        }
        else
        {
            (_said, _result, _fileName) = (W[MoveInPageTexts.Moved, outcome.Visits, outcome.AlreadyKnown], null, null);
        }
    });

    private async Task BusyAsync(Func<Task> act)
    {
        if (_isBusy)
        {
            return;
        }

        (_isBusy, _problem, _said, _refusals) = (true, null, null, []);
        try
        {
            await act();
        }
        finally
        {
            (_isBusy, _isMoving) = (false, false);
        }
    }

    private static Dictionary<string, T> With<T>(IReadOnlyDictionary<string, T> known, string key, T value) => new(known, StringComparer.Ordinal) { [key] = value };

    /// <summary>What the page needs from the start.</summary>
    public sealed record Opened(FirmSetUp Firm, IReadOnlyList<MoveInMapping> Mappings);
}
