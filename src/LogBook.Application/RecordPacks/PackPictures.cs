using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using LogBook.Application.DueLists;
using LogBook.Application.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>Puts the pictures of a pack into its zip, one after the other: at most one is held in memory.</summary>
internal sealed class PackPictures(PhotoFolder folder)
{
    public const string Folder = "photos";

    private const int LongestName = 60;

    /// <summary>Writes the pictures that come along.</summary>
    /// <returns>Every photo as it came out: with its place and hash, or with the reason why its picture is not in the pack.</returns>
    public async Task<IReadOnlyList<PackPhoto>> WriteAsync(RecordPack pack, ZipArchive zip, IProgress<double>? progress, CancellationToken cancellationToken)
    {
        var days = pack.Visits.ToDictionary(visit => visit.Visit.Id, visit => SitesQuery.DayIn(pack.Zone, visit.Visit.Arrived.Utc));
        var places = new Dictionary<Guid, int>();
        var written = new List<PackPhoto>(pack.Photos.Count);
        foreach (var photo in pack.Photos)
        {
            var place = places[photo.Visit] = places.GetValueOrDefault(photo.Visit) + 1;
            written.Add(photo.State == PackPhotoState.Included ? await WriteAsync(photo, NameOf(photo, days[photo.Visit], place), pack.MadeAt, zip, cancellationToken) : photo);
            progress?.Report((double)written.Count / pack.Photos.Count);
        }

        return written;
    }

    private async Task<PackPhoto> WriteAsync(PackPhoto photo, string name, DateTime madeAt, ZipArchive zip, CancellationToken cancellationToken)
    {
        var file = new FileInfo(Path.Combine(folder.Path, photo.StoredAs ?? ""));
        if (!file.Exists)
        {
            return photo with { State = PackPhotoState.Lost };
        }

        if (file.Length != photo.Bytes)
        {
            return photo with { State = PackPhotoState.Damaged };
        }

        // Whole: what went into a zip does not come out again, so the hash must be known before.
        var picture = await File.ReadAllBytesAsync(file.FullName, cancellationToken);
        var hash = Convert.ToHexStringLower(SHA256.HashData(picture));
        if (photo.KeptSha256 is { } kept && kept != hash)
        {
            return photo with { State = PackPhotoState.Damaged };
        }

        // A JPEG does not shrink any more.
        var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = new DateTimeOffset(madeAt, TimeSpan.Zero);
        await using var to = await entry.OpenAsync(cancellationToken);
        await to.WriteAsync(picture, cancellationToken);
        return photo with { File = name, FileSha256 = hash };
    }

    // By visit and field. What a sender wrote as field becomes letters, digits and dashes: a name leads nowhere and means nothing to a shell or a workbook.
    private static string NameOf(PackPhoto photo, DateOnly day, int place)
    {
        var field = RecordPackMaker.FileSafe(photo.Of).Trim('-');
        return string.Create(CultureInfo.InvariantCulture, $"{Folder}/{day:yyyy-MM-dd}_{photo.Visit:D}/{place:00}_{(field.Length > LongestName ? field[..LongestName] : field)}.jpg");
    }
}
