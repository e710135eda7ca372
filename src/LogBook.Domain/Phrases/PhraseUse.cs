namespace LogBook.Domain.Phrases;

/// <summary>Where a quick phrase belongs.</summary>
public enum PhraseUse
{
    /// <summary>Why work stopped.</summary>
    Stopped,

    /// <summary>What changed since the last visit.</summary>
    Changed,

    /// <summary>What was seen at the tower.</summary>
    Seen,

    /// <summary>Why a value outside its range needs nothing.</summary>
    RangeReason,

    /// <summary>What is to be done.</summary>
    Action,

    /// <summary>Why a test was not taken.</summary>
    NotTaken,

    /// <summary>Why a setting was changed or a switch is left.</summary>
    SettingReason,

    /// <summary>Why nobody signs for the customer.</summary>
    Unsigned,

    /// <summary>Why something is left open.</summary>
    LeftOpen,

    /// <summary>Why a visit is amended.</summary>
    Amended,
}
