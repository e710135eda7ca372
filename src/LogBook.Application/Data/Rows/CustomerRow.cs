namespace LogBook.Application.Data;

/// <summary>A customer: the document of the exchange format and what queries need of it.</summary>
public sealed class CustomerRow : IVersioned, IRetirable
{
    public int Id { get; set; }

    public string Code { get; set; } = "";

    public string CodeKey { get; set; } = "";

    public string Name { get; set; } = "";

    /// <summary>Canonical JSON of the exchange record.</summary>
    public string Document { get; set; } = "";

    public int Version { get; set; } = 1;

    public DateTime? RetiredAt { get; set; }

    public string? RetiredWhy { get; set; }
}
