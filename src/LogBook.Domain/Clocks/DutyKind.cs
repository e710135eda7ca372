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
}
