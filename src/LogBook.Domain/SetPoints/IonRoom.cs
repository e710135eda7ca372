using LogBook.Domain.Estimates;

namespace LogBook.Domain.SetPoints;

/// <summary>How far one ion lets the water be concentrated.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="MakeUp">Ion in the make-up at the 90th percentile of the readings, mg/L.</param>
/// <param name="Cycles">Limit over make-up.</param>
public sealed record IonRoom(IonLimit Limit, Estimate MakeUp, Estimate Cycles);
