using LogBook.Domain.Sites;

namespace LogBook.Application.Data;

/// <summary>A water system: the document of the exchange format and where its assessment stands.</summary>
public sealed class SystemRow : ICustomerOwned, IVersioned, IRetirable
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int SiteId { get; set; }

    public string Code { get; set; } = "";

    public string CodeKey { get; set; } = "";

    public string Name { get; set; } = "";

    public SystemKind Kind { get; set; }

    /// <summary>Canonical JSON of the exchange record.</summary>
    public string Document { get; set; } = "";

    public int Version { get; set; } = 1;

    public DateTime? RetiredAt { get; set; }

    public string? RetiredWhy { get; set; }

    /// <summary>Since when records have changed that the stored assessment has not seen; null when it has seen all.</summary>
    public DateTime? AssessmentDue { get; set; }

    /// <summary>Moment that the stored assessment was made for.</summary>
    public DateTime? AssessedAt { get; set; }

    /// <summary>Version of the rules that made it.</summary>
    public string? EngineVersion { get; set; }

    /// <summary>What lies ahead of it, as JSON; made with the stored assessment, null before the first.</summary>
    public string? Ahead { get; set; }
}
