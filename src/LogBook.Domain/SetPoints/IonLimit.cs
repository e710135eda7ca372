using LogBook.Domain.Languages;

namespace LogBook.Domain.SetPoints;

/// <summary>Most of an ion that the circulating water may hold.</summary>
/// <param name="Test">Code of the test, in its fixed basis.</param>
/// <param name="Most">Limit, mg/L in that basis; µS/cm for conductivity; above zero.</param>
/// <param name="Kind">Why.</param>
/// <param name="Basis">Where the number comes from.</param>
public sealed record IonLimit(string Test, double Most, IonLimitKind Kind, Text Basis);
