using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Something that happened to the plant.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<EventType>))]
public enum EventType
{
    /// <summary>Emptied.</summary>
    [JsonStringEnumMemberName("drained")]
    Drained,

    /// <summary>Filled again.</summary>
    [JsonStringEnumMemberName("refilled")]
    Refilled,

    /// <summary>Cleaned.</summary>
    [JsonStringEnumMemberName("cleaned")]
    Cleaned,

    /// <summary>Disinfected.</summary>
    [JsonStringEnumMemberName("disinfected")]
    Disinfected,

    /// <summary>Taken out of use.</summary>
    [JsonStringEnumMemberName("stopped")]
    Stopped,

    /// <summary>Taken into use.</summary>
    [JsonStringEnumMemberName("started")]
    Started,

    /// <summary>Lost power.</summary>
    [JsonStringEnumMemberName("power-lost")]
    PowerLost,

    /// <summary>A probe was cleaned.</summary>
    [JsonStringEnumMemberName("probe-cleaned")]
    ProbeCleaned,

    /// <summary>A probe was replaced.</summary>
    [JsonStringEnumMemberName("probe-renewed")]
    ProbeRenewed,

    /// <summary>A pump was replaced.</summary>
    [JsonStringEnumMemberName("pump-renewed")]
    PumpRenewed,

    /// <summary>A strainer was cleaned.</summary>
    [JsonStringEnumMemberName("strainer-cleaned")]
    StrainerCleaned,

    /// <summary>The bleed valve was replaced.</summary>
    [JsonStringEnumMemberName("valve-renewed")]
    ValveRenewed,

    /// <summary>A softener was regenerated.</summary>
    [JsonStringEnumMemberName("softener-regenerated")]
    SoftenerRegenerated,

    /// <summary>A device was checked.</summary>
    [JsonStringEnumMemberName("device-checked")]
    DeviceChecked,

    /// <summary>Any other.</summary>
    [JsonStringEnumMemberName("other")]
    Other,
}
