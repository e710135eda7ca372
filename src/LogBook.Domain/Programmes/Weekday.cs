using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>Day of the week.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Weekday>))]
public enum Weekday
{
    /// <summary>Monday.</summary>
    [JsonStringEnumMemberName("mon")]
    Monday,

    /// <summary>Tuesday.</summary>
    [JsonStringEnumMemberName("tue")]
    Tuesday,

    /// <summary>Wednesday.</summary>
    [JsonStringEnumMemberName("wed")]
    Wednesday,

    /// <summary>Thursday.</summary>
    [JsonStringEnumMemberName("thu")]
    Thursday,

    /// <summary>Friday.</summary>
    [JsonStringEnumMemberName("fri")]
    Friday,

    /// <summary>Saturday.</summary>
    [JsonStringEnumMemberName("sat")]
    Saturday,

    /// <summary>Sunday.</summary>
    [JsonStringEnumMemberName("sun")]
    Sunday,
}
