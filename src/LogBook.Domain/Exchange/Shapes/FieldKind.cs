namespace LogBook.Domain.Exchange.Shapes;

/// <summary>What may stand in a field.</summary>
internal enum FieldKind
{
    /// <summary>Text; blank counts as absent.</summary>
    Text,

    /// <summary>A finite number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Integer,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>YYYY-MM-DD.</summary>
    Date,

    /// <summary>RFC 3339 with offset.</summary>
    Moment,

    /// <summary>HH:MM.</summary>
    ClockTime,

    /// <summary>MM-DD.</summary>
    MonthDay,

    /// <summary>A Guid.</summary>
    Identity,

    /// <summary>A code of a closed list, units included.</summary>
    Choice,

    /// <summary>A mail address.</summary>
    Mail,

    /// <summary>Number or text of a setting; null stands for "none" in "found".</summary>
    Setting,

    /// <summary>An object of the table.</summary>
    Object,

    /// <summary>A list.</summary>
    List,
}
