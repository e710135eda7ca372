namespace LogBook.Domain.Meters;

/// <summary>What a 4-20 mA current says about itself (NAMUR NE43).</summary>
public enum LoopState
{
    /// <summary>Below 3.6 or above 21 mA.</summary>
    Fault,

    /// <summary>Between the measuring range and fault: keep the last state.</summary>
    Indeterminate,

    /// <summary>3.8 to below 4 mA: at the low end of its range.</summary>
    ValidSaturatedLow,

    /// <summary>4 to 20 mA.</summary>
    Valid,

    /// <summary>Above 20 to 20.5 mA: at the high end of its range.</summary>
    ValidSaturatedHigh,
}
