namespace LogBook.Domain.Settings;

/// <summary>What changed after the day of a sheet, so that an old setting may no longer mean what it meant.</summary>
public enum LaterChangeKind
{
    /// <summary>A newer programme asks for something else.</summary>
    Programme,

    /// <summary>The pump was renewed, or its rating on file changed.</summary>
    Pump,

    /// <summary>Stroke or speed of the pump was changed.</summary>
    Stroke,

    /// <summary>The drum was renewed or holds another product.</summary>
    Drum,

    /// <summary>What is on file of the product's label or density changed.</summary>
    Label,

    /// <summary>The bleed valve was renewed, or its flow on file changed.</summary>
    Valve,

    /// <summary>The probe was renewed.</summary>
    Probe,

    /// <summary>The water meter was renewed, or its pulse volume changed.</summary>
    Meter,

    /// <summary>The setting itself was changed at a later visit.</summary>
    Setting,
}
