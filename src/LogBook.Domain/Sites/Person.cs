namespace LogBook.Domain.Sites;

/// <summary>Somebody of the firm or at a site.</summary>
public sealed record Person
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Name as signed.</summary>
    public required string Name { get; init; }

    /// <summary>Mail address.</summary>
    public string? Email { get; init; }

    /// <summary>What the person does.</summary>
    public required PersonRole Role { get; init; }

    /// <summary>Certificates held, with their expiry.</summary>
    public IReadOnlyList<Certificate> Certificates { get; init => field = value ?? []; } = [];
}
