namespace LogBook.Domain.Rounds.Planning;

/// <summary>A reagent lot for a test of the day.</summary>
/// <param name="Lot">Code.</param>
/// <param name="Expires">Last day of use; null where not on file.</param>
/// <param name="Standing">How it stands on the day.</param>
/// <param name="IsInUse">Whether the person used it last for this test.</param>
public sealed record PackLot(string Lot, DateOnly? Expires, LotStanding Standing, bool IsInUse);
