namespace LogBook.Domain.DosePlans;

/// <summary>How a hold sits between the label's contact time and the high alarm.</summary>
public enum HoldVerdict
{
    /// <summary>Stays below the high alarm, and is no shorter than the label's contact where one is on file.</summary>
    Fits,

    /// <summary>A shorter hold that still keeps the label's contact stays below the high alarm.</summary>
    ShorterFits,

    /// <summary>The hold wanted is shorter than the label's contact; the proposed one keeps it.</summary>
    LongerNeeded,

    /// <summary>Only after bleeding down first.</summary>
    BleedDownFirst,

    /// <summary>No hold keeps the label's contact below the alarm: another hour, another product or a higher limit agreed.</summary>
    NothingFits,
}
