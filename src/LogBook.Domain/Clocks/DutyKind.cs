namespace LogBook.Domain.Clocks;

/// <summary>What sets a clock running.</summary>
public enum DutyKind
{
    /// <summary>The time since it was last done.</summary>
    Interval,

    /// <summary>An event at the plant.</summary>
    AfterEvent,

    /// <summary>A result in a band of the rule.</summary>
    Retest,

    /// <summary>Receipt of a result that an authority must be told of.</summary>
    Notify,

    /// <summary>The last visit: the interval agreed with the customer.</summary>
    Visit,

    /// <summary>The end of a visit: the time within which its summary is promised.</summary>
    Summary,
}
