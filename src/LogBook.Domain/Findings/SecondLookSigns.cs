using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>Signs that a record was copied or made up. One alone says nothing; two independent ones ask for a second look.</summary>
/// <remarks>
/// Steady plants repeat themselves, coarse kits repeat a step, and settings are copied because they have not changed: repeats count
/// only beyond what the uncertainty and step of each test let expect, and settings are not looked at.
/// </remarks>
public static class SecondLookSigns
{
    /// <summary>More results repeat exactly than their steps explain.</summary>
    public const string Repeats = "repeats";

    /// <summary>A counter advanced by the very same number over unequal intervals.</summary>
    public const string EqualSteps = "equal-steps";

    /// <summary>The visit was shorter than half of what its tests take.</summary>
    public const string ShortStay = "short-stay";

    /// <summary>No settling of the hand meter, which is usual at this system.</summary>
    public const string NoSettling = "no-settling";

    /// <summary>An output ran for more hours than passed, or the registers contradict each other beyond doubt.</summary>
    public const string Impossible = "impossible";

    private const int LeastSigns = 2;
    private const double LeastCounts = 100;
    private const double UnequalShare = 0.04;
    private const double ChanceOfRepeats = 0.001;
    private const int LeastRepeats = 3;
    private const int SettlingLookBack = 6;

    private static readonly Dictionary<string, Text> Names = new(StringComparer.Ordinal)
    {
        [Repeats] = new("more results equal to an earlier visit's than their steps explain", "más resultados iguales a los de otra visita que los que explican sus pasos", "mais resultados iguais aos de outra visita do que seus passos explicam"),
        [EqualSteps] = new("a counter with the same step over unequal intervals", "un contador con el mismo avance en intervalos desiguales", "um contador com o mesmo avanço em intervalos desiguais"),
        [ShortStay] = new("fewer minutes on site than half of what the tests take", "menos minutos en el sitio que la mitad de lo que llevan los análisis", "menos minutos no local do que a metade do que os testes levam"),
        [NoSettling] = new("no settling of the hand meter, which is usual here", "sin estabilización del medidor portátil, habitual aquí", "sem estabilização do medidor portátil, usual aqui"),
        [Impossible] = new("more hours run than passed", "más horas de marcha que las transcurridas", "mais horas de funcionamento do que passaram"),
    };

    // Working minutes of a test at least, one after the other: common practice, no citable source.
    private static readonly Dictionary<string, double> MinutesOf = new(StringComparer.OrdinalIgnoreCase)
    {
        [TestCodes.Conductivity] = 1, [TestCodes.Ph] = 1, [TestCodes.Temperature] = 0.5, [TestCodes.Chloride] = 2, [TestCodes.Calcium] = 2, [TestCodes.Magnesium] = 2,
        [TestCodes.TotalHardness] = 2, [TestCodes.Alkalinity] = 2, [TestCodes.PAlkalinity] = 2, [TestCodes.Sulphate] = 3, [TestCodes.Silica] = 4, [TestCodes.Inhibitor] = 3,
        [TestCodes.FreeHalogen] = 2, [TestCodes.TotalHalogen] = 2, [TestCodes.Iron] = 3, [TestCodes.Copper] = 3, [TestCodes.Phosphonate] = 5, [TestCodes.Orthophosphate] = 4,
        [TestCodes.Molybdate] = 3, [TestCodes.Azole] = 4, [TestCodes.DipSlide] = 1,
    };

    /// <summary>Name of a sign.</summary>
    /// <param name="code">One of the codes of this class.</param>
    /// <returns>Its name; the code itself for one that is not known.</returns>
    public static Text NameOf(string code) => Names.TryGetValue(code, out var name) ? name : new Text(code, code, code);

    /// <summary>Whether signs are enough for a second look.</summary>
    /// <param name="signs">Signs of one visit.</param>
    /// <returns>True from two on.</returns>
    public static bool Suffice(IReadOnlyList<SignClue> signs) => signs.Count >= LeastSigns;

