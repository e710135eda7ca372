namespace LogBook.Domain.Clocks;

/// <summary>How long records are kept. LogBook deletes none by itself; this is the day before which nobody should.</summary>
/// <remarks>
/// Five years from the last entry by default, the longest period named in the sources seen (42. BImSchV
/// section 12; HSE L8 third edition for checks; NSW Public Health Regulation 2022). A local rule or a contract may ask for more.
/// </remarks>
public static class Retention
{
    /// <summary>Years from the last entry.</summary>
    public const int Years = 5;

    /// <summary>Last day on which the records must still be there.</summary>
    /// <param name="lastEntry">Day of the last entry.</param>
    /// <param name="isHeld">Whether a legal hold lies on them.</param>
    /// <returns>The day; null under a legal hold, which has no end of its own.</returns>
    public static DateOnly? KeepUntil(DateOnly lastEntry, bool isHeld) => isHeld ? null : lastEntry.AddYears(Years);
}
