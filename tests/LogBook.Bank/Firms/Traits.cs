using LogBook.Domain.Programmes;

namespace LogBook.Bank.Firms;

/// <summary>What a fault asks of the system it is planted in; absent means drawn at random.</summary>
internal sealed record Traits
{
    public bool? MakeUpMeter { get; init; }

    public bool? Pulses { get; init; }

    public bool? Gauges { get; init; }

    public FeedMode? InhibitorMode { get; init; }

    public bool Softened { get; init; }

    public bool Orp { get; init; }

    public bool TwoBiocides { get; init; }

    public bool LongStop { get; init; }

    public bool NightOff { get; init; }

    public bool RoundTheClock { get; init; }

    public bool DosesClash { get; init; }

    public bool HoldTooLong { get; init; }

    public bool OverLabel { get; init; }

    public bool MakeUpTested { get; init; }

    public int? LongestInterval { get; init; }
}
