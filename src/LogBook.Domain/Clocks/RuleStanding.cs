namespace LogBook.Domain.Clocks;

/// <summary>Where one thing that a rule asked for stands. It is a statement about dates in the records, not a verdict about the plant.</summary>
public enum RuleStanding
{
    /// <summary>Done on or before the last day that was in time.</summary>
    Met,

    /// <summary>Not done by the last day that was in time; it may have been done later.</summary>
    Missed,

    /// <summary>Not done, and the time allowed is not over.</summary>
    Running,

    /// <summary>The records do not tell.</summary>
    Unknown,
}
