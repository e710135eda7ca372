namespace LogBook.Domain.Rounds;

/// <summary>One residual by a reagent lot at one visit.</summary>
/// <param name="Test">Code of the test.</param>
/// <param name="Lot">Code of the lot; null where it was not written down.</param>
/// <param name="Value">Result, in the test's own unit, over what the basis says was fed.</param>
/// <param name="Basis">What it is divided by: "hours" (hours fed over water lost), "cycles" (feed by make-up) or "" (nothing). Only equal ones are compared.</param>
/// <param name="Uncertainty">Standard uncertainty of one result, % of it, the part of the lot included.</param>
/// <param name="UseSide">1 or −1 where the product used over the water lost tells by itself that more or less was fed; else 0.</param>
public sealed record LotClue(string Test, string? Lot, double Value, string Basis, double Uncertainty, int UseSide);
