using System.Text.Json.Serialization;

namespace LogBook.Application.MoveIn;

/// <summary>What a column of a spreadsheet holds.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ColumnKind>))]
public enum ColumnKind
{
    /// <summary>Nobody has said yet.</summary>
    Unknown,

    /// <summary>Left out.</summary>
    Leave,

    /// <summary>Day of the visit.</summary>
    Day,

    /// <summary>Time of the visit.</summary>
    Time,

    /// <summary>Site, by code or name.</summary>
    Site,

    /// <summary>System, by code or name.</summary>
    System,

    /// <summary>Technician, by code or name.</summary>
    Technician,

    /// <summary>Result of a test.</summary>
    Test,

    /// <summary>Level of a drum.</summary>
    DrumLevel,

    /// <summary>Litres delivered into a drum.</summary>
    DrumAdded,

    /// <summary>Dial of a water meter.</summary>
    Dial,

    /// <summary>Total of a meter at the controller.</summary>
    Total,

    /// <summary>Hours run of an output.</summary>
    Hours,

    /// <summary>Free words.</summary>
    Note,
}
