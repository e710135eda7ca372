namespace LogBook.Entry.Plans;

/// <summary>A section of the visit form.</summary>
public enum EntryStep
{
    /// <summary>Arrive and look first.</summary>
    Arrive,

    /// <summary>The controller as found.</summary>
    Controller,

    /// <summary>Hand meter against probe.</summary>
    Reference,

    /// <summary>Water tests.</summary>
    Water,

    /// <summary>Drums, meters, pumps.</summary>
    Stock,

    /// <summary>The tower itself.</summary>
    Tower,

    /// <summary>Samples.</summary>
    Samples,

    /// <summary>Settings and switches as left.</summary>
    Adjust,

    /// <summary>What is open, read-back, signatures.</summary>
    Close,

    /// <summary>The only sheet of a record-only system.</summary>
    Sheet,
}