    /// <summary>Signs of a visit against those before it.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>At most one of each code, by code.</returns>
    internal static IReadOnlyList<SignClue> Of(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Visit.Visit.Kind is VisitKind.Result or VisitKind.Delivery or VisitKind.Stopped)
        {
            return [];
        }

        // Nearly every visit has none.
        List<SignClue>? signs = null;
        Add(EqualStepsOf(visit));
        Add(ImpossibleOf(visit));
        Add(NoSettlingOf(visit, thresholds));
        Add(RepeatsOf(visit));
        Add(ShortStayOf(visit, thresholds));
        return signs is null ? [] : signs;

        void Add(SignClue? sign)
        {
            if (sign is not null)
            {
                (signs ??= []).Add(sign);
            }
        }
    }

    private static SignClue? ShortStayOf(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Visit.Visit.Left is not { } left)
        {
            return null;
        }

        var minutes = (left.Utc - visit.Visit.Visit.Arrived.Utc).TotalMinutes;
        var needed = 0.0;
        foreach (var system in visit.Visit.Visit.Systems)
        {
            for (var i = 0; i < system.Readings.Count; i++)
            {
                var reading = system.Readings[i];
                needed += reading.Source is null or ReadingSource.Kit or ReadingSource.Reference && reading.NotTaken is null ? MinutesOf.GetValueOrDefault(reading.Test, 1) : 0;
            }
        }

        var limit = thresholds.StayShare.Value * needed;
        return minutes >= 0 && minutes < limit ? new SignClue(ShortStay, minutes, limit, "min") : null;
    }

    private static SignClue? NoSettlingOf(VisitFacts visit, FindingThresholds thresholds)
    {
        // Nearly every comparison has settled, and then nothing before it is asked.
        if (visit.Record.Probes.Count == 0)
        {
            return null;
        }

        static IEnumerable<ProbeReading> Compared(VisitFacts at) => at.Record.Probes.Where(probe => probe.Reference is not null && (probe.Of ?? Sites.ProbeKind.Conductivity) == Sites.ProbeKind.Conductivity);
        var now = Compared(visit).ToList();
        if (now.Count == 0 || now.Exists(probe => probe.SettledMin >= 2))
        {
            return null;
        }

        var usual = visit.Back().Skip(1).Take(SettlingLookBack).SelectMany(Compared).Count(probe => probe.SettledMin >= thresholds.SettledMinutes.Value);
        return usual >= 3 ? new SignClue(NoSettling, now.Max(probe => probe.SettledMin ?? 0), thresholds.SettledMinutes.Value, "min") : null;
    }

    private static SignClue? EqualStepsOf(VisitFacts visit)
    {
        if (visit.Previous is not { } last || last.Previous is not { } first)
        {
            return null;
        }

        var (earlier, later) = ((last.Visit.At - first.Visit.At).TotalDays, (visit.Visit.At - last.Visit.At).TotalDays);
        if (earlier <= 0 || later <= 0 || Math.Abs(earlier - later) < UnequalShare * Math.Max(earlier, later))
        {
            return null;
        }

        foreach (var now in visit.Record.Meters)
        {
            var (then, before) = (last.MeterReading(now.Meter), first.MeterReading(now.Meter));
            if (then is null || before is null || now.Replaced == true || then.Replaced == true || now.Reset == true || then.Reset == true)
            {
                continue;
            }

            if (Step(now.Total, then.Total, before.Total) is { } total)
            {
                return total;
            }

            if (Step(now.Dial, then.Dial, before.Dial) is { } dial)
            {
                return dial;
            }
        }

        return null;
    }

    private static SignClue? Step(double? now, double? then, double? before) =>
        now is { } c && then is { } b && before is { } a && c - b >= LeastCounts && Math.Abs(c - b - (b - a)) < 0.5 ? new SignClue(EqualSteps, c - b, b - a, "1") : null;

    private static SignClue? ImpossibleOf(VisitFacts visit)
    {
        var read = visit.Record.HoursRun;
        for (var i = 0; i < read.Count; i++)
        {
            var now = read[i];
            if (now.Reset == true || visit.HoursSince(now.Output) is not { } since)
            {
                continue;
            }

            var before = HoursOf(since, now.Output);
            var passed = (visit.Visit.At - since.Visit.At).TotalHours;
            if (now.Hours - before > (1.02 * passed) + 1)
            {
                return new SignClue(Impossible, now.Hours - before, passed, "h");
            }
        }

        return null;
    }

    private static double HoursOf(VisitFacts visit, string output)
    {
        var read = visit.Record.HoursRun;
        var at = 0;
        while (!read[at].Output.Equals(output, StringComparison.OrdinalIgnoreCase))
        {
            at++;
        }

        return read[at].Hours;
    }

    // Exact repeats of the last visit: each test repeats by chance with the probability that two readings fall into one step.
    private static SignClue? RepeatsOf(VisitFacts visit)
    {
        if (visit.Previous is not { } last)
        {
            return null;
        }

        var chances = new List<double>(visit.Tests.Count);
        var repeats = 0;
        for (var i = 0; i < visit.Tests.Count; i++)
        {
            var result = visit.Tests[i];
            if (!(!result.IsCensored && result.Value.Random > 0 && result.Reading.Source is null or ReadingSource.Kit or ReadingSource.Reference)
                || SameReading(last.Tests, result.Reading) is not { IsCensored: false } before || StepOf(visit, result.Reading, result.Value.Value) is not { } step)
            {
                continue;
            }

            chances.Add(Math.Min(1, step / (2 * Math.Sqrt(Math.PI) * result.Value.StandardUncertainty)));
            repeats += Math.Abs(before.Value.Value - result.Value.Value) < 1e-9 * Math.Abs(result.Value.Value) ? 1 : 0;
        }

        return repeats >= LeastRepeats && AtLeast(repeats, chances) < ChanceOfRepeats ? new SignClue(Repeats, repeats, chances.Sum(), "1") : null;
    }

    private static TestResult? SameReading(IReadOnlyList<TestResult> tests, Reading reading)
    {
        for (var i = 0; i < tests.Count; i++)
        {
            if (IsSame(tests[i].Reading, reading))
            {
                return tests[i];
            }
        }

        return null;
    }

    private static bool IsSame(Reading a, Reading b) => a.Source == b.Source && a.Phase == b.Phase && a.Test == b.Test && a.At == b.At;

    // Half a per cent where nothing is known of a kit's step: then only numbers with more figures than that count.
    private static double? StepOf(VisitFacts visit, Reading reading, double value) => reading.Test switch
    {
        TestCodes.Ph => 0.1,
        TestCodes.Temperature => null,
        TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella => null,
        TestCodes.Conductivity => value >= 1000 ? 10 : 1,
        _ => reading.PerDrop ?? (reading.Lot is { } lot ? visit.History.Firm.Lots.GetValueOrDefault(lot)?.Step : null) ?? visit.History.Firm.Tests.GetValueOrDefault(reading.Test)?.Step
            ?? (value != Math.Round(value) ? 0.01 * value : null),
    };

    private static double AtLeast(int repeats, IReadOnlyList<double> chances)
    {
        var distribution = new double[chances.Count + 1];
        distribution[0] = 1;
        for (var i = 0; i < chances.Count; i++)
        {
            for (var k = i + 1; k > 0; k--)
            {
                distribution[k] = (distribution[k] * (1 - chances[i])) + (distribution[k - 1] * chances[i]);
            }

            distribution[0] *= 1 - chances[i];
        }

        return distribution.Skip(repeats).Sum();
    }
}
