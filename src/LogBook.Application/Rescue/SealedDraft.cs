using System.Security.Cryptography;
using System.Text;

namespace LogBook.Application.Rescue;

/// <summary>Opens a sealed draft of a rescue file by a second key. The tablet seals with AES-GCM: nonce of 12 bytes, text, tag of 16.</summary>
public static class SealedDraft
{
    private const int NonceBytes = 12;
    private const int TagBytes = 16;

    /// <summary>Opens a draft.</summary>
    /// <param name="secondKey">The second key, 32 bytes.</param>
    /// <param name="personKey">The person's key under it.</param>
    /// <param name="draft">The draft under the person's key.</param>
    /// <returns>The text and the keys typed after it; null when the key is not the one, or the content was changed.</returns>
    public static (string Text, string? Typed)? Open(byte[] secondKey, byte[] personKey, RescueDraft draft)
    {
        try
        {
            var key = Unseal(secondKey, personKey);
            return (Encoding.UTF8.GetString(Unseal(key, draft.Sealed ?? [])), draft.SealedTyped is { } typed ? Encoding.UTF8.GetString(Unseal(key, typed)) : null);
        }
        catch (Exception exception) when (exception is CryptographicException or ArgumentException)
        {
            return null;
        }
    }

    private static byte[] Unseal(byte[] key, ReadOnlySpan<byte> content)
    {
        if (content.Length < NonceBytes + TagBytes)
        {
            throw new CryptographicException("Too short to be sealed.");
        }

        var plain = new byte[content.Length - NonceBytes - TagBytes];
        using var aes = new AesGcm(key, TagBytes);
        aes.Decrypt(content[..NonceBytes], content[NonceBytes..^TagBytes], content[^TagBytes..], plain);
        return plain;
    }
}
