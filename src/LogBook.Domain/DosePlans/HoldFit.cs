using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>What a hold does, and what fits instead.</summary>
public sealed record HoldFit
{
    /// <summary>Highest conductivity, at the end of the hold, µS/cm.</summary>
    public required Worked Peak { get; init; }

    /// <summary>Time the bleed-down takes, h; zero without one, no value where it never gets there.</summary>
    public required Computed<double> BleedDownHours { get; init; }

    /// <summary>Conductivity at which the feed begins, µS/cm.</summary>
    public required double FeedStartsAtUsPerCm { get; init; }

    /// <summary>Longest hold from the end of the feed before the alarm, h; no value where the alarm is never reached or there is none.</summary>
    public required Computed<double> LongestHoldHours { get; init; }

    /// <summary>Dose at the end of the feed, mg/L as product.</summary>
    public required Computed<double> DoseAfterFeed { get; init; }

    /// <summary>Dose left at the end of the hold, mg/L as product.</summary>
    public required Computed<double> DoseLeft { get; init; }

    /// <summary>Level times time of the hold, mg·h/L.</summary>
    public required Computed<double> LevelTime { get; init; }

    /// <summary>How it sits.</summary>
    public required HoldVerdict Verdict { get; init; }

    /// <summary>Hold proposed, h: never shorter than the label's contact; null where nothing fits.</summary>
    public required double? ProposedHours { get; init; }

    /// <summary>Conductivity to bleed down to first for the proposed hold, µS/cm; null where none is needed or nothing fits.</summary>
    public required double? ProposedBleedDownUsPerCm { get; init; }

    /// <summary>Time that bleed-down takes, h.</summary>
    public required double? ProposedBleedDownHours { get; init; }
}
