namespace LogBook.Application.Data;

/// <summary>A visit that somebody is still writing on the server.</summary>
public sealed class DraftRow : ICustomerOwned, IVersioned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int SiteId { get; set; }

    public int UserId { get; set; }

    public Guid VisitId { get; set; }

    /// <summary>The draft as its form wrote it.</summary>
    public string Document { get; set; } = "";

    public DateTime UpdatedAt { get; set; }

    public int Version { get; set; } = 1;
}
