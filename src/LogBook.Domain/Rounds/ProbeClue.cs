namespace LogBook.Domain.Rounds;

/// <summary>One probe compared with a hand meter at one visit: what it tells about the meter.</summary>
/// <param name="Probe">Code of the probe.</param>
/// <param name="Instrument">Code of the hand meter.</param>
/// <param name="Found">Error as found, % of the reference.</param>
/// <param name="Moved">By how much cleaning and calibration moved the error, percentage points (left − found); 0 when nothing was done.</param>
/// <param name="Uncertainty">Standard uncertainty of the error without the part that repeats with the meter, percentage points.</param>
/// <param name="WasSet">Whether the probe was set to the meter.</param>
public sealed record ProbeClue(string Probe, string Instrument, double Found, double Moved, double Uncertainty, bool WasSet);
