using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Simulation;

/// <summary>What if: a programme with a few things changed. What is null stays.</summary>
public sealed record LookAheadChange
{
    /// <summary>Output of the dose that is changed; null changes the bleed alone.</summary>
    public string? Output { get; init; }

    /// <summary>Minutes of each run.</summary>
    public double? RunMinutes { get; init; }

    /// <summary>Hold from the end of the feed, min.</summary>
    public double? HoldMinutes { get; init; }

    /// <summary>Start of every dose, HH:MM.</summary>
    public string? Start { get; init; }

    /// <summary>Conductivity to bleed down to first, µS/cm.</summary>
    public double? BleedDownToUsPerCm { get; init; }

    /// <summary>Whether the dose begins without bleeding down first.</summary>
    public bool WithoutBleedDown { get; init; }

    /// <summary>Set point, µS/cm; alarms keep their distance as a share.</summary>
    public double? SetPointUsPerCm { get; init; }

    /// <summary>The programme with the change.</summary>
    /// <param name="programme">As it is.</param>
    /// <param name="system">The system.</param>
    /// <returns>As it would be.</returns>
    public Programme On(Programme programme, WaterSystem system)
    {
        var changed = SetPointUsPerCm is { } setPoint && programme.SetPointUsPerCm is > 0 and var before
            ? programme with
            {
                SetPointUsPerCm = setPoint,
                HighAlarmUsPerCm = programme.HighAlarmUsPerCm * setPoint / before,
                LowAlarmUsPerCm = programme.LowAlarmUsPerCm * setPoint / before,
            }
            : programme;
        return Output is null ? changed : changed with
        {
            Feeds = [.. changed.Feeds.Select(feed => feed.Mode == FeedMode.DosePlan && string.Equals(ProgrammeSettings.OutputOf(feed, system), Output, StringComparison.OrdinalIgnoreCase) ? On(feed) : feed)],
        };
    }

    private Feed On(Feed feed) => feed with
    {
        RunMinutes = RunMinutes ?? feed.RunMinutes,
        HoldBleedShutMin = HoldMinutes ?? feed.HoldBleedShutMin,
        Starts = Start is null ? feed.Starts : [Start],
        BleedDownFirst = WithoutBleedDown ? null : BleedDownToUsPerCm is { } to ? (feed.BleedDownFirst ?? new BleedDown()) with { ToUsPerCm = to, Minutes = null } : feed.BleedDownFirst,
    };
}
