using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>Makes the file of a record pack: a PDF, a workbook with the same content, the pictures, and the SHA-256 checksums of all of them.</summary>
/// <param name="folder">Where the pictures lie.</param>
public sealed class RecordPackMaker(PhotoFolder folder)
{
    /// <summary>Name of the list of checksums; <c>sha256sum -c</c> reads it.</summary>
    public const string Checksums = "SHA256SUMS.txt";

    // Share of the work after the pictures, by which progress is told.
    private const double PicturesDone = 0.4;

    private readonly PackPictures _pictures = new(folder);

    /// <summary>Name of the file of a pack.</summary>
    public static string NameOf(RecordPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return BaseOf(pack) + ".zip";
    }

    /// <summary>Writes the file. Pictures go straight through; only paper and workbook are held whole.</summary>
    /// <param name="pack">What goes in.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="file">Where the zip goes; left open.</param>
    /// <param name="progress">Told the share that is done, 0 to 1.</param>
    /// <param name="cancellationToken">Stops; what was written so far is no pack.</param>
    public async Task<RecordPackFile> WriteAsync(RecordPack pack, Language language, Stream file, IProgress<double>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var photos = progress is null ? null : new Share(progress, PicturesDone);
        await using var zip = await ZipArchive.CreateAsync(file, ZipArchiveMode.Create, leaveOpen: true, entryNameEncoding: null, cancellationToken);

        // Paper and workbook tell what became of each picture, so the pictures come first.
        pack = pack with { Photos = await _pictures.WriteAsync(pack, zip, photos, cancellationToken) };
        var sums = new StringBuilder();
        foreach (var photo in pack.Photos.Where(photo => photo.File is not null))
        {
            Add(sums, photo.FileSha256!, photo.File!);
        }

        progress?.Report(PicturesDone);
        var tables = RecordTables.Of(pack, language);
        cancellationToken.ThrowIfCancellationRequested();
        progress?.Report(0.5);
        await PutAsync(BaseOf(pack) + ".pdf", RecordPdf.Make(pack, tables, language));
        progress?.Report(0.7);
        await PutAsync(BaseOf(pack) + ".xlsx", RecordWorkbook.Make(pack, tables, language));
        await PutAsync(Checksums, Encoding.ASCII.GetBytes(sums.ToString()));
        progress?.Report(1);
        return new RecordPackFile(
            NameOf(pack),
            pack.Visits.Count(visit => visit.Counts),
            tables.First(table => table.Title == RecordTexts.Results).Rows.Count,
            pack.Photos.Count(photo => photo.File is not null),
            pack.Photos.Count(photo => photo.File is null));

        async Task PutAsync(string name, byte[] bytes)
        {
            Add(sums, Convert.ToHexStringLower(SHA256.HashData(bytes)), name);
            var entry = zip.CreateEntry(name, CompressionLevel.Fastest);
            entry.LastWriteTime = new DateTimeOffset(pack.MadeAt, TimeSpan.Zero);
            await using var stream = await entry.OpenAsync(cancellationToken);
            await stream.WriteAsync(bytes, cancellationToken);
        }
    }

    /// <summary>Writes the file into a folder. It is whole or not there.</summary>
    public async Task<RecordPackFile> WriteFileAsync(RecordPack pack, Language language, DirectoryInfo target, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(target);
        target.Create();
        var path = Path.Combine(target.FullName, NameOf(pack));
        var half = path + ".part";
        try
        {
            RecordPackFile made;
            await using (var file = File.Create(half))
            {
                made = await WriteAsync(pack, language, file, cancellationToken: cancellationToken);
            }

            File.Move(half, path, overwrite: true);
            return made;
        }
        finally
        {
            File.Delete(half);
        }
    }

    /// <summary>Letters, digits and dashes: what any file system and shell takes as a name.</summary>
    internal static string FileSafe(string text) => string.Concat(text.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' ? letter : '-'));

    private static string BaseOf(RecordPack pack) => string.Create(CultureInfo.InvariantCulture, $"{FileSafe(pack.Site.Code)}_{pack.From:yyyy-MM-dd}_{pack.To:yyyy-MM-dd}");

    private static void Add(StringBuilder sums, string hash, string name) => sums.Append(CultureInfo.InvariantCulture, $"{hash}  {name}\n");

    private sealed class Share(IProgress<double> whole, double share) : IProgress<double>
    {
        public void Report(double value) => whole.Report(value * share);
    }
}
