namespace LogBook.Application.Data;

/// <summary>A photo that a visit names; the picture may come later.</summary>
public sealed class PhotoRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int VisitRowId { get; set; }

    public Guid PhotoId { get; set; }

    /// <summary>Field or place it belongs to.</summary>
    public string Of { get; set; } = "";

    /// <summary>Hash that the document names, lower-case hexadecimal.</summary>
    public string? Sha256 { get; set; }

    public DateTime? TakenAt { get; set; }

    /// <summary>When the picture itself came in.</summary>
    public DateTime? StoredAt { get; set; }

    /// <summary>Name of the file in the photo folder, made here, never by a sender.</summary>
    public string? FileName { get; set; }

    public string? MediaType { get; set; }

    public long? Bytes { get; set; }

    /// <summary>Hash of the file that was kept, lower-case hexadecimal; null for one kept before hashes were.</summary>
    public string? FileSha256 { get; set; }
}
