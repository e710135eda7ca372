namespace LogBook.Application.RecordPacks;

/// <summary>A photo that a visit of the period names.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Id">Identity of the photo.</param>
/// <param name="Of">What it shows.</param>
/// <param name="TakenAt">When, UTC.</param>
/// <param name="Sha256">Hash that the visit names: of the picture as it was sent. What is kept was made anew without tags and has another.</param>
/// <param name="State">Whether its picture comes along, or why not.</param>
public sealed record PackPhoto(Guid Visit, Guid Id, string Of, DateTime? TakenAt, string? Sha256, PackPhotoState State)
{
    /// <summary>Whether only an earlier version of the visit names it.</summary>
    public bool IsOfEarlierVersion { get; init; }

    /// <summary>Name of its file in the photo folder; null while the picture has not come in.</summary>
    public string? StoredAs { get; init; }

    /// <summary>Size of the picture when it was kept.</summary>
    public long? Bytes { get; init; }

    /// <summary>Hash of the picture when it was kept; null for one kept before hashes were.</summary>
    public string? KeptSha256 { get; init; }

    /// <summary>Its place in the pack; null until it is written, and for one that does not come along.</summary>
    public string? File { get; init; }

    /// <summary>Hash of the file in the pack.</summary>
    public string? FileSha256 { get; init; }
}
