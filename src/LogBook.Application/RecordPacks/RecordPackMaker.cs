using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>Makes the file of a record pack: a PDF, a workbook with the same content, and their SHA-256 checksums.</summary>
public static class RecordPackMaker
{
    /// <summary>Name of the list of checksums; <c>sha256sum -c</c> reads it.</summary>
    public const string Checksums = "SHA256SUMS.txt";

    /// <summary>Makes the file.</summary>
    /// <param name="pack">What goes in.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="progress">Told the share that is done, 0 to 1.</param>
    /// <param name="cancellationToken">Stops between the parts.</param>
    public static RecordPackFile Make(RecordPack pack, Language language, IProgress<double>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        progress?.Report(0.1);
        var tables = RecordTables.Of(pack, language);
        cancellationToken.ThrowIfCancellationRequested();
        progress?.Report(0.25);
        var pdf = RecordPdf.Make(pack, tables, language);
        cancellationToken.ThrowIfCancellationRequested();
        progress?.Report(0.55);
        var workbook = RecordWorkbook.Make(pack, tables, language);
        cancellationToken.ThrowIfCancellationRequested();
        progress?.Report(0.95);
        var name = string.Create(CultureInfo.InvariantCulture, $"{FileSafe(pack.Site.Code)}_{pack.From:yyyy-MM-dd}_{pack.To:yyyy-MM-dd}");
        (string Name, byte[] Bytes)[] files = [(name + ".pdf", pdf), (name + ".xlsx", workbook)];
        var sums = string.Concat(files.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(file.Bytes))}  {file.Name}\n"));
        using var buffer = new MemoryStream();
        using (var zip = new ZipArchive(buffer, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (entryName, bytes) in files.Append((Checksums, Encoding.ASCII.GetBytes(sums))))
            {
                var entry = zip.CreateEntry(entryName, CompressionLevel.Fastest);
                entry.LastWriteTime = new DateTimeOffset(pack.MadeAt, TimeSpan.Zero);
                using var stream = entry.Open();
                stream.Write(bytes);
            }
        }

        progress?.Report(1);
        var results = tables.First(table => table.Title == RecordTexts.Results).Rows.Count;
        return new RecordPackFile(name + ".zip", buffer.ToArray(), pack.Visits.Count(visit => visit.Counts), results);
    }

    private static string FileSafe(string code) => string.Concat(code.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' ? letter : '-'));
}
