using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>
/// Cycles by an ion that can fall out of the water (calcium, alkalinity, silica) over cycles of the water by its agreeing routes, as the
/// system usually has it: the median of its first undisturbed visits after a cleaning or a new programme.
/// </summary>
/// <remarks>The first visits, not the latest: deposits that grow slowly would otherwise become normal.</remarks>
public sealed class DepositNormal
{
    private const int Enough = 5;
    private const int Most = 12;
    private const double HalfLives = 3;
    private const double SameMakeUp = 0.30;
    private const double SoftenedBelow = 30;

    // A ratio this low, or this far under what is known so far, is not learnt from.
    private const double Suspicious = 0.80;
    private const double TooLow = 0.75;

    private readonly IReadOnlyDictionary<string, IReadOnlyList<double>> _ratios;

    private CodeMemo<Estimate> _usual;

    private DepositNormal(IReadOnlyDictionary<string, IReadOnlyList<double>> ratios) => _ratios = ratios;

    /// <summary>Nothing learnt yet.</summary>
    public static DepositNormal None { get; } = new(new Dictionary<string, IReadOnlyList<double>>());

    /// <summary>Ions that can fall out, the surest sign first.</summary>
    public static IReadOnlyList<string> Ions { get; } = [TestCodes.Calcium, TestCodes.Alkalinity, TestCodes.Silica];

    /// <summary>The ratio of one ion at a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="test">One of <see cref="Ions"/>.</param>
    /// <returns>The ratio, or why there is none.</returns>
    public static Computed<Estimate> RatioOf(VisitFacts visit, string test)
    {
        if (visit.Unsettled is { } unsettled)
        {
            return Computed<Estimate>.None(unsettled);
        }

        if (visit.TowerReading(test) is not { IsCensored: false } tower)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        if (!HasSettledMakeUp(visit, test))
        {
            return Computed<Estimate>.None(VisitReasons.MakeUpUnsettled);
        }

        return visit.MakeUp(test).Then(makeUp => makeUp.Value < (test == TestCodes.Calcium ? SoftenedBelow : double.Epsilon)
            ? Computed<Estimate>.None(VisitReasons.SoftenedMakeUp)
            : Conservative(visit, test).Map(cycles => tower.Value.Over(makeUp).Over(cycles)));
    }

    /// <summary>The system's own usual ratio.</summary>
    /// <param name="test">One of <see cref="Ions"/>.</param>
    /// <returns>The median of at least five, with its uncertainty, or null.</returns>
    public Estimate? Of(string test)
    {
        if (_ratios.GetValueOrDefault(test) is not { Count: >= Enough } ratios)
        {
            return null;
        }

        // Asked for at every visit, it changes only while it is learnt.
        if (_usual.TryGet(test, out var kept))
        {
            return kept;
        }

        var mean = ratios.Average();
        var deviation = Math.Sqrt(ratios.Sum(ratio => (ratio - mean) * (ratio - mean)) / (ratios.Count - 1));

        // A median of normal values scatters by sqrt(pi/2) times the standard error of their mean.
        return _usual.Keep(test, new Estimate(Statistics.Median([.. ratios]), "1", 1.2533 * deviation / Math.Sqrt(ratios.Count)));
    }

    /// <summary>What is known after one more visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The normal with its ratios.</returns>
    public DepositNormal After(VisitFacts visit)
    {
        var anew = (visit.Record.Events.Count > 0 && visit.Record.Events.Any(e => e.Type is EventType.Cleaned))
            || (visit.Previous is { } previous && previous.Programme?.TargetCycles != visit.Programme?.TargetCycles);
        var start = anew ? None : this;
        Dictionary<string, IReadOnlyList<double>>? ratios = null;
        foreach (var test in Ions)
        {
            var known = start._ratios.GetValueOrDefault(test) ?? [];
            if (known.Count < Most && RatioOf(visit, test) is { HasValue: true, Value: var ratio } && ratio.Value >= TooLow && !(known.Count >= 3 && ratio.Value < Suspicious * Statistics.Median([.. known])))
            {
                ratios ??= new Dictionary<string, IReadOnlyList<double>>(start._ratios);
                ratios[test] = [.. known, ratio.Value];
            }
        }

        return ratios is null ? start : new DepositNormal(ratios);
    }

    // Where the routes contradict each other nobody knows what the water does. Else conductivity steadies the coarse steps of an ion test.
    private static Computed<Estimate> Conservative(VisitFacts visit, string test)
    {
        var cycles = visit.Cycles;
        if (cycles.RoutesContradict)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var best = test == TestCodes.Silica && cycles.AgreeingRoutes.Contains(FigureCodes.CyclesBySilica) ? cycles.ByChloride : cycles.Best;
        return best is { HasValue: true, Value.Value: > 0 } ? best : Computed<Estimate>.None(VisitReasons.NotMeasured);
    }

    // The tower follows its make-up by half-lives: readings of the make-up within three of them, and the one before, must agree.
    private static bool HasSettledMakeUp(VisitFacts visit, string test)
    {
        var since = visit.Visit.At - TimeSpan.FromDays(HalfLives * 0.693 * visit.FadingDays);
        var (lowest, highest) = (double.MaxValue, double.MinValue);
        foreach (var earlier in visit.Back())
        {
            if (earlier.MakeUpReading(test) is not { } reading)
            {
                continue;
            }

            lowest = Math.Min(lowest, reading.Value.Value);
            highest = Math.Max(highest, reading.Value.Value);
            if (earlier.Visit.At < since)
            {
                break;
            }
        }

        return highest <= lowest * (1 + SameMakeUp) || highest - lowest <= 20;
    }

    /// <summary>Whether an acid is fed, which takes alkalinity away.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>True when a feed or a drum of the system holds acid.</returns>
    internal static bool FeedsAcid(VisitFacts visit) => visit.History.System.Drums.Any(drum => IsAcid(visit, drum));

    private static bool IsAcid(VisitFacts visit, Drum drum) => visit.History.Firm.Products.GetValueOrDefault(drum.Product)?.Kind == ProductKind.Acid;
}
