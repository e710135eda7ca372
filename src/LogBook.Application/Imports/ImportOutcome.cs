using LogBook.Domain.Outcomes;

namespace LogBook.Application.Imports;

/// <summary>What became of a document that was imported.</summary>
/// <param name="Written">Whether anything was written: false whenever there is an issue, unless the import was partial.</param>
/// <param name="SetUpRecords">Set-up records added or changed.</param>
/// <param name="Visits">Visits added or amended.</param>
/// <param name="AlreadyKnown">Visits that had been received before.</param>
/// <param name="Issues">What was refused; paths within the document.</param>
public sealed record ImportOutcome(bool Written, int SetUpRecords, int Visits, int AlreadyKnown, IReadOnlyList<Issue> Issues);
