using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Rescue;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Web.Components.Parts;
using LogBook.Web.Security;
using Microsoft.AspNetCore.DataProtection;

namespace LogBook.Web.Features.Rescue;

/// <summary>Takes in what a tablet wrote into a rescue file: visits by the one way in, drafts as drafts of the supervisor.</summary>
public sealed class RescueDesk(
    VisitIntake intake, PhotoStore photos, DraftPhotos draftPhotos, RescuedDraftStore drafts, TabletKeyStore keys, IDataProtectionProvider protection, ILogger<RescueDesk> logger)
{
    /// <summary>Hands a closed visit in, with its photos. What came before is told so.</summary>
    public async Task<RescueResult> TakeVisitAsync(Viewer viewer, RescueFile file, RescueVisit visit, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return new(StateKind.Act, RescueTexts.NotAllowed, []);
        }

        switch (await intake.ReceiveAsync(viewer, visit.Document, IntakeSource.Tablet, cancellationToken))
        {
            case IntakeOutcome.Stored stored:
                var left = await KeepPhotosAsync(viewer, file, visit, cancellationToken);
                return new(
                    left.Count == 0 ? StateKind.Done : StateKind.Plan,
                    stored.AlreadyKnown ? RescueTexts.VisitBefore : RescueTexts.VisitTaken,
                    [RescueTexts.Receipt.In(viewer.Language, stored.Sha256), .. left],
                    ReadingLinks.Visit(stored.VisitId));
            case IntakeOutcome.Conflict:
                return new(StateKind.Act, RescueTexts.VisitConflict, await KeepPhotosAsync(viewer, file, visit, cancellationToken), ReadingLinks.Conflicts);
            case IntakeOutcome.Refused refused:
                return new(StateKind.Act, RescueTexts.VisitRefused, [.. refused.Issues.Select(issue => $"{issue.Path}: {issue.Message}")]);
            default:
                return new(StateKind.Act, RescueTexts.NoSite, []);
        }
    }

    /// <summary>Takes a draft in that came as text.</summary>
    public Task<RescueResult> TakeDraftAsync(Viewer viewer, RescueFile file, RescueDraft draft, CancellationToken cancellationToken = default) => draft.Text is { } text
        ? TakeAsync(viewer, file, draft, text, draft.Typed, null, cancellationToken)
        : Task.FromResult(new RescueResult(StateKind.Act, RescueTexts.StillSealed, []));

    /// <summary>Opens a sealed draft by the second key that the server keeps for its person, and takes it in.</summary>
    /// <param name="viewer">A supervisor or administrator.</param>
    /// <param name="file">The file.</param>
    /// <param name="draft">The draft.</param>
    /// <param name="why">The reason; it stands in the audit trail.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<RescueResult> OpenDraftAsync(Viewer viewer, RescueFile file, RescueDraft draft, string why, CancellationToken cancellationToken = default)
    {
        if (string.IsNullOrWhiteSpace(why))
        {
            return new(StateKind.Act, RescueTexts.ReasonNeeded, []);
        }

        var owners = await OwnersAsync(viewer, file, cancellationToken);
        foreach (var key in draft.Keys.Where(key => owners.ContainsKey(key.Id)))
        {
            if (await keys.ReleaseForRescueAsync(viewer, key.Id, why, cancellationToken) is { } kept && Unprotected(kept) is { } second
                && SealedDraft.Open(second, key.Sealed, draft) is { } opened)
            {
                return await TakeAsync(viewer, file, draft, opened.Text, opened.Typed, owners[key.Id], cancellationToken);
            }
        }

        return new(StateKind.Act, RescueTexts.NoKey, []);
    }

    /// <summary>Accounts by identity of their second key, for the keys of a file that this server keeps.</summary>
    public Task<IReadOnlyDictionary<string, string>> OwnersAsync(Viewer viewer, RescueFile file, CancellationToken cancellationToken = default) =>
        keys.OwnersAsync(viewer, [.. file.Drafts.SelectMany(draft => draft.Keys).Select(key => key.Id).Distinct(StringComparer.Ordinal)], cancellationToken);

    private async Task<RescueResult> TakeAsync(Viewer viewer, RescueFile file, RescueDraft draft, string text, string? typed, string? account, CancellationToken cancellationToken)
    {
        if (Read(text, typed) is not { } read || read.Id != draft.Id)
        {
            return new(StateKind.Act, RescueTexts.DraftUnreadable, []);
        }

        var from = new RescuedDraft(0, read.Technician, account, file.Tablet, draft.KeptAt, default, "", read.Amended is not null);
        var taken = await drafts.TakeAsync(viewer, read.Id, read.Site, read.ToJson(), from, cancellationToken);
        var isMine = taken is RescueTaken.Taken || (taken is RescueTaken.Before && (await drafts.ListAsync(viewer, cancellationToken)).Any(entry => entry.VisitId == read.Id && entry.IsMine));
        return taken switch
        {
            RescueTaken.Taken => new(StateKind.Done, RescueTexts.DraftTaken, await KeepPhotosAsync(viewer, file, draft, cancellationToken), LinkOf(read.Id, from.Amends)),
            RescueTaken.Before => new(StateKind.Done, RescueTexts.DraftBefore, isMine ? await KeepPhotosAsync(viewer, file, draft, cancellationToken) : [], isMine ? LinkOf(read.Id, from.Amends) : null),
            RescueTaken.VisitIsHere => new(StateKind.Neutral, RescueTexts.DraftNotNeeded, [], ReadingLinks.Visit(read.Id)),
            RescueTaken.OwnDraft => new(StateKind.Plan, RescueTexts.OwnDraft, [], LinkOf(read.Id, from.Amends)),
            RescueTaken.NothingToAmend => new(StateKind.Plan, RescueTexts.NothingToAmend, []),
            _ => new(StateKind.Act, RescueTexts.NoSite, []),
        };
    }

    /// <summary>Where a draft that was taken in is gone on with.</summary>
    public static string LinkOf(Guid visit, bool amends) => amends ? $"/visits/{visit:D}/amend" : $"/rescue/{visit:D}";

    // Keys that were typed after the draft was last kept belong to it, as when its person opens it on the tablet.
    private VisitDraft? Read(string text, string? typed)
    {
        try
        {
            var draft = VisitDraft.FromJson(text);
            foreach (var entry in typed is null ? [] : JsonSerializer.Deserialize<TypedEntry[]>(typed, JsonSerializerOptions.Web) ?? [])
            {
                draft.KeepTyped(entry.Key, entry.Text, entry.Unit);
            }

            return VisitDraft.FromJson(draft.ToJson());
        }
        catch (JsonException exception)
        {
            logger.LogWarning(exception, "A draft of a rescue file cannot be read");
            return null;
        }
    }

    private byte[]? Unprotected(string kept)
    {
        try
        {
            return Convert.FromBase64String(protection.CreateProtector(TabletKeyPurpose.Name).Unprotect(kept));
        }
        catch (CryptographicException)
        {
            // The key ring of the installation was lost since: the key is gone with it.
            return null;
        }
    }

    // Only what the visit names is taken; each that is not is told.
    private async Task<IReadOnlyList<string>> KeepPhotosAsync(Viewer viewer, RescueFile file, RescueVisit visit, CancellationToken cancellationToken)
    {
        var named = ExchangeReader.Parse<Visit>(visit.Document).Photos.Select(photo => photo.Id).ToHashSet();
        var left = 0;
        foreach (var photo in file.PhotosOf(visit.Id).Where(photo => named.Contains(photo.Id)))
        {
            using var content = new MemoryStream(photo.Data, writable: false);
            left += await photos.KeepAsync(viewer, photo.Id, content, cancellationToken) is PhotoOutcome.Stored or PhotoOutcome.AlreadyKnown ? 0 : 1;
        }

        return Left(viewer, left);
    }

    private async Task<IReadOnlyList<string>> KeepPhotosAsync(Viewer viewer, RescueFile file, RescueDraft draft, CancellationToken cancellationToken)
    {
        var left = 0;
        foreach (var photo in file.PhotosOf(draft.Id))
        {
            left += await draftPhotos.KeepAsync(viewer, photo.Id, photo.Data, cancellationToken) is PhotoOutcome.Stored or PhotoOutcome.AlreadyKnown ? 0 : 1;
        }

        return Left(viewer, left);
    }

    private static IReadOnlyList<string> Left(Viewer viewer, int photos) => photos == 0 ? [] : [RescueTexts.PhotosLeft.In(viewer.Language, photos.ToString(CultureInfo.InvariantCulture))];

    private sealed record TypedEntry(string Key, string Text, string? Unit);
}
