using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Whose signature it is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SignedBy>))]
public enum SignedBy
{
    /// <summary>The person who did the work.</summary>
    [JsonStringEnumMemberName("technician")]
    Technician,

    /// <summary>The customer's person on site.</summary>
    [JsonStringEnumMemberName("customer")]
    Customer,
}
