namespace LogBook.Domain.Settings;

/// <summary>What a setting is for, in our own grouping; the order is that of the sheet.</summary>
public enum SettingPurpose
{
    /// <summary>When the bleed opens and shuts.</summary>
    Bleed,

    /// <summary>Alarms and time limits.</summary>
    Limits,

    /// <summary>Clock and weeks of the dose plan.</summary>
    Calendar,

    /// <summary>How a product is fed.</summary>
    Feed,

    /// <summary>Display and current output.</summary>
    Display,

    /// <summary>Read at the controller, not known to the programme.</summary>
    Other,
}
