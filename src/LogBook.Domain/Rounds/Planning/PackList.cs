using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>What a person packs for the stops of a day.</summary>
/// <param name="Tests">Tests that need reagent.</param>
/// <param name="Bottles">Bottles and dip slides.</param>
/// <param name="Products">Products by site and drum.</param>
/// <param name="Instruments">Instruments with their checks.</param>
public sealed record PackList(IReadOnlyList<PackTest> Tests, IReadOnlyList<PackBottle> Bottles, IReadOnlyList<PackProduct> Products, IReadOnlyList<PackInstrument> Instruments)
{
    /// <summary>Days within which the end of a lot is pointed out. Common practice, no source.</summary>
    public const int ExpirySoonDays = 30;

    /// <summary>Days between visits where none are agreed: four weeks.</summary>
    public const double UsualDays = 28;

    // Read off an instrument or looked at: no reagent is used up.
    private static readonly HashSet<string> WithoutReagent = new(StringComparer.OrdinalIgnoreCase)
    {
        TestCodes.Conductivity, TestCodes.Ph, TestCodes.Temperature, TestCodes.Orp, TestCodes.Turbidity, TestCodes.Tds, TestCodes.Load, TestCodes.Approach,
        TestCodes.CorrosionSteel, TestCodes.CorrosionCopper,
    };

    /// <summary>Whether there is nothing to pack.</summary>
    public bool IsEmpty => Tests.Count == 0 && Bottles.Count == 0 && Products.Count == 0 && Instruments.Count == 0;

    /// <summary>Products of the list that must never meet, by their labels; each pair once.</summary>
    /// <param name="firm">The firm's set-up.</param>
    /// <returns>Pairs of products.</returns>
    public IReadOnlyList<(Product First, Product Second)> NeverTogether(FirmSetUp firm)
    {
        var taken = Products.Where(product => product.SuggestedL > 0).Select(product => firm.Products.GetValueOrDefault(product.Product)).OfType<Product>().DistinctBy(product => product.Code).OrderBy(product => product.Code, StringComparer.Ordinal).ToList();
        return [.. taken.SelectMany((first, place) => taken.Skip(place + 1).Where(second => NeverMeets.Pair(first, second)).Select(second => (first, second)))];
    }

    /// <summary>The list of a day.</summary>
    /// <param name="firm">Lots, instruments and thresholds.</param>
    /// <param name="person">Code of who packs.</param>
    /// <param name="day">Day of the stops.</param>
    /// <param name="stops">The stops, in order.</param>
    /// <param name="toProve">Codes of instruments to be proved in a standard whenever that was done last; case does not count.</param>
    /// <returns>The list.</returns>
    /// <remarks>
    /// Product: use a day × days from the reading to the visit after the next one, less the stock, plus the expanded uncertainty
    /// of the difference, so that it lasts with a chance of about 98 %. Use and stock are those of the run-out. A plant that stands on the
    /// day uses nothing and is left out.
    /// </remarks>
    public static PackList Of(FirmSetUp firm, string person, DateOnly day, IReadOnlyList<PackStop> stops, IReadOnlyList<string>? toProve = null)
    {
        var systems = stops.SelectMany(stop => stop.Systems.Select(pair => (stop, pair.System, pair.Ahead))).ToList();
        var tests = systems.SelectMany(at => VisitNeed.TestsOf(at.System, at.Ahead, day).Select(test => test.Test)).Where(test => !WithoutReagent.Contains(test) && !TestCodes.IsCount(test));
        var lotsInUse = systems.SelectMany(at => at.Ahead.Lots).Where(use => Same(use.Technician, person)).ToList();
        return new PackList(
            [
                .. tests.GroupBy(test => test, StringComparer.OrdinalIgnoreCase).OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
                    .Select(group => new PackTest(group.Key, group.Count(), LotsOf(firm, group.Key, lotsInUse, day))),
            ],
            [.. systems.SelectMany(at => BottlesOf(at.stop, at.System.Code, VisitNeed.TestsOf(at.System, at.Ahead, day), at.Ahead, day))],
            [.. systems.Where(at => OperatingDays.Runs(at.System.Operation, day)).SelectMany(at => at.Ahead.Drums.Where(drum => drum.UsePerDayL is not null).Select(drum => ProductOf(at.stop, at.System, drum, day)))],
            [
                .. systems.SelectMany(at => at.Ahead.Instruments).Where(use => Same(use.Technician, person)).Select(use => use.Instrument)
                    .Distinct(StringComparer.OrdinalIgnoreCase).OrderBy(code => code, StringComparer.OrdinalIgnoreCase).Select(code => InstrumentOf(firm, code, day, toProve?.Contains(code, StringComparer.OrdinalIgnoreCase) == true)),
            ]);
    }

