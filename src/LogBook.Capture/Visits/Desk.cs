using System.Text.Json;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Phrases;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Phrases;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Capture.Visits;

/// <summary>The device's store, as the form sees it: wwwroot/desk.js does the work.</summary>
internal sealed class Desk(IJSObjectReference script) : IAsyncDisposable
{
    /// <summary>Opens the desk.</summary>
    public static async Task<Desk> OpenAsync(IJSRuntime runtime) => new(await runtime.InvokeAsync<IJSObjectReference>("import", "./desk.js"));

    /// <summary>Set-up and last visits of a site as one exchange document; null when this device has none.</summary>
    public ValueTask<string?> SheetAsync(string site) => script.InvokeAsync<string?>("sheet", site);

    /// <summary>The firm's own quick phrases, and the built-in ones.</summary>
    public async Task<PhraseBook> PhrasesAsync()
    {
        try
        {
            return new PhraseBook(QuickPhrases.Read(await script.InvokeAsync<string>("phrases")));
        }
        catch (Exception exception) when (exception is JsonException or JSException)
        {
            // A visit is worth more than a phrase: without them the built-in ones are there.
            return PhraseBook.Default;
        }
    }

    /// <summary>The thresholds that the firm has set, and the defaults.</summary>
    public async Task<EngineSettings> SettingsAsync()
    {
        try
        {
            return EngineSettings.Of(JsonSerializer.Deserialize(await script.InvokeAsync<string>("settings"), DeviceJson.Default.EngineSettingChangeArray) ?? []);
        }
        catch (Exception exception) when (exception is JsonException or JSException)
        {
            // A visit is worth more than a threshold: the defaults are there, and the server judges by the firm's own.
            return EngineSettings.Default;
        }
    }

    /// <summary>Actions of a site that no visit has closed.</summary>
    public async Task<IReadOnlyList<StandingAction>> ActionsAsync(string site)
    {
        try
        {
            return [.. (JsonSerializer.Deserialize(await script.InvokeAsync<string>("actions", site), DeviceJson.Default.DeviceActionArray) ?? []).Select(action => action.Read())];
        }
        catch (Exception exception) when (exception is JsonException or JSException)
        {
            // A visit is worth more than what older ones asked for: those of the last visits are there.
            return [];
        }
    }

    /// <summary>Name of the service firm; empty before the first round with it was brought.</summary>
    public ValueTask<string> FirmNameAsync() => script.InvokeAsync<string>("firmName");

    /// <summary>Hands a file to the browser, as a download.</summary>
    public ValueTask SaveFileAsync(string name, string type, byte[] content) => script.InvokeVoidAsync("saveFile", name, type, content);

    /// <summary>By how many milliseconds the server's clock is ahead of the device's.</summary>
    public ValueTask<double> ClockShiftAsync() => script.InvokeAsync<double>("shift");

    /// <summary>A kept draft with the keys that were typed after it was kept; null when there is none that can be read.</summary>
    public async Task<VisitDraft?> ReadDraftAsync(string id)
    {
        try
        {
            if (await script.InvokeAsync<string?>("draft", id) is not { } json)
            {
                return null;
            }

            var draft = VisitDraft.FromJson(json);
            foreach (var typed in JsonSerializer.Deserialize(await script.InvokeAsync<string>("typed", id), DeviceJson.Default.TypedTextArray) ?? [])
            {
                draft.KeepTyped(typed.Key, typed.Text, typed.Unit);
            }

            // Reading it again makes entries of the keys.
            return VisitDraft.FromJson(draft.ToJson());
        }
        catch (Exception exception) when (exception is JsonException or JSException)
        {
            // Left where it is: a newer LogBook may read it, or the person whose key it is sealed with.
            return null;
        }
    }

    /// <summary>Whether a visit may be opened again to amend it; makes room for the amendment.</summary>
    public ValueTask<bool> MayAmendAsync(string id) => script.InvokeAsync<bool>("mayAmend", id);

    /// <summary>Whether a draft is begun under this identity, whether or not it can be read.</summary>
    public ValueTask<bool> HasBegunAsync(string id) => script.InvokeAsync<bool>("hasBegun", id);

    /// <summary>A closed visit as it was or will be sent; null when there is none that can be read.</summary>
    public async Task<Visit?> ReadClosedAsync(string id)
    {
        try
        {
            return await script.InvokeAsync<string?>("closedText", id) is { } json ? ExchangeReader.Parse<Visit>(json) : null;
        }
        catch (Exception exception) when (exception is JsonException or JSException)
        {
            // Left where it is: it may still be sent, or read by a newer LogBook.
            return null;
        }
    }

    /// <summary>Goes to the amendment of another visit.</summary>
    public ValueTask OpenVisitAsync(string site, Guid id) => script.InvokeVoidAsync("openVisit", site, id.ToString("D"));

    /// <summary>Lets the device note the keys of the form by itself.</summary>
    public ValueTask NoteTypingAsync(ElementReference place, Guid visit) => script.InvokeVoidAsync("noteTyping", place, visit.ToString("D"));

    /// <summary>What the server found in a visit that it refused, as JSON.</summary>
    public ValueTask<string> IssuesAsync(string id) => script.InvokeAsync<string>("issues", id);

    /// <summary>Keeps a draft; it is on the device when this returns.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="siteName">Name of its site.</param>
    /// <param name="untouched">Whether nobody has entered anything: it goes when the form is left.</param>
    public ValueTask KeepAsync(VisitDraft draft, string siteName, bool untouched) =>
        script.InvokeVoidAsync("keep", draft.Id.ToString("D"), draft.Site, siteName, draft.ToJson(), untouched);

    /// <summary>Puts a closed visit into the queue.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="siteName">Name of its site.</param>
    /// <param name="amended">What it amends: photos of that are on the server.</param>
    public ValueTask CloseAsync(Visit visit, string siteName, Visit? amended)
    {
        var complete = VisitDocument.WithIds(visit);
        string[] photos = [.. complete.Photos.Select(photo => photo.Id).Except(amended?.Photos.Select(photo => photo.Id) ?? []).Select(id => id.ToString("D"))];
        return script.InvokeVoidAsync("close", complete.Id.ToString("D"), complete.Version ?? 1, complete.Site, siteName, VisitDocument.Canonical(complete), photos);
    }

    /// <summary>Keeps a picture; its hash, or null when it is none.</summary>
    public ValueTask<string?> KeepPhotoAsync(Guid id, Guid visit, byte[] content) => script.InvokeAsync<string?>("keepPhoto", id.ToString("D"), visit.ToString("D"), content);

    /// <summary>Address of a small picture.</summary>
    public ValueTask<string?> ThumbnailAsync(Guid id) => script.InvokeAsync<string?>("thumbnail", id.ToString("D"));

    /// <summary>Throws a picture away.</summary>
    public ValueTask DropPhotoAsync(Guid id) => script.InvokeVoidAsync("dropPhoto", id.ToString("D"));

    /// <inheritdoc />
    public ValueTask DisposeAsync() => script.DisposeAsync();
}
