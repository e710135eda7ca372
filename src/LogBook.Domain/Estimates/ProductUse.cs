using LogBook.Domain.Clocks;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>Product used against product expected over the shortest window that the level can tell (findings, rule 4).</summary>
/// <param name="Drum">The drum at the end of the window.</param>
/// <param name="Feed">The feed it serves.</param>
/// <param name="From">Visit at which the window begins, or null.</param>
/// <param name="Used">Product used, L.</param>
/// <param name="Expected">Product expected for the water lost or the doses planned, L.</param>
/// <param name="Ratio">Used over expected.</param>
public sealed record ProductUse(
    DrumFacts Drum,
    Feed Feed,
    VisitFacts? From,
    Computed<Estimate> Used,
    Computed<Estimate> Expected,
    Computed<Estimate> Ratio)
{
    private const double LongestDays = 150;

    // A stop over a winter; after a longer one nobody counts on a dose that waits.
    private const int LongestWait = 200;
    private const double LevelUncertainties = 12;

    // A window shorter than this part of one that tells would be all level and no use.
    private const double BesideShare = 0.4;

    /// <summary>Ratio over a window twice as telling, or null where there is none: what it does not bear out was a level that slipped.</summary>
    public Estimate? Longer { get; private init; }

    /// <summary>
    /// Mean ratio over the windows that begin one reading earlier and one later; null where there is neither. The windows of several
    /// visits begin with the same level: what these do not bear out was that level, however often it seems confirmed.
    /// </summary>
    public double? Beside { get; private init; }

    /// <summary>Used over the system's own usual use a day, for products that follow demand; null for those with an expectation by loss or plan.</summary>
    public Estimate? AgainstOwnDays { get; private init; }

    /// <summary>Works out the use of every drum that the visit read and whose feed has an expectation: inhibitors and calendar doses.</summary>
    /// <param name="visit">End of the window.</param>
    /// <returns>One entry for each such drum.</returns>
    public static IReadOnlyList<ProductUse> Of(VisitFacts visit)
    {
        var all = new List<ProductUse>();
        foreach (var drum in visit.Drums)
        {
            if (FeedParts.FeedOf(visit, drum.Drum.Code) is not { } feed || !drum.Found.HasValue)
            {
                continue;
            }

            if (feed.Mode == FeedMode.DosePlan || (drum.Product?.Kind == ProductKind.Inhibitor && IsPaced(feed)))
            {
                all.Add(Of(visit, drum, feed));
            }
            else if (feed.Mode is FeedMode.ByOrp or FeedMode.ByPh or FeedMode.ByResidual or FeedMode.Feeder)
            {
                all.Add(AgainstOwn(visit, drum, feed));
            }
        }

        return all;
    }

    /// <summary>Product that left a drum between two visits.</summary>
    /// <param name="from">Visit at which the stretch begins, with a level.</param>
    /// <param name="to">Visit at which it ends, with a level.</param>
    /// <param name="code">Code of the drum.</param>
    /// <returns>Litres: first level − last level + deliveries; the uncertainty is that of two levels. None when an exchange lacks its level.</returns>
    public static Computed<Estimate> UsedBetween(VisitFacts from, VisitFacts to, string code)
    {
        if (from.Drum(code) is not { Left.HasValue: true } first || to.Drum(code) is not { Found.HasValue: true } last)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var used = first.Left.Value.Minus(last.Found.Value);
        for (var between = to.Previous; between is not null && between != from; between = between.Previous)
        {
            if (between.Drum(code) is not { } drum)
            {
                continue;
            }

            if (drum.Change is { } change)
            {
                used = used.PlusExact(change);
            }
            else if (drum.Left.HasValue && drum.Found.HasValue)
            {
                used = used.Plus(drum.Left.Value.Minus(drum.Found.Value));
            }
            else
            {
                return Computed<Estimate>.None(drum.Left.HasValue ? VisitReasons.NotMeasured : drum.Left.Reasons[0]);
            }
        }

        return Computed<Estimate>.Of(used);
    }

    /// <summary>Value and standard uncertainty of <see cref="UsedBetween"/>, for the many windows that are looked at and not taken; null where it is none.</summary>
    internal static (double Litres, double StandardUncertainty)? LitresBetween(VisitFacts from, VisitFacts to, string code)
    {
        if (from.Drum(code) is not { Left: { HasValue: true, Value: var first } } || to.Drum(code) is not { Found: { HasValue: true, Value: var last } })
        {
            return null;
        }

        var litres = first.Value - last.Value;
        for (var between = to.Previous; between is not null && between != from; between = between.Previous)
        {
            if (between.Drum(code) is not { } drum)
            {
                continue;
            }

            if (drum.Change is not { } change)
            {
                // An exchange brings the uncertainty of its own levels.
                return UsedBetween(from, to, code) is { HasValue: true, Value: var used } ? (used.Value, used.StandardUncertainty) : null;
            }

            litres += change;
        }

        return (litres, first.UncertaintyOfDifference(last));
    }

    private static double? Mean(double? a, double? b) => a is { } x && b is { } y ? (x + y) / 2 : a ?? b;

    // By measured value, by hand and solid feeders have no expectation of their own.
    private static bool IsPaced(Feed feed) => feed.Mode is FeedMode.ByMakeUpVolume or FeedMode.AlongsideBleed or FeedMode.FixedShare or FeedMode.ShareOfLastBleed;

    private static ProductUse Of(VisitFacts visit, DrumFacts drum, Feed feed)
    {
        var expecting = new Expecting(visit, drum, feed);
        var (code, level) = (drum.Drum.Code, drum.Found.Value.StandardUncertainty);
        ProductUse? window = null;
        var (later, earlier) = ((double?)null, (double?)null);
        for (var from = visit.Previous; from is not null && (visit.Visit.At - from.Visit.At).TotalDays <= LongestDays; from = from.Previous)
        {
            // Levels and deliveries that may have been made up end a window.
            if (from.IsDoubted)
            {
                break;
            }

            if (from.Drum(code) is not { Found.HasValue: true } first)
            {
                continue;
            }

            if (!first.Drum.Product.Equals(drum.Drum.Product, StringComparison.OrdinalIgnoreCase))
            {
                break;
            }

            if (!expecting.GoBackTo(from))
            {
                continue;
            }

            var ofLevel = Math.Max(first.Found.Value.StandardUncertainty, level);
            var needed = (window is null ? 1 : 2) * LevelUncertainties * ofLevel;
            if (expecting.Litres < needed && (window is null ? expecting.Litres < BesideShare * needed : earlier is not null))
            {
                continue;
            }

            var expected = expecting.Expected;
            var used = UsedOrPoured(from, visit, drum);
            var ratio = used.HasValue ? Computed<Estimate>.Of(used.Value.Over(expected.Value)) : used;
            if (window is null && expected.Value.Value >= needed)
            {
                window = new ProductUse(drum, feed, from, used, expected, ratio);
                continue;
            }

            var value = ratio.HasValue ? ratio.Value.Value : (double?)null;
            (later, earlier) = window is null ? (value, earlier) : (later, earlier ?? value);
            if (window is not null && expected.Value.Value >= needed)
            {
                return window with { Longer = ratio.HasValue ? ratio.Value : null, Beside = Mean(later, earlier) };
            }
        }

        if (window is not null)
        {
            return window with { Beside = Mean(later, earlier) };
        }

        var last = expecting.Expected;
        var none = Computed<Estimate>.None(last.HasValue ? VisitReasons.WindowTooShort : last.Reasons[0]);
        return new ProductUse(drum, feed, null, none, last, none);
    }

    // Oxidant and acid follow demand: the system's own early use for each litre of make-up, and for each day, is what they are held against.
    private static ProductUse AgainstOwn(VisitFacts visit, DrumFacts drum, Feed feed)
    {
        var code = drum.Drum.Code;
        var own = visit.OwnUse(code);
        if (own is not { Until: { } until, PerLitre: { } perLitre, PerDay: { } perDay } || until == visit)
        {
            var missing = Computed<Estimate>.None(VisitReasons.NoBaseline);
            return new ProductUse(drum, feed, null, missing, missing, missing);
        }

        var makeUp = new Estimate(0, "L", 0);
        for (var at = visit; at != until && (visit.Visit.At - at.Visit.At).TotalDays <= LongestDays;)
        {
            if (at.Water is not { MakeUp: { HasValue: true, Value: var litres }, Since: { } since } || since.Visit.At < until.Visit.At || since.IsDoubted)
            {
                break;
            }

            (makeUp, at) = (makeUp.Plus(litres), since);
            var expected = makeUp.Times(perLitre, "L");
            if (at.Drum(code) is { Found.HasValue: true } && expected.Value >= LevelUncertainties * drum.Found.Value.StandardUncertainty)
            {
                var used = UsedOrPoured(at, visit, drum);
                return new ProductUse(drum, feed, at, used, Computed<Estimate>.Of(expected), used.Map(l => l.Over(expected)))
                {
                    AgainstOwnDays = used.HasValue ? used.Value.Over(perDay.Scaled((visit.Visit.At - at.Visit.At).TotalDays, "L")) : null,
                };
            }
        }

        var none = Computed<Estimate>.None(VisitReasons.WindowTooShort);
        return new ProductUse(drum, feed, null, none, none, none);
    }

    /// <summary>Liquid loss between two visits, L: the sum of the intervals between readings of the meter, which must begin with the first.</summary>
    /// <param name="from">First visit.</param>
    /// <param name="to">Last visit.</param>
    /// <returns>Litres, or why not known.</returns>
    internal static Computed<Estimate> LossBetween(VisitFacts from, VisitFacts to)
    {
        Estimate? sum = null;
        var at = to;
        while (at != from)
        {
            if (!at.Balance.LiquidLoss.HasValue)
            {
                return at.Balance.LiquidLoss;
            }

            sum = sum is null ? at.Balance.LiquidLoss.Value : sum.Plus(at.Balance.LiquidLoss.Value);
            if (at.Water.Since is not { } since || since.Visit.At < from.Visit.At)
            {
                return Computed<Estimate>.None(VisitReasons.NotMeasured);
            }

            at = since;
        }

        return sum is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : Computed<Estimate>.Of(sum);
    }

    /// <summary>Starts of a calendar dose when the plant runs. Without flow a dose waits: of those due within a stop one runs after it.</summary>
    /// <param name="to">Visit whose programme holds.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="fromUtc">Start of the stretch.</param>
    /// <param name="untilUtc">End of the stretch.</param>
    /// <returns>Starts, UTC, in order.</returns>
    internal static IReadOnlyList<DateTime> RunningStarts(VisitFacts to, Feed feed, DateTime fromUtc, DateTime untilUtc)
    {
        var (history, operation) = (to.History, to.History.System.Operation);
        if (NeverStops(operation))
        {
            return history.Doses.Starts(to.Programme!, feed, fromUtc, untilUtc).ToArray();
        }

        var starts = history.Doses.Starts(to.Programme!, feed, fromUtc.AddDays(-LongestWait), untilUtc);
        var running = new List<DateTime>();
        foreach (var start in starts)
        {
            var day = history.DayOf(start);
            var runs = day;
            for (var i = 0; i < LongestWait && !OperatingDays.Runs(operation!, runs); i++)
            {
                runs = runs.AddDays(1);
            }

            var moment = runs == day ? start : TimeZoneInfo.ConvertTimeToUtc(runs.ToDateTime(TimeOnly.MinValue).AddHours(12), history.Zone);
            if (moment >= fromUtc && moment <= untilUtc && (runs == day || !running.Contains(moment)))
            {
                running.Add(moment);
            }
        }

        running.Sort();
        return running;
    }

    /// <summary>How many of them there are.</summary>
    internal static int RunningStartsCount(VisitFacts to, Feed feed, DateTime fromUtc, DateTime untilUtc) => NeverStops(to.History.System.Operation)
        ? to.History.Doses.Starts(to.Programme!, feed, fromUtc, untilUtc).Length
        : RunningStarts(to, feed, fromUtc, untilUtc).Count;

    private static bool NeverStops(Operation? operation) => operation is null || (operation.Stops.Count == 0 && operation.Seasons.Count == 0);

    private static Computed<Estimate> UsedOrPoured(VisitFacts from, VisitFacts to, DrumFacts drum)
    {
        var used = UsedBetween(from, to, drum.Drum.Code);
        return used.HasValue && PouredBetween(from, to, drum) is not 0 and var poured ? Computed<Estimate>.Of(used.Value.PlusExact(poured)) : used;
    }

    /// <summary>Amount of one calendar dose, L: run time times pump output, else target times volume.</summary>
    /// <param name="visit">Visit, for drawdowns before it.</param>
    /// <param name="drum">The drum.</param>
    /// <param name="feed">The feed.</param>
    /// <returns>Litres, or that the programme does not tell.</returns>
    internal static Computed<Estimate> AmountOf(VisitFacts visit, DrumFacts drum, Feed feed)
    {
        if (feed.RunMinutes is { } minutes && PumpRate(visit, drum.Drum.Code) is { } rate)
        {
            return Computed<Estimate>.Of(rate.Scaled(minutes / 60, "L"));
        }

        return (feed.TargetMgPerL ?? drum.Product?.DoseMgPerL) is { } target && visit.History.System.VolumeL is { } volume
            ? Computed<Estimate>.Of(visit.History.Firm.Engine.Uncertainties.SystemVolume().On(volume * target / 1e6 / (drum.Product?.DensityKgPerL ?? 1), "L"))
            : Computed<Estimate>.None(VisitReasons.NoProgramme);
    }

    /// <summary>Output of the pump of a drum as it should be, L/h: by its rating. Null where it is not on file.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="drum">Code of the drum.</param>
    /// <returns>L/h.</returns>
    internal static Estimate? PumpRate(VisitFacts visit, string drum)
    {
        foreach (var pump in visit.History.Pumps)
        {
            if (FeedParts.Same(pump.Drum, drum))
            {
                return pump.RatedLPerH is { } rated ? visit.History.Firm.Engine.Uncertainties.PumpOutput(false, pump.Code).On(rated, "L/h") : null;
            }
        }

        return null;
    }

    /// <summary>Product of a drum poured by hand after one visit up to another, L.</summary>
    /// <param name="from">Visit at which the stretch begins; what it poured before leaving counts.</param>
    /// <param name="to">Visit at which it ends; what it poured does not count.</param>
    /// <param name="drum">The drum, for its product.</param>
    /// <returns>Litres, exactly as entered; what was poured back into a drum is a delivery and not counted.</returns>
    internal static double PouredBetween(VisitFacts from, VisitFacts to, DrumFacts drum)
    {
        var litres = 0.0;
        for (var between = to.Previous; between is not null; between = between.Previous)
        {
            var poured = 0.0;
            var additions = between.Record.Additions;
            for (var i = 0; i < additions.Count; i++)
            {
                if (FeedParts.Same(additions[i].Product, drum.Drum.Product) && !FeedParts.IsDrum(between.History, additions[i].To)
                    && FeedParts.Litres(additions[i].Amount, additions[i].Unit, drum.Product) is { HasValue: true, Value: var amount })
                {
                    poured += amount;
                }
            }

            litres += poured;
            if (between == from)
            {
                break;
            }
        }

        return litres;
    }

    // Walks back from the end of the window once: sums and starts are carried on, not worked out anew for every beginning, and become an
    // estimate only where a window may begin.
    private sealed class Expecting(VisitFacts to, DrumFacts drum, Feed feed)
    {
        private readonly Computed<Estimate> _dose = feed.Mode == FeedMode.DosePlan ? AmountOf(to, drum, feed) : Computed<Estimate>.None(VisitReasons.NoProgramme);
        private readonly IReadOnlyList<DateTime> _starts = feed.Mode == FeedMode.DosePlan
            ? RunningStarts(to, feed, to.Visit.At.AddDays(-LongestDays), to.Visit.At)
            : [];

        private readonly EstimateSum _loss = new("L");
        private readonly double? _perLitre = (feed.TargetMgPerL ?? drum.Product?.DoseMgPerL) is { } target ? target / 1e6 / (drum.Product?.DensityKgPerL ?? 1) : null;
        private int _first = int.MaxValue;
        private VisitFacts _at = to;
        private Computed<Estimate>? _noLoss;
        private Computed<Estimate>? _nothing = Computed<Estimate>.None(VisitReasons.WindowTooShort);
        private double _factor;

        // What is expected since the visit gone back to last, L.
        public double Litres => feed.Mode == FeedMode.DosePlan ? _dose.Value.Value * _factor : _loss.Value * _factor;

        public Computed<Estimate> Expected => _nothing
            ?? Computed<Estimate>.Of(feed.Mode == FeedMode.DosePlan ? _dose.Value.Scaled(_factor) : _loss.ToEstimate().Scaled(_factor));

        public bool GoBackTo(VisitFacts from)
        {
            if (feed.Mode == FeedMode.DosePlan)
            {
                _nothing = _dose.HasValue ? null : _dose;
                _factor = _dose.HasValue ? StartsSince(from.Visit.At) : 0;
            }
            else if (_perLitre is { } perLitre)
            {
                _nothing = LossSince(from);
                _factor = perLitre;
            }
            else
            {
                _nothing = Computed<Estimate>.None(VisitReasons.NoProgramme);
            }

            return _nothing is null;
        }

        // The starts are in order, and each beginning lies before the last one.
        private int StartsSince(DateTime moment)
        {
            _first = Math.Min(_first, _starts.Count);
            while (_first > 0 && _starts[_first - 1] >= moment)
            {
                _first--;
            }

            return _starts.Count - _first;
        }

        // Why the loss is not known, or null.
        private Computed<Estimate>? LossSince(VisitFacts from)
        {
            while (_noLoss is null && _at.Visit.At > from.Visit.At)
            {
                var interval = _at.Balance.LiquidLoss;
                var since = _at.Water.Since;
                if (!interval.HasValue)
                {
                    _noLoss = interval;
                }
                else if (since is null)
                {
                    _noLoss = Computed<Estimate>.None(VisitReasons.NotMeasured);
                }
                else
                {
                    _loss.Add(interval.Value);
                }

                _at = since ?? _at;
            }

            return _noLoss ?? (_at == from ? null : Computed<Estimate>.None(VisitReasons.NotMeasured));
        }
    }
}