    private static IReadOnlyList<PackLot> LotsOf(FirmSetUp firm, string test, List<LotUse> inUse, DateOnly day) =>
    [
        .. firm.Lots.Values.Where(lot => Same(lot.Test, test))
            .Select(lot => new PackLot(lot.Code, lot.Expires, StandingOf(lot.Expires, day), inUse.Exists(use => Same(use.Lot, lot.Code))))

            // An old lot that nobody uses any more is not packed.
            .Where(lot => lot.IsInUse || lot.Standing is not (LotStanding.Expired or LotStanding.NotKnown))
            .OrderBy(lot => lot.IsInUse ? 0 : 1).ThenBy(lot => lot.Expires ?? DateOnly.MaxValue).ThenBy(lot => lot.Lot, StringComparer.Ordinal),
    ];

    private static LotStanding StandingOf(DateOnly? expires, DateOnly day) => expires switch
    {
        null => LotStanding.NotKnown,
        { } last when last < day => LotStanding.Expired,
        { } last when last <= day.AddDays(ExpirySoonDays) => LotStanding.ExpiresSoon,
        _ => LotStanding.InDate,
    };

    // What falls due before the next visit is sampled at this one; what is taken at most visits, at this one too.
    private static IEnumerable<PackBottle> BottlesOf(PackStop stop, string system, IReadOnlyList<UsualTest> usual, SystemAhead ahead, DateOnly day)
    {
        var next = day.AddDays((int)Math.Ceiling(stop.EveryDays ?? UsualDays));
        var due = ahead.Duties.Where(duty => duty.Test is { } test && TestCodes.IsCount(test) && duty.LastDay < next && (duty.NotBefore is not { } first || first <= day)).ToList();
        return usual.Select(test => test.Test).Where(TestCodes.IsCount).Concat(due.Select(duty => duty.Test!)).Distinct(StringComparer.OrdinalIgnoreCase).OrderBy(test => test, StringComparer.Ordinal)
            .Select(test => new PackBottle(stop.Site, system, test, due.Where(duty => Same(duty.Test!, test)).Select(duty => (DateOnly?)duty.LastDay).Min()));
    }

    private static PackProduct ProductOf(PackStop stop, WaterSystem system, DrumAhead drum, DateOnly day)
    {
        var (use, useUncertainty) = (drum.UsePerDayL!.Value, drum.UsePerDayUncertaintyL ?? 0);
        var until = day.AddDays((int)Math.Ceiling(2 * (stop.EveryDays ?? UsualDays)));
        // Use is told for days of running.
        var days = OperatingDays.Between(system.Operation, drum.ReadOn, until);
        var expanded = 2 * Math.Sqrt(Math.Pow(days * useUncertainty, 2) + Math.Pow(drum.StockUncertaintyL, 2));
        return new PackProduct(
            stop.Site,
            system.Code,
            drum.Drum,
            drum.Product,
            until,
            Math.Max(0, (use * days) - drum.StockL + expanded),
            expanded,
            Math.Max(0, drum.StockL - (use * OperatingDays.Between(system.Operation, drum.ReadOn, day))),
            drum.CapacityL);
    }

    private static PackInstrument InstrumentOf(FirmSetUp firm, string code, DateOnly day, bool isToProve)
    {
        var checks = firm.Instruments.GetValueOrDefault(code)?.Checks ?? [];
        DateOnly? last = checks.Count == 0 ? null : DateOnly.FromDateTime(checks.Max(check => check.At.Utc));
        return new PackInstrument(code, last, isToProve || last is not { } checkedOn || day.DayNumber - checkedOn.DayNumber >= firm.Engine.Thresholds.MeterProvedDays.Value);
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
