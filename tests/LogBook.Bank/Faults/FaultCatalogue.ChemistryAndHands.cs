using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Saturation;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Faults;

/// <content>Chemistry of the water beyond cycles, coupons, products that meet, slips of the pen.</content>
internal static partial class FaultCatalogue
{
    private const double MilsPerYear = 5;
    private const double MilsPerYearCopper = 0.35;
    private const double LangelierLow = -0.35;
    private const double PhWithoutAcid = 7;

    private static IEnumerable<FaultSpec> ChemistryAndHands =>
    [
        new("pH falls", new Traits(), PhFalls),
        new("water turns corrosive", new Traits { MakeUpTested = true }, WaterAttacks),
        new("coupon corrodes", new Traits(), CouponCorrodes),
        new("products meet", new Traits(), ProductsMeet),
        new("point slips", new Traits { LongestInterval = 21 }, PointSlips),
    ];

    private static readonly string[] ByAlkalinity = [FindingKinds.MakeUpChanged, FindingKinds.RangeOut, FindingKinds.Corrosive, FindingKinds.CyclesDisagree];

    /// <summary>The make-up loses alkalinity, by another source or a dealkaliser: the pH of the tower follows beyond its range.</summary>
    private static Fault PhFalls(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var share = draw.Between(0.08, 0.16);
        return Softer("pH falls", system, onset, share, calcium: null) with
        {
            FoundBy = [FindingKinds.RangeOut],
            IsKnowableAt = (course, i) => course.Truths[i].Running
                && Math.Max(Truth.RangeOf(system, TestCodes.Ph)!.Low!.Value, PhWithoutAcid) - course.Truths[i].Ph > 3 * Statistics3u.Ph,
        };
    }

    /// <summary>Make-up softened and of little alkalinity: the tower water would rather dissolve than deposit. An index alone stays "watch".</summary>
    private static Fault WaterAttacks(BankSystem system, SplitMix draw, DateOnly onset) =>
        Softer("water turns corrosive", system, onset, draw.Between(0.12, 0.3), calcium: draw.Between(5, 8)) with
        {
            FoundBy = [FindingKinds.Corrosive],
            OnlyWatched = true,
            IsKnowableAt = (course, i) => course.Truths[i].Running && course.System.Habits.Calcium
                && LangelierLow - Langelier.Index(
                    Ph.From(course.Truths[i].Ph),
                    new CalciteWater(Temperature.FromCelsius(25), course.Truths[i].Conductivity * 0.65, course.Truths[i].Calcium, course.Truths[i].Alkalinity)).Value > 3 * Statistics3u.Langelier,
        };

    private static Fault Softer(string name, BankSystem system, DateOnly onset, double alkalinityShare, double? calcium) => new()
    {
        Name = name,
        Onset = onset,
        FoundBy = [],
        Explains = ByAlkalinity,
        Forbidden = [.. WaterKinds, FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.BleedNotFlowing, FindingKinds.FeedLow, FindingKinds.MeterStopped],
        Story =
        [
            Entry(onset, ScenarioAct.MakeUpAlkalinity, alkalinityShare * system.Model.MakeUp.AlkalinityMgPerLAsCaCO3!.Value),
            .. calcium is { } soft ? [Entry(onset, ScenarioAct.MakeUpCalcium, soft)] : Array.Empty<ScenarioEntry>(),
        ],
    };

    /// <summary>Coupons come back from the laboratory every two months or so; from the onset on their metal is being lost.</summary>
    private static Fault CouponCorrodes(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var steel = system.Full.Metals.Contains(Metal.Steel);
        var limit = steel ? MilsPerYear : MilsPerYearCopper;
        var (before, after) = (limit * draw.Between(0.2, 0.6), limit * draw.Between(1.5, 3));
        var days = new List<DateOnly>();
        foreach (var day in system.Days)
        {
            if (days.Count == 0 || day.DayNumber - days[^1].DayNumber >= 56)
            {
                days.Add(day);
            }
        }

        var scatter = days.ToDictionary(day => day, _ => 1 + Math.Clamp(0.05 * draw.NextNormal(), -0.12, 0.12));
        var shows = limit * (1 + (3 * Statistics3u.Coupon));
        return new Fault
        {
            Name = "coupon corrodes",
            Onset = onset,
            FoundBy = [FindingKinds.Corrosive],
            Forbidden = [.. WaterKinds, FindingKinds.MakeUpChanged, FindingKinds.CyclesLow],

            // The rate of a coupon that hung across the onset lies between the two.
            Paper = (visit, day) => !scatter.TryGetValue(day, out var off) ? visit : With(visit, record => record with
            {
                Readings =
                [
                    .. record.Readings,
                    new Reading
                    {
                        At = SamplePoints.Tower,
                        Test = steel ? TestCodes.CorrosionSteel : TestCodes.CorrosionCopper,
                        Source = ReadingSource.Lab,
                        Value = Math.Round(RateOf(day, onset, before, after) * off, 2),
                        Unit = "[mil_i]/a",
                        Lab = "LAB",
                        TakenAt = visit.Arrived,
                        ResultAt = Moment.OfUtc(visit.Arrived.Utc.AddDays(9)),
                    },
                ],
            }),
            KnowableOn = course => days.Where(day => course.Truths.Any(t => t.Day == day) && RateOf(day, onset, before, after) > shows).Select(day => (DateOnly?)day.AddDays(9)).FirstOrDefault(),
        };
    }

