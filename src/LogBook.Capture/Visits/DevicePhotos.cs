using LogBook.Entry.Photos;

namespace LogBook.Capture.Visits;

/// <summary>Keeps the pictures of a visit on the device until the server has them.</summary>
internal sealed class DevicePhotos(Desk desk, Guid visit) : IPhotoDesk
{
    /// <inheritdoc />
    public async Task<PhotoTaken> KeepAsync(Stream content)
    {
        using var bytes = new MemoryStream();
        await content.CopyToAsync(bytes);
        var id = Guid.CreateVersion7();
        return await desk.KeepPhotoAsync(id, visit, bytes.ToArray()) is { } sha256
            ? new PhotoTaken(id, sha256, null)
            : new PhotoTaken(null, null, PhotoTexts.NoPicture);
    }

    /// <inheritdoc />
    public async Task<string?> ThumbnailAsync(Guid id) => await desk.ThumbnailAsync(id);

    /// <inheritdoc />
    public async Task RemoveAsync(Guid id) => await desk.DropPhotoAsync(id);
}
