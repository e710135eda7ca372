namespace LogBook.Entry.Cautions;

/// <summary>A moment of the visit at which the form reminds of a danger.</summary>
public enum Caution
{
    /// <summary>An output is tested or a switch moved.</summary>
    Switches,

    /// <summary>A drum that may have a level switch is refilled.</summary>
    LevelSwitch,

    /// <summary>A pump, valve or injection point is opened, or a probe taken out.</summary>
    OpenedLine,

    /// <summary>Acid and an oxidising product are both on the site.</summary>
    AcidAndHypochlorite,

    /// <summary>A non-oxidising biocide and an oxidising product are both on the site.</summary>
    UnlikeProducts,

    /// <summary>A label is not of the product that the drum is for.</summary>
    OtherProduct,

    /// <summary>A solid oxidiser in a feeder.</summary>
    SolidOxidiser,

    /// <summary>Nothing flows while something may feed.</summary>
    NoFlow,

    /// <summary>Product is delivered.</summary>
    Delivery,

    /// <summary>A biocide is added by hand.</summary>
    Biocide,

    /// <summary>Work near a running tower.</summary>
    RunningTower,

    /// <summary>Work at the tower, running or not: its roof and ladder.</summary>
    Heights,

    /// <summary>Work at the basin.</summary>
    Basin,

    /// <summary>Water is let out.</summary>
    WaterOut,

    /// <summary>Product is poured or dosed by hand.</summary>
    Concentrate,

    /// <summary>A setting is changed that lets the water go round more often.</summary>
    HigherCycles,

    /// <summary>A microbiological result.</summary>
    LaboratoryResult,

    /// <summary>A computed value or a calibration.</summary>
    Computed,
}
