using System.Security.Cryptography;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>
/// Keeps the pictures that visits name. A picture is judged by its content, its size is read from the header before anything is
/// decoded, and what is kept is a fresh JPEG: no location, no other tags, no foreign name.
/// </summary>
/// <param name="store">The database.</param>
/// <param name="folder">Where the files go.</param>
/// <param name="clock">Now.</param>
public sealed class PhotoStore(LogBookStore store, PhotoFolder folder, TimeProvider clock)
{
    /// <summary>Largest file that is taken, bytes.</summary>
    public const int MostBytes = 10 * 1024 * 1024;

    /// <summary>Most pixels that are decoded.</summary>
    public const int MostPixels = 24_000_000;

    /// <summary>Keeps a picture.</summary>
    /// <param name="viewer">Who sends it.</param>
    /// <param name="photoId">Identity of the photo in its visit.</param>
    /// <param name="content">The file.</param>
    /// <param name="cancellationToken">Stops; nothing is kept then.</param>
    /// <returns>What became of it.</returns>
    public async Task<PhotoOutcome> KeepAsync(Viewer viewer, Guid photoId, Stream content, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits)
        {
            return PhotoOutcome.NotFound;
        }

        var found = await store.ReadAsync(
            viewer,
            db => (from photo in db.Photos
                   join visit in db.Visits on photo.VisitRowId equals visit.Id
                   join site in db.Sites on visit.SiteId equals site.Id
                   where photo.PhotoId == photoId
                   select new { photo.Id, photo.Sha256, photo.StoredAt, Site = site.Document }).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);
        if (found is null)
        {
            return PhotoOutcome.NotFound;
        }

        if (found.StoredAt is not null)
        {
            return PhotoOutcome.AlreadyKnown;
        }

        if (ExchangeReader.Parse<Site>(found.Site).PhotosAllowed == false)
        {
            return PhotoOutcome.Forbidden;
        }

        if (await Pictures.ReadAsync(content, cancellationToken) is not { } bytes)
        {
            return PhotoOutcome.TooLarge;
        }

        if (IsHash(found.Sha256) && !string.Equals(found.Sha256, Convert.ToHexStringLower(SHA256.HashData(bytes)), StringComparison.OrdinalIgnoreCase))
        {
            return PhotoOutcome.OtherHash;
        }

        var (outcome, picture) = Pictures.Remade(bytes);
        if (picture is null)
        {
            return outcome;
        }

        // The file first: a row must never name a file that is not there. A crash in between leaves a file that nobody names.
        var name = $"{Guid.CreateVersion7(clock.GetUtcNow()):N}.jpg";
        await Pictures.WriteAsync(Path.Combine(folder.Path, name), picture, cancellationToken);
        var kept = Convert.ToHexStringLower(SHA256.HashData(picture));
        return await store.WriteAsync(
            viewer,
            async db =>
            {
                var row = await db.Photos.AsTracking().SingleAsync(photo => photo.Id == found.Id, cancellationToken);
                if (row.StoredAt is not null)
                {
                    return PhotoOutcome.AlreadyKnown;
                }

                (row.StoredAt, row.FileName, row.MediaType, row.Bytes, row.FileSha256) = (Utc.Now(clock), name, "image/jpeg", picture.Length, kept);
                db.Audit(new AuditEntry(AuditActs.Received, nameof(PhotoRow), photoId.ToString("D"), row.CustomerId, New: kept));
                return PhotoOutcome.Stored;
            },
            cancellationToken);
    }

    /// <summary>A picture as a JPEG.</summary>
    /// <param name="viewer">Who looks. People who are not of the firm see what the visit names as it stands, and none of a void visit.</param>
    /// <param name="photoId">Identity of the photo in its visit.</param>
    /// <param name="small">A small one, for lists.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Null where there is none, it has not come in yet, or the viewer may not see it.</returns>
    public async Task<byte[]?> FindAsync(Viewer viewer, Guid photoId, bool small, CancellationToken cancellationToken = default)
    {
        var found = await store.ReadAsync(
            viewer,
            db => (from photo in db.Photos
                   join visit in db.Visits on photo.VisitRowId equals visit.Id
                   join version in db.VisitVersions on new { VisitRowId = visit.Id, Version = visit.CurrentVersion } equals new { version.VisitRowId, version.Version }
                   where photo.PhotoId == photoId && photo.StoredAt != null && (viewer.IsOfFirm || visit.VoidedAt == null)
                   select new { photo.FileName, version.Document }).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);
        if (found?.FileName is not { } name || (!viewer.IsOfFirm && Documents.Visit(found.Document).Photos.All(photo => photo.Id != photoId)))
        {
            return null;
        }

        var path = Path.Combine(folder.Path, name);
        if (!File.Exists(path))
        {
            return null;
        }

        var picture = await File.ReadAllBytesAsync(path, cancellationToken);
        return small ? Pictures.Small(picture) : picture;
    }

    /// <summary>Which of these photos a visit that was received names.</summary>
    internal Task<HashSet<Guid>> NamedAsync(IReadOnlyCollection<Guid> photoIds, CancellationToken cancellationToken = default) => store.ReadAsync(
        Viewer.System("photos"),
        async db => (await db.Photos.Where(photo => photoIds.Contains(photo.PhotoId)).Select(photo => photo.PhotoId).ToListAsync(cancellationToken)).ToHashSet(),
        cancellationToken);

    // Some senders put a note where the hash belongs; only a hash is compared.
    private static bool IsHash(string? text) => text is { Length: 64 } && text.All(char.IsAsciiHexDigit);
}
