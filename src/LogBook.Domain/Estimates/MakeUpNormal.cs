using System.Globalization;
using LogBook.Domain.Assessments;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>What the make-up water of a system usually is: its last twelve readings of each test that were not themselves shifted.</summary>
/// <remarks>
/// Shifted readings stay out, so that a softener that fails does not become normal by failing long. A source that stays other for half a
/// dozen readings is the water there is now, and so is the water a new programme was worked out for: both begin a new normal. Softened
/// hardness never does by itself.
/// </remarks>
public sealed class MakeUpNormal
{
    private const int Most = 12;
    private const int Enough = 5;
    private const int NewWater = 6;
    private const double SoftenedBelow = 30;
    private const double AlkalinityTimes = 2;

    // What counts as shifted for the purpose of learning; the rule has its own thresholds.
    private const double LearningPercent = 15;
    private const double LearningSigmas = 3;
    private const double LearningHardness = 10;

    // One for each of the tests, in their order; null before its first reading.
    private readonly Series?[] _series;

    private MakeUpNormal(Series?[] series) => _series = series;

    /// <summary>Nothing learnt yet.</summary>
    public static MakeUpNormal None { get; } = new(new Series?[8]);

    /// <summary>Tests of the make-up that are followed.</summary>
    public static IReadOnlyList<string> Tests { get; } =
    [
        TestCodes.Conductivity, TestCodes.Chloride, TestCodes.Calcium, TestCodes.TotalHardness, TestCodes.Magnesium, TestCodes.Alkalinity, TestCodes.Silica, TestCodes.Sulphate,
    ];

    /// <summary>What is known after one more visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The normal with its readings.</returns>
    public MakeUpNormal After(VisitFacts visit)
    {
        var start = visit.Previous is { } previous && IsAnew(previous.Programme, visit.Programme) ? None : this;
        Series?[]? series = null;
        for (var i = 0; i < Tests.Count; i++)
        {
            var test = Tests[i];
            if (visit.MakeUpReading(test) is { IsCensored: false } reading)
            {
                series ??= [.. start._series];
                var known = series[i] ?? new Series([], []);
                var input = new FigureInput(string.Create(CultureInfo.InvariantCulture, $"own-reading:{visit.Day:yyyy-MM-dd}"), reading.Value.Value, reading.Value.Unit);
                series[i] = start.ShiftOf(visit, test) is { } shift && IsShifted(shift) ? known.Beside(input, shift.IsSoftenedHardness) : known.With(input);
            }
        }

        return series is null ? start : new MakeUpNormal(series);
    }

    /// <summary>A test at a visit against this normal.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="test">Code of the test.</param>
    /// <returns>The comparison; null where it was not tested or there is no normal yet.</returns>
    public MakeUpShift? ShiftOf(VisitFacts visit, string test)
    {
        if (visit.MakeUpReading(test) is not { IsCensored: false, Value: { } now } reading)
        {
            return null;
        }

        var known = Of(test);
        var values = known?.Readings ?? [];
        var hardness = test is TestCodes.Calcium or TestCodes.TotalHardness;
        if (values.Count < Enough)
        {
            // Before an own normal a softener is judged by what the programme was worked out for.
            return test == TestCodes.Calcium && visit.Programme?.MakeUp is { CalciumMgPerLAsCaCO3: { } asked and > 0 and < SoftenedBelow } water
                && water.AlkalinityMgPerLAsCaCO3 > AlkalinityTimes * asked
                ? new MakeUpShift(test, now, asked, now.StandardUncertainty, false, true, asked)
                : null;
        }

        var normal = known!.Median;
        if (normal <= 0)
        {
            return null;
        }

        var spread = known.Spread;
        var softened = hardness && (reading.Reading.At.Equals(SamplePoints.Softened, StringComparison.OrdinalIgnoreCase) || (normal < SoftenedBelow && IsFarBelowAlkalinity(normal)));
        return new MakeUpShift(test, now, normal, Math.Max(spread, now.StandardUncertainty), values.Count >= Most, softened, known.MedianOfLatest) { Own = values };
    }

    private Series? Of(string test)
    {
        for (var i = 0; i < Tests.Count; i++)
        {
            if (Tests[i] == test)
            {
                return _series[i];
            }
        }

        return null;
    }

    private static bool IsShifted(MakeUpShift shift) => shift.IsSoftenedHardness
        ? shift.Now.Value - shift.Normal >= LearningHardness
        : Math.Abs(shift.Percent) > LearningPercent && Math.Abs(shift.Sigmas) > LearningSigmas;

    private static bool IsAnew(Programme? before, Programme? now) =>
        !ReferenceEquals(before, now) && (before?.SetPointUsPerCm != now?.SetPointUsPerCm || before?.MakeUp != now?.MakeUp);

    // Natural water has about as much alkalinity as hardness; a softener takes the hardness alone.
    private bool IsFarBelowAlkalinity(double hardness) =>
        Of(TestCodes.Alkalinity) is { Readings.Count: >= 3 } alkalinity && alkalinity.Median > AlkalinityTimes * hardness;

    private sealed class Series(FigureInput[] readings, FigureInput[] shifted)
    {
        private double[]? _values;

        public IReadOnlyList<FigureInput> Readings => readings;

        /// <summary>Median of the values: each is asked for by several rules, and again by later visits.</summary>
        public double Median => field != 0 ? field : field = Statistics.Median(Values);

        /// <summary>Standard deviation of the values.</summary>
        public double Spread => field != 0 ? field : field = Statistics.StandardDeviation(Values);

        /// <summary>Median of the last three values.</summary>
        public double MedianOfLatest => Statistics.Median(Values[^Math.Min(3, readings.Length)..]);

        private double[] Values => _values ??= Array.ConvertAll(readings, reading => reading.Value);

        public Series With(FigureInput reading) => new([.. readings.AsSpan(Math.Max(0, readings.Length - Most + 1)), reading], []);

        public Series Beside(FigureInput reading, bool isSoftenedHardness)
        {
            FigureInput[] all = [.. shifted, reading];
            return isSoftenedHardness || all.Length < NewWater ? new Series(readings, isSoftenedHardness ? [] : all) : new Series(all, []);
        }
    }
}
