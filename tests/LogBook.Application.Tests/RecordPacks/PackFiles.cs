using System.IO.Compression;
using LogBook.Application.RecordPacks;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>A record pack that was made: what its maker said, and its files by their names.</summary>
internal sealed record PackFiles(RecordPackFile Made, IReadOnlyDictionary<string, byte[]> Files)
{
    public byte[] Pdf => Ending(".pdf");

    public byte[] Workbook => Ending(".xlsx");

    /// <summary>Makes it as it would be taken along.</summary>
    /// <param name="pack">What goes in.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="photos">Folder of the pictures; one that is not there when absent.</param>
    public static async Task<PackFiles> MakeAsync(RecordPack pack, Language language, PhotoFolder? photos = null)
    {
        using var zip = new MemoryStream();
        var made = await new RecordPackMaker(photos ?? new PhotoFolder(Path.Combine(Path.GetTempPath(), "no-photos"))).WriteAsync(pack, language, zip);
        using var read = new ZipArchive(zip);
        return new PackFiles(made, read.Entries.ToDictionary(entry => entry.FullName, entry =>
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        }));
    }

    private byte[] Ending(string end) => Files.Single(file => file.Key.EndsWith(end, StringComparison.Ordinal)).Value;
}
