namespace LogBook.Application.Rescue;

/// <summary>What became of a draft that was to be taken in.</summary>
public enum RescueTaken
{
    /// <summary>It is the viewer's draft now.</summary>
    Taken,

    /// <summary>It was taken in before and is not finished; that one stays as it is.</summary>
    Before,

    /// <summary>Its visit is on the server: the draft is not needed.</summary>
    VisitIsHere,

    /// <summary>The viewer has begun something of their own under this identity, which must not be overwritten.</summary>
    OwnDraft,

    /// <summary>It amends a visit that the server does not know.</summary>
    NothingToAmend,

    /// <summary>The site is not on the server, or not for this viewer.</summary>
    NoSite,
}
