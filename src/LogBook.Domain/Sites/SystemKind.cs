using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>Kind of water system; only open-recirculating systems are judged by the engine.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SystemKind>))]
public enum SystemKind
{
    /// <summary>Cooling tower or evaporative condenser.</summary>
    [JsonStringEnumMemberName("open-recirculating")]
    OpenRecirculating,

    /// <summary>Record only: tests, ranges and due dates.</summary>
    [JsonStringEnumMemberName("closed-loop")]
    ClosedLoop,

    /// <summary>Record only.</summary>
    [JsonStringEnumMemberName("boiler")]
    Boiler,

    /// <summary>Record only.</summary>
    [JsonStringEnumMemberName("softener")]
    Softener,

    /// <summary>Record only.</summary>
    [JsonStringEnumMemberName("other")]
    Other,
}
