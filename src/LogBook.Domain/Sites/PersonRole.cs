using System.Text.Json.Serialization;

namespace LogBook.Domain.Sites;

/// <summary>What a person does for or with the firm.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PersonRole>))]
public enum PersonRole
{
    /// <summary>Works the round.</summary>
    [JsonStringEnumMemberName("technician")]
    Technician,

    /// <summary>Looks after all sites.</summary>
    [JsonStringEnumMemberName("supervisor")]
    Supervisor,

    /// <summary>Keeps people and set-up.</summary>
    [JsonStringEnumMemberName("administrator")]
    Administrator,

    /// <summary>Works at the customer's site.</summary>
    [JsonStringEnumMemberName("site-staff")]
    SiteStaff,

    /// <summary>Owns the plant.</summary>
    [JsonStringEnumMemberName("customer")]
    Customer,
}
