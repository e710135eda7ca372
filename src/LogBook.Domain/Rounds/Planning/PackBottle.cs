namespace LogBook.Domain.Rounds.Planning;

/// <summary>A bottle or dip slide to take along.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Test">Test it is for.</param>
/// <param name="By">Last day that is in time; null where the test is taken at most visits.</param>
public sealed record PackBottle(string Site, string System, string Test, DateOnly? By);
