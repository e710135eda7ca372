namespace LogBook.Entry.Photos;

/// <summary>Where the host keeps pictures until their visit is sent. A host without one offers no photos.</summary>
public interface IPhotoDesk
{
    /// <summary>Keeps a picture.</summary>
    /// <param name="content">The file as chosen; read to its end or up to the host's limit.</param>
    /// <returns>What the draft remembers of it, or why it was not kept.</returns>
    Task<PhotoTaken> KeepAsync(Stream content);

    /// <summary>A small picture to show at the field.</summary>
    /// <param name="id">Identity of the photo.</param>
    /// <returns>An address for an image, or null where the picture is not here any more.</returns>
    Task<string?> ThumbnailAsync(Guid id);

    /// <summary>Throws a picture away.</summary>
    /// <param name="id">Identity of the photo.</param>
    Task RemoveAsync(Guid id);
}
