using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>A visit as the document that is kept: its canonical text, its hash, and identities of what was written without one.</summary>
public static class VisitDocument
{
    /// <summary>Canonical text of a visit (RFC 8785, absent instead of null, empty lists absent).</summary>
    /// <param name="visit">Any visit.</param>
    /// <returns>The text that is stored and hashed.</returns>
    public static string Canonical(Visit visit) => ExchangeWriter.CanonicalOf(visit);

    /// <summary>Hash of a visit.</summary>
    /// <param name="visit">Any visit.</param>
    /// <returns>SHA-256 of the canonical text in UTF-8, 64 lower-case hexadecimal digits.</returns>
    public static string Sha256(Visit visit) => Sha256OfCanonical(Canonical(visit));

    /// <summary>Hash of a canonical text.</summary>
    /// <param name="canonical">Text from <see cref="Canonical"/>.</param>
    /// <returns>SHA-256 of the text in UTF-8, 64 lower-case hexadecimal digits.</returns>
    public static string Sha256OfCanonical(string canonical) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(canonical)));

    /// <summary>Gives an identity to actions and recommendations that were written without one.</summary>
    /// <param name="visit">Any visit.</param>
    /// <returns>The visit with every identity filled; the same visit when none was missing.</returns>
    /// <remarks>
    /// The identity has the form of a version 7 Guid (RFC 9562), its time the visit's. Its other bits come from a hash of
    /// the visit's identity and the place in the visit, so that a visit that is sent twice gets the same identities twice.
    /// </remarks>
    public static Visit WithIds(Visit visit)
    {
        if (visit.Recommendations.All(r => r.Id is not null) && visit.Systems.All(s => s.Actions.All(a => a.Id is not null)))
        {
            return visit;
        }

        return visit with
        {
            Recommendations = [.. visit.Recommendations.Select((r, i) => r.Id is null ? r with { Id = Identity(visit, $"recommendations[{i}]") } : r)],
            Systems =
            [
                .. visit.Systems.Select(s => s with
                {
                    Actions = [.. s.Actions.Select((a, i) => a.Id is null ? a with { Id = Identity(visit, $"{s.System.ToUpperInvariant()}/actions[{i}]") } : a)],
                }),
            ],
        };
    }

    private static Guid Identity(Visit visit, string place)
    {
        Span<byte> bytes = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes($"{visit.Id:D}/{place}"), bytes);
        Span<byte> time = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(time, new DateTimeOffset((visit.EnteredAt ?? visit.Arrived).Utc).ToUnixTimeMilliseconds());
        time[2..].CopyTo(bytes);
        bytes[6] = (byte)(0x70 | (bytes[6] & 0x0F));
        bytes[8] = (byte)(0x80 | (bytes[8] & 0x3F));
        return new Guid(bytes[..16], bigEndian: true);
    }
}
