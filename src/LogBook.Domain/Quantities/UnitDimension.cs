namespace LogBook.Domain.Quantities;

/// <summary>What a unit measures; only units of one dimension are converted into each other.</summary>
public enum UnitDimension
{
    /// <summary>Conductivity at 25 °C.</summary>
    Conductivity,

    /// <summary>Mass in a volume of water; the basis stands apart.</summary>
    Concentration,

    /// <summary>pH.</summary>
    Ph,

    /// <summary>Temperature.</summary>
    Temperature,

    /// <summary>Volume.</summary>
    Volume,

    /// <summary>Volume in a time.</summary>
    Flow,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Percent.</summary>
    Percent,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Time.</summary>
    Time,

    /// <summary>Electric current.</summary>
    Current,

    /// <summary>Electric potential.</summary>
    Potential,

    /// <summary>Power.</summary>
    Power,

    /// <summary>Pressure.</summary>
    Pressure,

    /// <summary>Drops of titrant.</summary>
    Drops,

    /// <summary>Colony-forming units in a volume of water.</summary>
    Colonies,

    /// <summary>Turbidity.</summary>
    Turbidity,

    /// <summary>Metal lost in a time.</summary>
    CorrosionRate,

    /// <summary>A ratio or a count.</summary>
    Ratio,
}
