using System.Security.Cryptography;
using LogBook.Application.Data;
using LogBook.Application.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Audit;

/// <summary>Checks that every picture that was kept is there and is still what it was.</summary>
internal static class PictureCheck
{
    /// <summary>Files against their hashes, and the hashes against those that the audit trail holds.</summary>
    /// <returns>Pictures that were looked at.</returns>
    public static async Task<int> OfAsync(LogBookDb db, PhotoFolder folder, List<string> faults, CancellationToken cancellationToken)
    {
        var rows = await db.Photos.Where(row => row.StoredAt != null).OrderBy(row => row.Id).ToListAsync(cancellationToken);
        foreach (var row in rows)
        {
            if (await FaultAsync(row, folder, cancellationToken) is { } fault)
            {
                faults.Add($"photo {row.PhotoId:D}: {fault}");
            }
        }

        // A hash could be changed together with its file; the audit trail holds it too, chained.
        var audited = (await db.AuditTrail.Where(row => row.Entity == nameof(PhotoRow) && row.What == AuditActs.Received && row.New != null)
            .Select(row => new { row.Key, row.New }).ToListAsync(cancellationToken)).Select(row => (row.Key, Hash: row.New!)).ToHashSet();
        foreach (var row in rows.Where(row => row.FileSha256 is not null && !audited.Remove((row.PhotoId.ToString("D"), row.FileSha256))))
        {
            faults.Add($"photo {row.PhotoId:D}: the audit trail does not know this hash");
        }

        foreach (var (key, _) in audited)
        {
            faults.Add($"photo {key}: the hash that the audit trail knows is missing");
        }

        return rows.Count;
    }

    private static async Task<string?> FaultAsync(PhotoRow row, PhotoFolder folder, CancellationToken cancellationToken)
    {
        var file = new FileInfo(Path.Combine(folder.Path, row.FileName ?? ""));
        if (!file.Exists)
        {
            return "its file is not there any more";
        }

        if (row.FileSha256 is null)
        {
            return file.Length == row.Bytes ? null : "its file has not the size any more with which it was kept";
        }

        await using var content = file.OpenRead();
        return Convert.ToHexStringLower(await SHA256.HashDataAsync(content, cancellationToken)) == row.FileSha256 ? null : "its file is not what its hash says";
    }
}
