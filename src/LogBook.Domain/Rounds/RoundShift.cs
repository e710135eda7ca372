using LogBook.Domain.Findings;

namespace LogBook.Domain.Rounds;

/// <summary>One hand meter or reagent lot that reads off on several sites, from its discovery on.</summary>
/// <param name="Kind"><see cref="FindingKinds.InstrumentShift"/> or <see cref="FindingKinds.LotShift"/>.</param>
/// <param name="Code">Code of the meter or lot.</param>
/// <param name="Test">Test of the lot; conductivity for a meter.</param>
/// <param name="FirstSeen">First day of its finding, which names it.</param>
/// <param name="Steps">What was known when, by moment.</param>
public sealed record RoundShift(string Kind, string Code, string Test, DateOnly FirstSeen, IReadOnlyList<ShiftStep> Steps)
{
    /// <summary>What was known of it at a moment.</summary>
    /// <param name="moment">UTC.</param>
    /// <returns>The last step known, or null before its discovery.</returns>
    public ShiftStep? At(DateTime moment) => Steps.LastOrDefault(step => step.Known <= moment);
}
