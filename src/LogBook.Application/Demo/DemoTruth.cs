namespace LogBook.Application.Demo;

/// <summary>What was true at a visit, beside what was read.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="VisitId">The visit.</param>
/// <param name="Utc">Arrival, UTC.</param>
/// <param name="Cycles">True cycles by volume.</param>
/// <param name="ConductivityUsPerCm">True conductivity, µS/cm.</param>
/// <param name="DisplayUsPerCm">Display, µS/cm.</param>
/// <param name="InhibitorMgPerL">True inhibitor, mg/L as product.</param>
/// <param name="BiocideMgPerL">True non-oxidising biocide, mg/L as product.</param>
/// <param name="MakeUpL">Make-up since the start, L.</param>
/// <param name="BledL">Bleed since the start, L.</param>
public sealed record DemoTruth(
    string Site, Guid VisitId, DateTime Utc, double Cycles, double ConductivityUsPerCm, double DisplayUsPerCm, double InhibitorMgPerL, double BiocideMgPerL, double MakeUpL, double BledL);
