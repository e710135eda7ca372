using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace LogBook.Papers.Layout;

/// <summary>Makes a file the same whenever it is made from the same input.</summary>
/// <remarks>
/// The PDF library draws its identities and the tags of its font subsets at random and offers no way to set them.
/// They are replaced in place by others of the same length, so that no offset in the file moves: the identities by a
/// hash of the file without them, the tags by their order.
/// </remarks>
internal static partial class PaperBytes
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    public static byte[] Settled(byte[] bytes)
    {
        // Latin 1 maps each byte to one character and back.
        var text = Encoding.Latin1.GetString(bytes);
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        text = Tags().Replace(text, match =>
        {
            if (!tags.TryGetValue(match.Value, out var tag))
            {
                tag = tags[match.Value] = "PAPER" + Letters[tags.Count % Letters.Length];
            }

            return tag;
        });
        text = Identities().Replace(text, match => new string('0', match.Length));
        var hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        var identity = new Guid(Convert.FromHexString(hash[..32])).ToString();
        text = Documents().Replace(text, identity);
        text = Trailers().Replace(text, hash[..32]);
        return Encoding.Latin1.GetBytes(text);
    }

    [GeneratedRegex("(?<=/(FontName|BaseFont)/)[A-Z]{6}(?=\\+LogBook)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Tags();

    [GeneratedRegex("(?<=(Document|Instance)ID>uuid:)[0-9a-f-]{36}(?=<)|(?<=/ID ?\\[<)[0-9A-F]{32}(?=>)|(?<=/ID ?\\[<[0-9A-F]{32}><)[0-9A-F]{32}(?=>\\])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Identities();

    [GeneratedRegex("(?<=(Document|Instance)ID>uuid:)0{36}(?=<)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Documents();

    [GeneratedRegex("(?<=/ID ?\\[<)0{32}(?=>)|(?<=/ID ?\\[<[0-9A-F]{32}><)0{32}(?=>\\])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Trailers();
}
