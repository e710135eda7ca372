namespace LogBook.Application.RecordPacks;

/// <summary>A photo that a visit names.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Of">What it shows.</param>
/// <param name="TakenAt">When, UTC.</param>
/// <param name="Sha256">Hash that the visit names.</param>
/// <param name="IsHere">Whether the picture itself is kept.</param>
public sealed record PackPhoto(Guid Visit, string Of, DateTime? TakenAt, string? Sha256, bool IsHere);
