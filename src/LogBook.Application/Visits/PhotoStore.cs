using System.Security.Cryptography;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;
using SkiaSharp;

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

    private const int LongestSide = 2048;
    private const int Quality = 85;

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

        if (await ReadAsync(content, cancellationToken) is not { } bytes)
        {
            return PhotoOutcome.TooLarge;
        }

        if (IsHash(found.Sha256) && !string.Equals(found.Sha256, Convert.ToHexStringLower(SHA256.HashData(bytes)), StringComparison.OrdinalIgnoreCase))
        {
            return PhotoOutcome.OtherHash;
        }

        var (outcome, picture) = Remade(bytes);
        if (picture is null)
        {
            return outcome;
        }

        // The file first: a row must never name a file that is not there. A crash in between leaves a file that nobody names.
        var name = $"{Guid.CreateVersion7(clock.GetUtcNow()):N}.jpg";
        await WriteAsync(Path.Combine(folder.Path, name), picture, cancellationToken);
        return await store.WriteAsync(
            viewer,
            async db =>
            {
                var row = await db.Photos.AsTracking().SingleAsync(photo => photo.Id == found.Id, cancellationToken);
                if (row.StoredAt is not null)
                {
                    return PhotoOutcome.AlreadyKnown;
                }

                (row.StoredAt, row.FileName, row.MediaType, row.Bytes) = (Utc.Now(clock), name, "image/jpeg", picture.Length);
                db.Audit(new AuditEntry(AuditActs.Received, nameof(PhotoRow), photoId.ToString("D"), row.CustomerId));
                return PhotoOutcome.Stored;
            },
            cancellationToken);
    }

    // Some senders put a note where the hash belongs; only a hash is compared.
    private static bool IsHash(string? text) => text is { Length: 64 } && text.All(char.IsAsciiHexDigit);

    private static async Task<byte[]?> ReadAsync(Stream content, CancellationToken cancellationToken)
    {
        using var kept = new MemoryStream();
        var buffer = new byte[64 * 1024];
        int read;
        while ((read = await content.ReadAsync(buffer, cancellationToken)) > 0)
        {
            if (kept.Length + read > MostBytes)
            {
                return null;
            }

            kept.Write(buffer, 0, read);
        }

        return kept.ToArray();
    }

    private static (PhotoOutcome Outcome, byte[]? Picture) Remade(byte[] bytes)
    {
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png))
        {
            return (PhotoOutcome.NotAPicture, null);
        }

        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return (PhotoOutcome.TooManyPixels, null);
        }

        // A JPEG is decoded small at once; a PNG can only be decoded whole.
        var size = codec.GetScaledDimensions(Math.Min(1f, (float)LongestSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            return (PhotoOutcome.NotAPicture, null);
        }

        using var upright = Upright(bitmap, codec.EncodedOrigin);
        using var encoded = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return (PhotoOutcome.Stored, encoded.ToArray());
    }

    // The turn stood in a tag that is not kept.
    private static SKImage Upright(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(bitmap.Width, bitmap.Height));
        var (width, height) = ((int)Math.Round(bitmap.Width * scale), (int)Math.Round(bitmap.Height * scale));
        var turned = origin is SKEncodedOrigin.RightTop or SKEncodedOrigin.LeftBottom;
        using var surface = SKSurface.Create(new SKImageInfo(turned ? height : width, turned ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        switch (origin)
        {
            case SKEncodedOrigin.BottomRight:
                canvas.RotateDegrees(180, width / 2f, height / 2f);
                break;
            case SKEncodedOrigin.RightTop:
                canvas.Translate(height, 0);
                canvas.RotateDegrees(90);
                break;
            case SKEncodedOrigin.LeftBottom:
                canvas.Translate(0, width);
                canvas.RotateDegrees(-90);
                break;
        }

        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return surface.Snapshot();
    }

    private static async Task WriteAsync(string path, byte[] picture, CancellationToken cancellationToken)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var half = path + ".part";
        await using (var file = new FileStream(half, FileMode.CreateNew, FileAccess.Write))
        {
            await file.WriteAsync(picture, cancellationToken);
            file.Flush(flushToDisk: true);
        }

        File.Move(half, path);
    }
}
