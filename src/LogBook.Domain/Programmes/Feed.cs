using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>One feed of a programme.</summary>
public sealed record Feed
{
    /// <summary>Code of the drum.</summary>
    public required string Drum { get; init; }

    /// <summary>Code of the output; may be absent where the drum has one pump.</summary>
    public string? Output { get; init; }

    /// <summary>How it is paced.</summary>
    public required FeedMode Mode { get; init; }

    /// <summary>Level aimed at, mg/L as product; overrides the product's.</summary>
    public double? TargetMgPerL { get; init; }

    /// <summary>Outputs whose feeding and contact time it waits for.</summary>
    public IReadOnlyList<string> WaitsFor { get; init => field = value ?? []; } = [];

    /// <summary>By make-up volume: litres between runs.</summary>
    public double? EveryL { get; init; }

    /// <summary>By make-up volume: seconds for each run.</summary>
    public double? RunSeconds { get; init; }

    /// <summary>Fixed share: minutes of the repeating time.</summary>
    public double? CycleMin { get; init; }

    /// <summary>Fixed share and share of the last bleed: percent.</summary>
    public double? SharePercent { get; init; }

    /// <summary>Feed stops after so many minutes and an alarm stands.</summary>
    public double? LongestFeedMin { get; init; }

    /// <summary>Measured feeds: set point.</summary>
    public double? SetPoint { get; init; }

    /// <summary>Measured feeds: differential.</summary>
    public double? Differential { get; init; }

    /// <summary>Measured feeds: UCUM unit of both.</summary>
    public string? Unit { get; init; }

    /// <summary>Measured feeds: which way feeding moves the reading.</summary>
    public FeedDirection? Direction { get; init; }

    /// <summary>Dose plan: weeks of the plan.</summary>
    public IReadOnlyList<int> Weeks { get; init => field = value ?? []; } = [];

    /// <summary>Dose plan: days.</summary>
    public IReadOnlyList<Weekday> Days { get; init => field = value ?? []; } = [];

    /// <summary>Dose plan: starts, HH:MM local wall time.</summary>
    public IReadOnlyList<string> Starts { get; init => field = value ?? []; } = [];

    /// <summary>Dose plan: minutes of each run.</summary>
    public double? RunMinutes { get; init; }

    /// <summary>Bleeding before a dose.</summary>
    public BleedDown? BleedDownFirst { get; init; }

    /// <summary>Minutes the bleed is held shut from the end of the feed.</summary>
    public double? HoldBleedShutMin { get; init; }

    /// <summary>What the inhibitor does meanwhile.</summary>
    public InhibitorMeanwhile? InhibitorMeanwhile { get; init; }

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
