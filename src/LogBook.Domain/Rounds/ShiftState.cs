namespace LogBook.Domain.Rounds;

/// <summary>One meter or lot in the round replay: its readings so far and the shift that stands, if any.</summary>
internal sealed class ShiftState(string kind, string code, string test)
{
    // A correction that follows every new reading would make every later judgement move with it; and probes set to a wrong meter hide
    // its offset after a while.
    private const double FollowedDays = 60;
    private const double LeastChange = 0.02;

    private readonly List<(DateOnly FirstSeen, List<ShiftStep> Steps)> _shifts = [];

    public string Kind { get; } = kind;

    public string Code { get; } = code;

    public string Test { get; } = test;

    /// <summary>Comparisons in no order.</summary>
    public List<Comparison> Comparisons { get; } = [];

    /// <summary>Last good check in a standard, UTC.</summary>
    public DateTime? GoodCheck { get; set; }

    public bool IsOpen => _shifts.Count > 0 && _shifts[^1].Steps[^1].Until is null;

    public ShiftStep? Now => IsOpen ? _shifts[^1].Steps[^1] : null;

    /// <summary>When the shift that stands was found, UTC.</summary>
    public DateTime OpenedAt => _shifts[^1].Steps[0].Known;

    public IEnumerable<RoundShift> Shifts => _shifts.Select(shift => new RoundShift(Kind, Code, Test, shift.FirstSeen, [.. shift.Steps]));

    public bool Covers(DateTime at) => _shifts.Any(shift => at >= shift.Steps[^1].From && (shift.Steps[^1].Until is not { } until || at < until));

    public bool WasEver => _shifts.Count > 0;

    public void Open(DateOnly day, DateTime known, double share, DateTime from) => _shifts.Add((day, [new ShiftStep(known, share, from, null)]));

    public void Follow(DateTime known, double share)
    {
        if (Now is { } now && (known - OpenedAt).TotalDays <= FollowedDays && Math.Abs(now.Share - share) > LeastChange)
        {
            _shifts[^1].Steps.Add(now with { Known = known, Share = share });
        }
    }

    public void Close(DateTime known, DateTime until)
    {
        if (Now is { } now)
        {
            _shifts[^1].Steps.Add(now with { Known = known, Until = until });
        }
    }
}
