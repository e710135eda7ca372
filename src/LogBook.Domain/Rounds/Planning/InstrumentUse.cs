namespace LogBook.Domain.Rounds.Planning;

/// <summary>An instrument somebody used here lately.</summary>
/// <param name="Technician">Code of the person.</param>
/// <param name="Instrument">Code of the instrument.</param>
public sealed record InstrumentUse(string Technician, string Instrument);
