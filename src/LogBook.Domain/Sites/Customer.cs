namespace LogBook.Domain.Sites;

/// <summary>Owner of one or more sites; the wall between customers runs along this code.</summary>
public sealed record Customer
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Name as the customer writes it.</summary>
    public required string Name { get; init; }

    /// <summary>People who are told about visits.</summary>
    public IReadOnlyList<Contact> Contacts { get; init => field = value ?? []; } = [];
}
