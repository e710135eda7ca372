using System.Text.Json;
using LogBook.Domain.Exchange;

namespace LogBook.Application.RecordPacks;

/// <summary>Whether a site's records must be kept beyond their usual time: who says so, when and why.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="IsHeld">Laid on (true) or lifted (false).</param>
/// <param name="Who">Who did it.</param>
/// <param name="At">When, UTC.</param>
/// <param name="Why">Why.</param>
/// <param name="Version">Version of the record; 0 before the first.</param>
public sealed record LegalHold(string Site, bool IsHeld, string Who, DateTime At, string Why, int Version)
{
    internal static LegalHold Read(string document, int version)
    {
        using var json = JsonDocument.Parse(document);
        var root = json.RootElement;
        return new LegalHold(
            root.GetProperty("site").GetString()!,
            root.GetProperty("held").GetBoolean(),
            root.GetProperty("who").GetString()!,
            Moment.TryParse(root.GetProperty("at").GetString(), out var at) ? at.Utc : DateTime.UnixEpoch,
            root.GetProperty("why").GetString()!,
            version);
    }

    internal string Write() => JsonSerializer.Serialize(new SortedDictionary<string, object>(StringComparer.Ordinal)
    {
        ["at"] = Moment.OfUtc(At).Text,
        ["held"] = IsHeld,
        ["site"] = Site,
        ["who"] = Who,
        ["why"] = Why,
    });
}
