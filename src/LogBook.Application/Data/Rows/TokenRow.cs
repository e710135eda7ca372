namespace LogBook.Application.Data;

/// <summary>A personal access token; only its hash is kept.</summary>
public sealed class TokenRow
{
    public int Id { get; set; }

    public int UserId { get; set; }

    public string Name { get; set; } = "";

    /// <summary>SHA-256 of the token, lower-case hexadecimal.</summary>
    public string Hash { get; set; } = "";

    /// <summary>Scopes, separated by blanks.</summary>
    public string Scopes { get; set; } = "";

    public DateTime CreatedAt { get; set; }

    public DateTime ExpiresAt { get; set; }

    public DateTime? LastUsedAt { get; set; }

    public DateTime? RevokedAt { get; set; }
}