    private static double RateOf(DateOnly day, DateOnly onset, double before, double after) =>
        before + ((after - before) * Math.Clamp((day.DayNumber - onset.DayNumber) / 56.0, 0, 1));

    /// <summary>Acid and an oxidiser meet: poured at one place by site staff, or one poured into a drum that is for another product.</summary>
    private static Fault ProductsMeet(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var day = VisitFrom(system, onset);
        var (atBasin, oxidantFirst) = (draw.Chance(0.5), draw.Chance(0.5));

        // So little that nothing else shows: what they do to each other is the matter, not what they do to the tower.
        var litres = Math.Max(0.01, Math.Round(4 * system.Model.VolumeL / 1e6, 2));
        ScenarioEntry Poured(string product, int minute) => new() { On = day.ToDateTime(new TimeOnly(3, minute)), Act = ScenarioAct.Poured, Value = litres, Text = product };
        return new Fault
        {
            Name = "products meet",
            Onset = day,
            Repaired = day.AddDays(1),
            FoundBy = [FindingKinds.MixingHazard],
            Explains = [FindingKinds.WrongProduct],
            Forbidden = [.. WaterKinds, FindingKinds.PumpOutput, FindingKinds.StockUnexplained, FindingKinds.FeedHigh, FindingKinds.SettingsChanged],
            Story = atBasin ? [Poured(oxidantFirst ? BankProducts.Oxidant : BankProducts.Acid, 0), Poured(oxidantFirst ? BankProducts.Acid : BankProducts.Oxidant, 20)] : [],
            Paper = (visit, on) => on != day || atBasin ? visit : With(visit, record => record with
            {
                Additions = [.. record.Additions, new Addition { Product = oxidantFirst ? BankProducts.Oxidant : BankProducts.Acid, Amount = litres, Unit = "L", To = "T-1", At = visit.Arrived, Reason = "rest of a canister" }],
            }),
            KnowableOn = _ => day,
        };
    }

    /// <summary>One result is written down ten times too high or too low; nobody asks at entry.</summary>
    private static Fault PointSlips(BankSystem system, SplitMix draw, DateOnly onset)
    {
        // Tests of which the right value is read at the next visit again.
        var test = draw.OneOf(TestCodes.Chloride, TestCodes.Alkalinity, TestCodes.Conductivity);
        var factor = draw.OneOf(0.1, 10);
        var day = VisitFrom(system, onset);
        return new Fault
        {
            Name = "point slips",
            Onset = day,
            Repaired = VisitFrom(system, day.AddDays(1)),
            FoundBy = [FindingKinds.ValueSuspect],
            OnlyWatched = true,
            Forbidden = [.. WaterKinds, FindingKinds.MakeUpChanged, FindingKinds.ProbeFouled, FindingKinds.BleedNotFlowing, FindingKinds.InstrumentShift, FindingKinds.Depositing],
            Paper = (visit, on) => on != day ? visit : With(visit, record => record with
            {
                Readings = [.. record.Readings.Select(r => r.Test != test || r.At != SamplePoints.Tower || r.Source == ReadingSource.Controller
                    ? r
                    : r.Value is { } value ? r with { Value = Math.Round(value * factor, 3) } : r with { Drops = Math.Round(r.Drops!.Value * factor) })],
            }),
            KnowableOn = course => course.Visits[course.IndexOn(day)].Systems[0].Readings.Any(r => r.Test == test && r.At == SamplePoints.Tower && r.Source != ReadingSource.Controller) ? day : null,
        };
    }
}
