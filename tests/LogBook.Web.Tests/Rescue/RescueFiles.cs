using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LogBook.Application.Rescue;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Tests.Rescue;

/// <summary>Rescue files as a tablet writes them.</summary>
internal static class RescueFiles
{
    /// <summary>A JPEG of one pixel.</summary>
    public static readonly byte[] Picture = Made();

    public static RescueFile Of(IReadOnlyList<RescueVisit>? visits = null, IReadOnlyList<RescueDraft>? drafts = null, IReadOnlyList<RescuePhoto>? photos = null) => new()
    {
        Format = RescueReader.Format,
        Version = RescueReader.Version,
        WrittenAt = new DateTimeOffset(2025, 3, 31, 9, 0, 0, TimeSpan.Zero),
        Tablet = "Barge tablet",
        By = "RYA",
        Visits = visits ?? [],
        Drafts = drafts ?? [],
        Photos = photos ?? [],
    };

    public static byte[] Bytes(RescueFile file) => JsonSerializer.SerializeToUtf8Bytes(file, JsonSerializerOptions.Web);

    public static RescueVisit Visit(Visit visit)
    {
        var complete = VisitDocument.WithIds(visit);
        var text = VisitDocument.Canonical(complete);
        return new() { Id = complete.Id, Site = complete.Site, Person = complete.Technician, Sha256 = Hash(Encoding.UTF8.GetBytes(text)), Document = text };
    }

    public static RescueDraft Draft(VisitDraft draft, string? typed = null)
    {
        var text = draft.ToJson();
        return new() { Id = draft.Id, Site = draft.Site, Person = draft.Technician, Name = "Rosa Yaffle", Text = text, Typed = typed, Sha256 = Hash(Encoding.UTF8.GetBytes(text)) };
    }

    /// <summary>A draft as it lies on the tablet while its person's PIN is not given.</summary>
    public static (RescueDraft Draft, string KeyId, byte[] SecondKey) Sealed(VisitDraft draft, string? typed = null)
    {
        var (second, own) = (RandomNumberGenerator.GetBytes(32), RandomNumberGenerator.GetBytes(32));
        var id = Hash(second);
        var open = Draft(draft);
        return (open with
        {
            Text = null,
            Sha256 = null,
            Sealed = Seal(own, Encoding.UTF8.GetBytes(open.Text!)),
            SealedTyped = typed is null ? null : Seal(own, Encoding.UTF8.GetBytes(typed)),
            Keys = [new(id, Seal(second, own))],
        }, id, second);
    }

    public static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private static byte[] Seal(byte[] key, byte[] content)
    {
        var nonce = RandomNumberGenerator.GetBytes(12);
        var (cipher, tag) = (new byte[content.Length], new byte[16]);
        using var aes = new AesGcm(key, 16);
        aes.Encrypt(nonce, content, cipher, tag);
        return [.. nonce, .. cipher, .. tag];
    }

    private static byte[] Made()
    {
        using var bitmap = new SkiaSharp.SKBitmap(1, 1);
        using var encoded = bitmap.Encode(SkiaSharp.SKEncodedImageFormat.Jpeg, 90);
        return encoded.ToArray();
    }
}
