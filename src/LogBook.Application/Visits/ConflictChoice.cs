namespace LogBook.Application.Visits;

/// <summary>How a conflict is settled.</summary>
public enum ConflictChoice
{
    /// <summary>What stands is right; the other content is kept aside, readable in the records.</summary>
    KeepStanding,

    /// <summary>The other content is right: it becomes the next version of the visit.</summary>
    TakeOther,
}
