namespace LogBook.Domain.Rounds.Planning;

/// <summary>What makes a stop due; of two on one day the earlier in this list is named first.</summary>
public enum DueKind
{
    /// <summary>An open finding of severity act.</summary>
    Finding,

    /// <summary>A result in a band of a rule asks for another sample.</summary>
    Retest,

    /// <summary>An event at the plant asks for something.</summary>
    AfterEvent,

    /// <summary>A test or task at an interval, by a rule of an authority, a contract or the firm.</summary>
    Duty,

    /// <summary>A drum runs empty.</summary>
    Drum,

    /// <summary>An open action was promised by a day.</summary>
    Promise,

    /// <summary>The interval agreed since the last visit.</summary>
    Visit,
}
