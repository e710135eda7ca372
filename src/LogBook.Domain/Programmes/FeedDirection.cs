using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>Which way a measured feed moves its reading.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<FeedDirection>))]
public enum FeedDirection
{
    /// <summary>Feeding raises the reading.</summary>
    [JsonStringEnumMemberName("up")]
    Up,

    /// <summary>Feeding lowers the reading.</summary>
    [JsonStringEnumMemberName("down")]
    Down,
}
