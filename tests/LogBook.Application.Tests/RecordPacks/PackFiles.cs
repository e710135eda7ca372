using System.IO.Compression;
using LogBook.Application.RecordPacks;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>The files of a record pack by the ends of their names.</summary>
internal static class PackFiles
{
    public static IReadOnlyDictionary<string, byte[]> Of(RecordPackFile file)
    {
        using var zip = new ZipArchive(new MemoryStream(file.Zip));
        return zip.Entries.ToDictionary(entry => entry.Name, entry =>
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        });
    }

    public static byte[] Ending(this IReadOnlyDictionary<string, byte[]> files, string end) => files.Single(file => file.Key.EndsWith(end, StringComparison.Ordinal)).Value;
}
