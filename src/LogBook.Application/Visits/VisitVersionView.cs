using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>One version of a visit.</summary>
/// <param name="Version">Number.</param>
/// <param name="ReceivedAt">Wall time at the site when it reached this installation.</param>
/// <param name="Source">How it came in.</param>
/// <param name="Who">Who handed it in.</param>
/// <param name="Reason">Why it was amended.</param>
/// <param name="Sha256">Hash of the canonical text.</param>
/// <param name="Visit">What was recorded.</param>
/// <param name="Differences">Against the version before; empty for the first.</param>
public sealed record VisitVersionView(
    int Version,
    DateTime ReceivedAt,
    IntakeSource Source,
    string Who,
    string? Reason,
    string Sha256,
    Visit Visit,
    IReadOnlyList<VisitDifference> Differences);
