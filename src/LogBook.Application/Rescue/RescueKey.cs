namespace LogBook.Application.Rescue;

/// <summary>The key of a person's drafts under a second key.</summary>
/// <param name="Id">SHA-256 of the second key, by which the server knows it.</param>
/// <param name="Sealed">The person's key: 12 bytes of nonce, AES-GCM ciphertext and tag.</param>
public sealed record RescueKey(string Id, byte[] Sealed);
