using LogBook.Application.Visits;
using LogBook.Entry.Photos;
using LogBook.Web.Account;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Keeps the pictures of the visit form on the server until the visit is received.</summary>
public sealed class VisitPhotos(DraftPhotos photos, ViewerProvider viewers) : IPhotoDesk
{
    /// <inheritdoc />
    public async Task<PhotoTaken> KeepAsync(Stream content)
    {
        var (outcome, id, sha256) = await photos.KeepAsync(await viewers.GetAsync(), content);
        return outcome switch
        {
            PhotoOutcome.Stored => new PhotoTaken(id, sha256, null),
            PhotoOutcome.TooLarge or PhotoOutcome.TooManyPixels => new PhotoTaken(null, null, PhotoTexts.TooLarge),
            PhotoOutcome.NotAPicture => new PhotoTaken(null, null, PhotoTexts.NoPicture),
            _ => new PhotoTaken(null, null, PhotoTexts.Failed),
        };
    }

    /// <inheritdoc />
    public async Task<string?> ThumbnailAsync(Guid id) =>
        await photos.ThumbnailAsync(await viewers.GetAsync(), id) is { } small ? "data:image/jpeg;base64," + Convert.ToBase64String(small) : null;

    /// <inheritdoc />
    public async Task RemoveAsync(Guid id) => photos.Remove(await viewers.GetAsync(), id);
}
