namespace LogBook.Domain.Rounds.Planning;

/// <summary>How a reagent lot stands on the day it is packed for.</summary>
public enum LotStanding
{
    /// <summary>Its last day is over.</summary>
    Expired,

    /// <summary>Its last day comes within the next 30 days.</summary>
    ExpiresSoon,

    /// <summary>Good for longer.</summary>
    InDate,

    /// <summary>No last day is on file.</summary>
    NotKnown,
}
