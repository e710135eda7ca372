namespace LogBook.Application.Notices;

/// <summary>A site with clocks that end today or have ended.</summary>
/// <param name="Code">Code.</param>
/// <param name="Name">Name.</param>
/// <param name="Today">Day at the site.</param>
/// <param name="Clocks">The most urgent first; at least one.</param>
internal sealed record DigestSite(string Code, string Name, DateOnly Today, IReadOnlyList<DigestClock> Clocks)
{
    /// <summary>Days since its most urgent clock ended; 0 for today.</summary>
    public int DaysOver => Today.DayNumber - Clocks[0].Day.DayNumber;
}
