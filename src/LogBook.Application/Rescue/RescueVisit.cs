namespace LogBook.Application.Rescue;

/// <summary>A closed visit in a rescue file.</summary>
public sealed record RescueVisit
{
    /// <summary>Identity of the visit.</summary>
    public required Guid Id { get; init; }

    /// <summary>Code of the site.</summary>
    public required string Site { get; init; }

    /// <summary>Name of the site as the tablet knew it.</summary>
    public string? SiteName { get; init; }

    /// <summary>Code of the person who closed it.</summary>
    public string? Person { get; init; }

    /// <summary>When it was closed.</summary>
    public DateTimeOffset? ClosedAt { get; init; }

    /// <summary>SHA-256 of the document, lower-case hexadecimal.</summary>
    public string? Sha256 { get; init; }

    /// <summary>The very text that the tablet would have sent.</summary>
    public required string Document { get; init; }
}
