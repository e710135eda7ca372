using System.Text.Json.Serialization;

namespace LogBook.Domain.Clocks;

/// <summary>How well a rule template is known.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<TemplateStatus>))]
public enum TemplateStatus
{
    /// <summary>Read in the text of the source.</summary>
    [JsonStringEnumMemberName("confirmed")]
    Confirmed,

    /// <summary>Read in a text that quotes or describes the source.</summary>
    [JsonStringEnumMemberName("second-hand")]
    SecondHand,

    /// <summary>Not found in a readable source.</summary>
    [JsonStringEnumMemberName("unconfirmed")]
    Unconfirmed,
}
