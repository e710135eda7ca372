namespace LogBook.Application.Rescue;

/// <summary>A draft in a rescue file: as text when its person was at the tablet, otherwise as it lay there, sealed.</summary>
public sealed record RescueDraft
{
    /// <summary>Identity of the visit it will be.</summary>
    public required Guid Id { get; init; }

    /// <summary>Code of the site.</summary>
    public required string Site { get; init; }

    /// <summary>Name of the site as the tablet knew it.</summary>
    public string? SiteName { get; init; }

    /// <summary>Code of the person who entered it, as the tablet says.</summary>
    public string? Person { get; init; }

    /// <summary>Name of that person.</summary>
    public string? Name { get; init; }

    /// <summary>When it was last kept.</summary>
    public DateTimeOffset? KeptAt { get; init; }

    /// <summary>The draft as its form wrote it; null when it is sealed.</summary>
    public string? Text { get; init; }

    /// <summary>Keys typed after it was last kept, as JSON; null when sealed or none.</summary>
    public string? Typed { get; init; }

    /// <summary>SHA-256 of <see cref="Text"/>.</summary>
    public string? Sha256 { get; init; }

    /// <summary>The draft under its person's key: 12 bytes of nonce, AES-GCM ciphertext and tag.</summary>
    public byte[]? Sealed { get; init; }

    /// <summary>Keys typed after it was last kept, sealed likewise.</summary>
    public byte[]? SealedTyped { get; init; }

    /// <summary>The person's key, sealed under second keys that the server may keep.</summary>
    public IReadOnlyList<RescueKey> Keys { get; init; } = [];
}
