using System.Globalization;
using System.Security.Cryptography;
using LogBook.Application.Data;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>Pictures of visits that are still being written: each account has its own, kept clean of tags from the start.</summary>
public sealed class DraftPhotos(PhotoFolder folder, PhotoStore photos, TimeProvider clock)
{
    /// <summary>Keeps a picture.</summary>
    /// <returns>What became of it; where it is kept, its new identity and the hash of what is kept.</returns>
    public async Task<(PhotoOutcome Outcome, Guid Id, string Sha256)> KeepAsync(Viewer viewer, Stream content, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits || viewer.UserId is null)
        {
            return (PhotoOutcome.NotFound, default, "");
        }

        if (await Pictures.ReadAsync(content, cancellationToken) is not { } bytes)
        {
            return (PhotoOutcome.TooLarge, default, "");
        }

        var (outcome, picture) = Pictures.Remade(bytes);
        if (picture is null)
        {
            return (outcome, default, "");
        }

        var id = Guid.CreateVersion7(clock.GetUtcNow());
        await Pictures.WriteAsync(PathOf(viewer, id), picture, cancellationToken);
        return (PhotoOutcome.Stored, id, Convert.ToHexStringLower(SHA256.HashData(picture)));
    }

    /// <summary>Keeps a picture under the identity that its draft already names, byte for byte: its hash stands in the draft.</summary>
    /// <returns>What became of it.</returns>
    public async Task<PhotoOutcome> KeepAsync(Viewer viewer, Guid id, byte[] picture, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits || viewer.UserId is null)
        {
            return PhotoOutcome.NotFound;
        }

        if (File.Exists(PathOf(viewer, id)))
        {
            return PhotoOutcome.AlreadyKnown;
        }

        // What the visit keeps of it in the end is made anew, without tags.
        if (picture.Length > PhotoStore.MostBytes || Pictures.Remade(picture) is { Picture: null })
        {
            return PhotoOutcome.NotAPicture;
        }

        await Pictures.WriteAsync(PathOf(viewer, id), picture, cancellationToken);
        return PhotoOutcome.Stored;
    }

    /// <summary>A small JPEG of a picture; null where the viewer keeps none under this identity.</summary>
    public async Task<byte[]?> ThumbnailAsync(Viewer viewer, Guid id, CancellationToken cancellationToken = default) =>
        viewer.UserId is not null && File.Exists(PathOf(viewer, id)) ? Pictures.Small(await File.ReadAllBytesAsync(PathOf(viewer, id), cancellationToken)) : null;

    /// <summary>Throws a picture away.</summary>
    public void Remove(Viewer viewer, Guid id)
    {
        // A missing file is nothing to delete; a missing folder would be an error.
        if (viewer.UserId is not null && File.Exists(PathOf(viewer, id)))
        {
            File.Delete(PathOf(viewer, id));
        }
    }

    /// <summary>
    /// Throws away the pictures of a draft that was thrown away. One that a received visit names stays: it is on its way to that visit.
    /// </summary>
    /// <param name="userId">Whose draft it was.</param>
    /// <param name="document">The draft as its form wrote it: it names its pictures by their identity.</param>
    /// <param name="cancellationToken">Stops.</param>
    internal async Task RemoveOfAsync(int userId, string document, CancellationToken cancellationToken = default)
    {
        var kept = Directory.Exists(FolderOf(userId)) ? Directory.EnumerateFiles(FolderOf(userId), "*.jpg").Select(Path.GetFileNameWithoutExtension) : [];
        var named = kept.Select(name => Guid.TryParseExact(name, "N", out var id) ? id : Guid.Empty)
            .Where(id => id != Guid.Empty && document.Contains(id.ToString("D"), StringComparison.OrdinalIgnoreCase)).ToList();
        if (named.Count == 0)
        {
            return;
        }

        var wanted = await photos.NamedAsync(named, cancellationToken);
        foreach (var id in named.Where(id => !wanted.Contains(id)))
        {
            File.Delete(PathOf(userId, id));
        }
    }

    /// <summary>Hands the pictures of a visit that was received over to it; one that fails stays and is handed over when asked again.</summary>
    /// <returns>How many of the visit's photos are still kept here.</returns>
    public async Task<int> HandOverAsync(Viewer viewer, Visit visit, CancellationToken cancellationToken = default)
    {
        var left = 0;
        foreach (var photo in visit.Photos.Where(photo => viewer.UserId is not null && File.Exists(PathOf(viewer, photo.Id))))
        {
            PhotoOutcome outcome;
            await using (var content = File.OpenRead(PathOf(viewer, photo.Id)))
            {
                outcome = await photos.KeepAsync(viewer, photo.Id, content, cancellationToken);
            }

            if (outcome is PhotoOutcome.Stored or PhotoOutcome.AlreadyKnown)
            {
                Remove(viewer, photo.Id);
            }
            else
            {
                left++;
            }
        }

        return left;
    }

    /// <summary>
    /// Hands over what an earlier hand-over left: pictures in the drafts of any account whose visit has been received since. What belongs
    /// to no visit yet is left alone.
    /// </summary>
    /// <param name="viewer">The program itself.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>How many came to their visits.</returns>
    public async Task<int> HandOverLeftAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        var drafts = Path.Combine(folder.Path, "drafts");
        var done = 0;
        foreach (var path in Directory.Exists(drafts) ? Directory.EnumerateFiles(drafts, "*.jpg", SearchOption.AllDirectories).ToList() : [])
        {
            if (!Guid.TryParseExact(Path.GetFileNameWithoutExtension(path), "N", out var id))
            {
                continue;
            }

            PhotoOutcome outcome;
            await using (var content = File.OpenRead(path))
            {
                outcome = await photos.KeepAsync(viewer, id, content, cancellationToken);
            }

            if (outcome is PhotoOutcome.Stored or PhotoOutcome.AlreadyKnown)
            {
                File.Delete(path);
                done++;
            }
        }

        return done;
    }

    private string PathOf(Viewer viewer, Guid id) => PathOf(viewer.UserId!.Value, id);

    private string PathOf(int userId, Guid id) => Path.Combine(FolderOf(userId), $"{id:N}.jpg");

    private string FolderOf(int userId) => Path.Combine(folder.Path, "drafts", userId.ToString(CultureInfo.InvariantCulture));
}
