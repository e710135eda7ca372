using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Audit;

/// <summary>The chain of the audit trail: each row holds the hash of the one before it, a head holds where the chain ends.</summary>
public static class AuditChain
{
    /// <summary>Hash that the first row names as the one before it.</summary>
    public const string Start = "0000000000000000000000000000000000000000000000000000000000000000";

    // Any number that nothing else in the database locks.
    private const long Lock = 0x4C6F67426F6F6B;

    /// <summary>Hash of a row: SHA-256 over its fields, each with its length, so that no two rows read alike.</summary>
    public static string HashOf(AuditRow row)
    {
        var text = new StringBuilder();
        Add(text, row.Id.ToString(CultureInfo.InvariantCulture));
        Add(text, Milliseconds(row.At));
        Add(text, row.DeviceAt is { } device ? Milliseconds(device) : null);
        Add(text, row.Who);
        Add(text, row.UserId?.ToString(CultureInfo.InvariantCulture));
        Add(text, row.What);
        Add(text, row.Entity);
        Add(text, row.Key);
        Add(text, row.CustomerId?.ToString(CultureInfo.InvariantCulture));
        Add(text, row.Old);
        Add(text, row.New);
        Add(text, row.Why);
        Add(text, row.Previous);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    /// <summary>Appends entries within the transaction that is open.</summary>
    internal static async Task AppendAsync(LogBookDb db, Viewer viewer, DateTime at, IReadOnlyList<AuditEntry> entries, CancellationToken cancellationToken)
    {
        if (entries.Count == 0)
        {
            return;
        }

        if (db.Database.IsNpgsql())
        {
            // Two writers must not both continue from the same row; SQLite has one writer anyway.
            await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Lock})", cancellationToken);
        }

        var head = await db.AuditHead.AsTracking().SingleOrDefaultAsync(cancellationToken);
        if (head is null)
        {
            head = new AuditHeadRow { Id = 1, Hash = Start };
            db.AuditHead.Add(head);
        }

        foreach (var entry in entries)
        {
            var row = new AuditRow
            {
                Id = ++head.Count,
                At = at,
                DeviceAt = entry.DeviceAt is { } device ? Data.Conventions.Utc.Of(device) : null,
                Who = viewer.Who,
                UserId = viewer.UserId,
                What = entry.What,
                Entity = entry.Entity,
                Key = entry.Key,
                CustomerId = entry.CustomerId,
                Old = entry.Old,
                New = entry.New,
                Why = entry.Why,
                Previous = head.Hash,
            };
            row.Hash = HashOf(row);
            head.Hash = row.Hash;
            db.AuditTrail.Add(row);
        }

        await db.SaveChangesAsync(cancellationToken);
    }

    private static string Milliseconds(DateTime time) =>
        ((time.Ticks - DateTime.UnixEpoch.Ticks) / TimeSpan.TicksPerMillisecond).ToString(CultureInfo.InvariantCulture);

    private static void Add(StringBuilder text, string? field) => text.Append(field is null ? "-" : $"{field.Length}:{field}").Append(';');
}
