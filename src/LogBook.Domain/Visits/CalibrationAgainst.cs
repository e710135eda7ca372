using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>What a probe was calibrated to.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<CalibrationAgainst>))]
public enum CalibrationAgainst
{
    /// <summary>The hand meter's reading.</summary>
    [JsonStringEnumMemberName("hand-meter")]
    HandMeter,

    /// <summary>A conductivity standard.</summary>
    [JsonStringEnumMemberName("standard")]
    Standard,
}
