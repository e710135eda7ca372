namespace LogBook.Domain.Rounds.Planning;

/// <summary>How a clock stands on a day.</summary>
public enum DueStanding
{
    /// <summary>Its day is over; for a visit by interval, more over it than is usual.</summary>
    Late,

    /// <summary>Its day has come.</summary>
    Due,

    /// <summary>Within the next two days.</summary>
    Soon,

    /// <summary>Further ahead.</summary>
    Later,
}
