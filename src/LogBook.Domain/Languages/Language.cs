using System.Text.Json.Serialization;

namespace LogBook.Domain.Languages;

/// <summary>Language of a person or a text.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Language>))]
public enum Language
{
    /// <summary>English.</summary>
    [JsonStringEnumMemberName("en")]
    English,

    /// <summary>Spanish.</summary>
    [JsonStringEnumMemberName("es")]
    Spanish,

    /// <summary>Portuguese.</summary>
    [JsonStringEnumMemberName("pt")]
    Portuguese,
}
