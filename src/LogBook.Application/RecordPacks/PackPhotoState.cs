namespace LogBook.Application.RecordPacks;

/// <summary>Whether a picture is in a record pack, or why it is not.</summary>
public enum PackPhotoState
{
    /// <summary>It is in the pack.</summary>
    Included,

    /// <summary>It has not come in from the tablet.</summary>
    Awaited,

    /// <summary>It has not come in, and the site allows no photos: it would be refused.</summary>
    NotAllowed,

    /// <summary>Withheld: its visit was declared void.</summary>
    OfVoidVisit,

    /// <summary>Withheld: only a text that never came to stand names it.</summary>
    NotStanding,

    /// <summary>It came in, and its file is not where pictures are kept.</summary>
    Lost,

    /// <summary>It came in, and its file has not the hash any more with which it was kept; not the size, where only that was kept.</summary>
    Damaged,
}
