namespace LogBook.Domain.Estimates;

/// <summary>How the level of a drum was read.</summary>
public enum LevelMethod
{
    /// <summary>Dip stick or tape: the default for a level in cm or inches.</summary>
    Dip,

    /// <summary>Sight glass.</summary>
    SightGlass,

    /// <summary>Gauge or marks in percent or litres.</summary>
    Gauge,

    /// <summary>Scale.</summary>
    Scale,
}
