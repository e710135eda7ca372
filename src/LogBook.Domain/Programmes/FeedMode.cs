using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>How a feed is paced.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<FeedMode>))]
public enum FeedMode
{
    /// <summary>Runs for some seconds after every so many litres.</summary>
    [JsonStringEnumMemberName("by-make-up-volume")]
    ByMakeUpVolume,

    /// <summary>Runs while the bleed is open.</summary>
    [JsonStringEnumMemberName("alongside-bleed")]
    AlongsideBleed,

    /// <summary>Runs a fixed share of a repeating time.</summary>
    [JsonStringEnumMemberName("fixed-share")]
    FixedShare,

    /// <summary>Runs a share of the time the bleed ran.</summary>
    [JsonStringEnumMemberName("share-of-last-bleed")]
    ShareOfLastBleed,

    /// <summary>Starts at fixed times of a plan of weeks.</summary>
    [JsonStringEnumMemberName("dose-plan")]
    DosePlan,

    /// <summary>Between limits of ORP.</summary>
    [JsonStringEnumMemberName("by-orp")]
    ByOrp,

    /// <summary>Between limits of pH.</summary>
    [JsonStringEnumMemberName("by-ph")]
    ByPh,

    /// <summary>Between limits of a measured residual.</summary>
    [JsonStringEnumMemberName("by-residual")]
    ByResidual,

    /// <summary>Poured by a person; amounts come with the visits.</summary>
    [JsonStringEnumMemberName("by-hand")]
    ByHand,

    /// <summary>Solid product, by weight or count.</summary>
    [JsonStringEnumMemberName("feeder")]
    Feeder,
}
