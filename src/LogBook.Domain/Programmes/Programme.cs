using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Programmes;

/// <summary>What is to be done to a system from a day on. Conductivities µS/cm at 25 °C.</summary>
public sealed record Programme
{
    /// <summary>First day in force, in the site's zone.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Cycles aimed at.</summary>
    public double? TargetCycles { get; init; }

    /// <summary>Bleed set point, µS/cm.</summary>
    public double? SetPointUsPerCm { get; init; }

    /// <summary>Bleed differential, µS/cm.</summary>
    public double? DifferentialUsPerCm { get; init; }

    /// <summary>Which way the bleed switches.</summary>
    public BleedActs? BleedActs { get; init; }

    /// <summary>Averaging of the display, s.</summary>
    public double? DisplayAverageSeconds { get; init; }

    /// <summary>High alarm, µS/cm.</summary>
    public double? HighAlarmUsPerCm { get; init; }

    /// <summary>Low alarm, µS/cm.</summary>
    public double? LowAlarmUsPerCm { get; init; }

    /// <summary>Raises an alarm after so many minutes; 0 or absent means no limit.</summary>
    public double? LongestBleedMin { get; init; }

    /// <summary>Scaling of the current output.</summary>
    public MaRange? MaRange { get; init; }

    /// <summary>Weeks of the dose plan; 4 when absent.</summary>
    public int? PlanWeeks { get; init; }

    /// <summary>Monday of week 1, when not the one on or before "from".</summary>
    public DateOnly? WeekOneFrom { get; init; }

    /// <summary>Ranges aimed at.</summary>
    public IReadOnlyList<TestRange> Ranges { get; init => field = value ?? []; } = [];

    /// <summary>Feeds.</summary>
    public IReadOnlyList<Feed> Feeds { get; init => field = value ?? []; } = [];

    /// <summary>Make-up water it was worked out for.</summary>
    public MakeUpWater? MakeUp { get; init; }

    /// <summary>Why it is as it is.</summary>
    public string? Why { get; init; }

    /// <summary>Quantities as entered.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
