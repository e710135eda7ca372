using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>What a treatment product is for.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ProductKind>))]
public enum ProductKind
{
    /// <summary>Against scale and corrosion.</summary>
    [JsonStringEnumMemberName("inhibitor")]
    Inhibitor,

    /// <summary>Against growth.</summary>
    [JsonStringEnumMemberName("biocide")]
    Biocide,

    /// <summary>Keeps solids afloat.</summary>
    [JsonStringEnumMemberName("dispersant")]
    Dispersant,

    /// <summary>Lowers alkalinity.</summary>
    [JsonStringEnumMemberName("acid")]
    Acid,

    /// <summary>Against foam.</summary>
    [JsonStringEnumMemberName("antifoam")]
    Antifoam,

    /// <summary>Any other.</summary>
    [JsonStringEnumMemberName("other")]
    Other,
}
