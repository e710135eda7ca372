using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Who or what says the number.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ReadingSource>))]
public enum ReadingSource
{
    /// <summary>The controller's display.</summary>
    [JsonStringEnumMemberName("controller")]
    Controller,

    /// <summary>A hand instrument on the same water.</summary>
    [JsonStringEnumMemberName("reference")]
    Reference,

    /// <summary>A test kit.</summary>
    [JsonStringEnumMemberName("kit")]
    Kit,

    /// <summary>A laboratory.</summary>
    [JsonStringEnumMemberName("lab")]
    Lab,

    /// <summary>The customer's people.</summary>
    [JsonStringEnumMemberName("site-staff")]
    SiteStaff,
}
