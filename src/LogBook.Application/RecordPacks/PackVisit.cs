using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>A visit in a record pack.</summary>
/// <param name="Visit">Its latest version.</param>
/// <param name="Versions">Every version, first to last.</param>
/// <param name="ReviewedBy">Who reviewed it; null where nobody did.</param>
/// <param name="ReviewedAt">When, UTC.</param>
/// <param name="VoidedBy">Who declared it void; null where it counts.</param>
/// <param name="VoidedAt">When, UTC.</param>
/// <param name="VoidedWhy">Why.</param>
/// <param name="ReceivedAt">When its first version reached this installation, UTC.</param>
public sealed record PackVisit(
    Visit Visit, IReadOnlyList<PackVersion> Versions, string? ReviewedBy, DateTime? ReviewedAt, string? VoidedBy, DateTime? VoidedAt, string? VoidedWhy, DateTime ReceivedAt)
{
    /// <summary>Whether it counts.</summary>
    public bool Counts => VoidedAt is null;
}
