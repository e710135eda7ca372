namespace LogBook.Domain.Rounds.Planning;

/// <summary>An instrument that the person used lately.</summary>
/// <param name="Instrument">Code.</param>
/// <param name="LastCheck">Day of its last check in a standard; null where none is on record.</param>
/// <param name="IsDue">Whether a check is due before the round.</param>
public sealed record PackInstrument(string Instrument, DateOnly? LastCheck, bool IsDue);
