using LogBook.Domain.Languages;

namespace LogBook.Domain.Sites;

/// <summary>A person at the customer's who may be sent visit summaries.</summary>
public sealed record Contact
{
    /// <summary>Name or office.</summary>
    public required string Name { get; init; }

    /// <summary>Mail address.</summary>
    public required string Email { get; init; }

    /// <summary>Language of what is sent; English when absent.</summary>
    public Language? Language { get; init; }

    /// <summary>Whether visit summaries go to this address.</summary>
    public bool? GetsSummaries { get; init; }
}
