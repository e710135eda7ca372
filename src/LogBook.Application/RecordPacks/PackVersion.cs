using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>One version of a visit in a record pack.</summary>
/// <param name="Number">Number of the version.</param>
/// <param name="Visit">What it says.</param>
/// <param name="ReceivedAt">When it reached this installation, UTC.</param>
/// <param name="Who">Who handed it in.</param>
/// <param name="Reason">Why it was amended.</param>
/// <param name="Sha256">Hash of the canonical text.</param>
public sealed record PackVersion(int Number, Visit Visit, DateTime ReceivedAt, string Who, string? Reason, string Sha256);
