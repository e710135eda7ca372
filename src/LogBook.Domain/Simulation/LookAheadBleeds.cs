namespace LogBook.Domain.Simulation;

/// <summary>Bleeds added up.</summary>
/// <param name="Count">How often the valve opened.</param>
/// <param name="Hours">Hours open.</param>
/// <param name="LongestMinutes">Longest one, min.</param>
/// <param name="Litres">Water bled, L.</param>
public sealed record LookAheadBleeds(int Count, double Hours, double LongestMinutes, double Litres);
