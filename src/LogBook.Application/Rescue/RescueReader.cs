using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;

namespace LogBook.Application.Rescue;

/// <summary>Reads rescue files: whole and unharmed, or not at all.</summary>
public static class RescueReader
{
    /// <summary>Name of the format.</summary>
    public const string Format = "logbook-rescue";

    /// <summary>Version that is read.</summary>
    public const int Version = 1;

    /// <summary>Largest file that is read, bytes. A tablet writes several files rather than one that is larger.</summary>
    public const int MostBytes = 100 * 1024 * 1024;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true };

    /// <summary>Reads a file.</summary>
    /// <param name="content">Its bytes.</param>
    /// <returns>The file, or what is wrong with it.</returns>
    public static (RescueFile? File, Text? Problem) Read(byte[] content)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            return document.RootElement is { ValueKind: JsonValueKind.Object } root && root.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String
                ? Read(root, format.GetString())
                : (null, RescueFileTexts.Strange);
        }
        catch (JsonException)
        {
            // What begins like one and cannot be read to its end is one that was cut off or harmed.
            return (null, Begins(content) ? RescueFileTexts.Damaged : RescueFileTexts.Strange);
        }
    }

    private static (RescueFile? File, Text? Problem) Read(JsonElement root, string? format)
    {
        if (format == ExchangeReader.Format)
        {
            return Old(root);
        }

        if (format != Format)
        {
            return (null, RescueFileTexts.Strange);
        }

        if (!root.TryGetProperty("version", out var version) || !version.TryGetInt32(out var number) || number > Version)
        {
            return (null, RescueFileTexts.Newer);
        }

        return root.Deserialize<RescueFile>(Json) is { } file && IsWhole(file) ? (file, null) : (null, RescueFileTexts.Damaged);
    }

    // Tablets of an earlier version wrote closed visits alone, as an exchange document. Set-up in it is not taken in here.
    private static (RescueFile? File, Text? Problem) Old(JsonElement root)
    {
        if (root.EnumerateObject().Any(part => part.Name is not ("format" or "version" or "visits")) || !root.TryGetProperty("visits", out var visits) || visits.ValueKind != JsonValueKind.Array)
        {
            return (null, RescueFileTexts.Exchange);
        }

        List<RescueVisit> read = [];
        foreach (var visit in visits.EnumerateArray())
        {
            if (visit.ValueKind != JsonValueKind.Object || !visit.TryGetProperty("id", out var id) || !id.TryGetGuid(out var identity)
                || !visit.TryGetProperty("site", out var site) || site.GetString() is not { } code)
            {
                return (null, RescueFileTexts.Damaged);
            }

            read.Add(new RescueVisit { Id = identity, Site = code, Document = visit.GetRawText() });
        }

        return (new RescueFile { Format = Format, Version = Version, Visits = read }, null);
    }

    // Lists may hold nothing in place of a record, which their types do not tell.
    private static bool IsWhole(RescueFile file) =>
        file.Visits.All(visit => visit is not null) && file.Photos.All(photo => photo is not null)
        && file.Drafts.All(draft => draft is not null && draft.Keys.All(key => key is not null))
        && file.Visits.All(visit => IsHash(Encoding.UTF8.GetBytes(visit.Document), visit.Sha256))
        && file.Drafts.All(draft => draft.Text is { } text ? IsHash(Encoding.UTF8.GetBytes(text), draft.Sha256) : draft.Sealed is not null)
        && file.Photos.All(photo => IsHash(photo.Data, photo.Sha256));

    private static bool IsHash(byte[] content, string? hash) => string.Equals(Convert.ToHexStringLower(SHA256.HashData(content)), hash, StringComparison.Ordinal);

    private static bool Begins(byte[] content) => Encoding.UTF8.GetString(content, 0, Math.Min(content.Length, 200)) is var start && start.TrimStart().StartsWith('{') && start.Contains(Format, StringComparison.Ordinal);
}
