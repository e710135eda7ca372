namespace LogBook.Application.Data;

/// <summary>A site: the document of the exchange format and what queries need of it.</summary>
public sealed class SiteRow : ICustomerOwned, IVersioned, IRetirable
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public string Code { get; set; } = "";

    public string CodeKey { get; set; } = "";

    public string Name { get; set; } = "";

    /// <summary>Canonical JSON of the exchange record.</summary>
    public string Document { get; set; } = "";

    /// <summary>IANA name.</summary>
    public string TimeZone { get; set; } = "";

    public double? VisitEveryDays { get; set; }

    /// <summary>Code key of the technician whose round it is on.</summary>
    public string? AssignedTo { get; set; }

    public int Version { get; set; } = 1;

    public DateTime? RetiredAt { get; set; }

    public string? RetiredWhy { get; set; }
}
