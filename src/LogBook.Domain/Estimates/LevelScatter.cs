namespace LogBook.Domain.Estimates;

/// <summary>How far the levels of one drum scatter about an even use, as its own readings show.</summary>
/// <remarks>
/// A dip that is worse than the table says makes every window too short. Of three levels in a row the middle one is held against the line
/// between the others; its deviation is their errors times sqrt(1 + w0² + w2²). The median of many is blind to a spill, a slip or a change
/// of use. A level in cm may come from a stick, a glass or a gauge: before a drum's own readings tell, it counts as the worst of them. It may only widen the table's value, and at most threefold: uneven use looks like scatter too.
/// </remarks>
internal sealed class LevelScatter
{
    private const int Fewest = 8;
    private const int FewestAtAll = 3;
    private const int Most = 24;
    private const double WidestTimes = 3;

    // Median of the absolute values of a normal variable, in standard deviations.
    private const double MedianOfNormal = 0.6745;

    // Latest deviation of a level from the line between its neighbours, over their weight, L, and how many there are with those before it,
    // up to the most that count. A chain: each visit adds one, and a copy of all for each visit and drum would be kept as long as the visit.
    private readonly double _deviation;
    private readonly LevelScatter? _before;
    private readonly int _count;

    private LevelScatter(double deviation, LevelScatter? before)
    {
        (_deviation, _before) = (deviation, before);
        _count = before is null ? 0 : Math.Min(Most, before._count + 1);
    }

    /// <summary>Before there are any readings.</summary>
    public static LevelScatter None { get; } = new(0, null);

    /// <summary>Works out the deviations from those of the visit before.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="drum">Code of the drum.</param>
    /// <returns>The deviations up to this visit.</returns>
    public static LevelScatter Of(VisitFacts visit, string drum)
    {
        if (visit.Previous is not { } middle)
        {
            return None;
        }

        var past = middle.LevelScatter(drum);
        if (middle.Previous is not { } first || Used(first, middle, drum) is not { } before || Used(middle, visit, drum) is not { } after || middle.Drum(drum)!.Change is null)
        {
            return past;
        }

        var (t1, t2) = ((middle.Visit.At - first.Visit.At).TotalDays, (visit.Visit.At - middle.Visit.At).TotalDays);
        if (t1 <= 0 || t2 <= 0)
        {
            return past;
        }

        var (w0, w2) = (t2 / (t1 + t2), t1 / (t1 + t2));
        var deviation = Math.Abs((before * w0) - (after * w2)) / Math.Sqrt(1 + (w0 * w0) + (w2 * w2));
        return new LevelScatter(deviation, past);
    }

    /// <summary>Standard uncertainty of a level, widened where the drum's own readings ask for it.</summary>
    /// <param name="byTable">By the table, L.</param>
    /// <param name="byGauge">What a level is worth whose way of reading is not on file, L: that of a gauge, until the drum's own readings tell.</param>
    /// <returns>L.</returns>
    public double Widened(double byTable, double byGauge)
    {
        var unknown = Math.Max(byTable, byGauge);
        if (_count < FewestAtAll)
        {
            return unknown;
        }

        Span<double> deviations = stackalloc double[Most];
        var at = this;
        for (var i = 0; i < _count; i++, at = at._before!)
        {
            deviations[i] = at._deviation;
        }

        var own = Math.Clamp(Statistics.MedianInPlace(deviations[.._count]) / MedianOfNormal, byTable, WidestTimes * byTable);
        return _count >= Fewest ? own : (((Fewest - _count) * unknown) + (_count * own)) / Fewest;
    }

    private static double? Used(VisitFacts from, VisitFacts to, string drum) =>
        from.Drum(drum) is { Left: { HasValue: true, Value: var left } } && to.Drum(drum) is { Found: { HasValue: true, Value: var found } }
            ? left.Value - found.Value
            : null;
}
