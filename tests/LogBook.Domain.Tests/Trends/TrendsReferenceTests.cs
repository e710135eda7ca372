using LogBook.Domain.Estimates;
using LogBook.Domain.Probes;
using LogBook.Domain.Tests.Reference;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Tests.Trends;

public sealed class TrendsReferenceTests
{
    private const string ControlData = "05-control-chart-data.csv";

    // Rows that say "same" share this drift series or that chart.
    private static readonly Lazy<LinearFit> Norris = new(() => LinearFit.Of(
        ReferenceTable.Column("05-norris-data.csv", "x"), ReferenceTable.Column("05-norris-data.csv", "y")).Value);

    private static readonly Lazy<LinearFit> Drift = new(() => DriftOf(ReferenceTable.Rows("05-probe-drift.csv").Single(row => row.Id == "05-022")));

    private static readonly Lazy<IndividualsChart> Individuals = new(() => IndividualsChart.Of(ReferenceTable.Column(ControlData, "individuals_x")).Value);

    public static ReferenceChapter Chapter { get; } = new("05-probe-drift.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["offset_pct"] = row => ProbeError.Percent(Reading(row["reading"]), Reading(row["reference"])).Value.Value,
        ["gain_one_point"] = row => Calibration.Gain(row["reading"], row["reference"]).Value,
        ["cell_constant_new"] = row => Calibration.CellConstant(row["cell_constant_old"], row["reading"], row["reference"]).Value,
        ["gain_two_point"] = row => TwoPoints(row).Gain,
        ["zero_two_point"] = row => TwoPoints(row).Zero,
        ["norris_B0"] = _ => Norris.Value.Intercept,
        ["norris_B1"] = _ => Norris.Value.Slope,
        ["norris_se_B0"] = _ => Norris.Value.InterceptStandardError.Value,
        ["norris_se_B1"] = _ => Norris.Value.SlopeStandardError.Value,
        ["norris_residual_sd"] = _ => Norris.Value.ResidualDeviation.Value,
        ["norris_R2"] = _ => Norris.Value.RSquared,
        ["norris_SS_regression"] = _ => Norris.Value.RegressionSumOfSquares,
        ["norris_SS_residual"] = _ => Norris.Value.ResidualSumOfSquares,
        ["norris_MS_residual"] = _ => Norris.Value.ResidualSumOfSquares / Norris.Value.DegreesOfFreedom,
        ["norris_F"] = _ => Norris.Value.F.Value,
        ["norris_t975"] = row => StudentT.TwoSided(0.95, (int)row["df"]),
        ["norris_B1_ci_low"] = _ => Norris.Value.Slope - Norris.Value.SlopeHalfWidth().Value,
        ["norris_B1_ci_high"] = _ => Norris.Value.Slope + Norris.Value.SlopeHalfWidth().Value,
        ["norris_predict"] = row => Norris.Value.At(row["x0"]),
        ["norris_mean_ci_half"] = row => Norris.Value.MeanHalfWidth(row["x0"]).Value,
        ["norris_pred_int_half"] = row => Norris.Value.PredictionHalfWidth(row["x0"]).Value,
        ["drift_slope"] = row => DriftOf(row).Slope,
        ["drift_intercept"] = row => DriftOf(row).Intercept,
        ["drift_slope_ci_half"] = _ => Drift.Value.SlopeHalfWidth().Value,
        ["drift_p_value"] = _ => Drift.Value.SlopePValue().Value,
        ["days_to_limit"] = row => Drift.Value.XAt(row["limit_pct"]).Value,
        ["drift_pred_int_half"] = row => Drift.Value.PredictionHalfWidth(row["day"]).Value,
        ["t_975"] = row => StudentT.TwoSided(0.95, (int)row["df"]),
        ["theil_sen_slope"] = row => Sen(row).Slope,

        // Printed with seven decimals, yet with a tolerance of 1e-9: rounded to the print here, exact (26/7) in a test of its own below.
        ["theil_sen_ci_low"] = row => Math.Round(Sen(row, confidence: 1 - row["alpha"]).SlopeLow, 7),
        ["theil_sen_ci_high"] = row => Sen(row, confidence: 1 - row["alpha"]).SlopeHigh,
        ["theil_sen_intercept_a"] = row => Sen(row, InterceptDefinition.MedianOfEach).Intercept,
        ["theil_sen_intercept_b"] = row => Sen(row, InterceptDefinition.MedianOfResiduals).Intercept,
        ["mann_kendall_S"] = row => MannKendall.Of(row.List("y")).Value.S,
        ["mann_kendall_varS"] = row => MannKendall.Of(row.List("y")).Value.Variance,
        ["mann_kendall_Z"] = row => MannKendall.Of(row.List("y")).Value.Z,
        ["mann_kendall_p_normal"] = row => MannKendall.Of(row.List("y")).Value.NormalPValue,
        ["mann_kendall_p_exact"] = row => MannKendall.Of(row.List("y")).Value.ExactPValue!.Value,
        ["imr_centre"] = _ => Individuals.Value.Centre,
        ["imr_mean_moving_range"] = _ => Individuals.Value.MeanMovingRange,
        ["imr_ucl"] = _ => Individuals.Value.UpperLimit,
        ["imr_lcl"] = _ => Individuals.Value.LowerLimit,
        ["imr_mr_ucl"] = _ => Individuals.Value.MovingRangeUpperLimit,
        ["ewma_ucl"] = row => row["target"] + EwmaHalfWidth(row),
        ["ewma_lcl"] = row => row["target"] - EwmaHalfWidth(row),
        ["ewma_out_of_control"] = _ => EwmaOutside(),
        ["cusum_first_signal_high"] = row => CusumOf(row["target"], row["k"], row["h"]).FirstHigh!.Value + 1,
        ["run_rule_first_index"] = row => RunRules.FirstIndex(row.List("z"), Rule(row.TextOf("rule")))!.Value + 1,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Fact]
    public void TheilSen_DataOfSen1968_HasTheIntervalFrom26SeventhsTo35Eighths()
    {
        var line = TheilSen.Of([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78], confidence: 0.93).Value;

        Assert.Equal(26 / 7.0, line.SlopeLow, 1e-12);
        Assert.Equal(35 / 8.0, line.SlopeHigh, 1e-12);
    }

    [Fact]
    public void MovingRanges_HandbookSeries_ArePrintedBesideTheValues()
    {
        // NIST/SEMATECH e-Handbook 6.3.2.2: values and ranges have one decimal, so the differences are exact but for the binary form.
        var ranges = IndividualsChart.MovingRanges(ReferenceTable.Column(ControlData, "individuals_x"));

        var printed = ReferenceTable.Column(ControlData, "individuals_MR");
        Assert.Equal(9, printed.Length);
        Assert.Equal(printed, ranges.Select(range => Math.Round(range, 9)));
    }

    [Fact]
    public void Ewma_HandbookSeries_AgreesWithPrintedAverages()
    {
        // NIST/SEMATECH e-Handbook 6.3.2.4, printed with two decimals.
        var averages = Ewma.Averages(ReferenceTable.Column(ControlData, "ewma_x"), 50, 0.3).Value;

        Assert.All(averages.Zip(ReferenceTable.Column(ControlData, "ewma_z_published")), pair => Assert.Equal(pair.Second, pair.First, 0.00501));
    }

    [Fact]
    public void Cusum_HandbookSeries_AgreesWithPrintedSums()
    {
        // NIST/SEMATECH e-Handbook 6.3.2.3; ties are rounded either way in print: tolerance 0.005.
        var cusum = CusumOf(325, 0.3175, 4.1959);

        Assert.All(cusum.High.Zip(ReferenceTable.Column(ControlData, "cusum_S_hi_published")), pair => Assert.Equal(pair.Second, pair.First, 0.00501));
        Assert.All(cusum.Low.Zip(ReferenceTable.Column(ControlData, "cusum_S_lo_published")), pair => Assert.Equal(pair.Second, pair.First, 0.00501));
        Assert.Null(cusum.FirstLow);
    }

    private static Cusum CusumOf(double target, double k, double h) => Cusum.Of(ReferenceTable.Column(ControlData, "cusum_x"), target, k, h).Value;

    private static double EwmaHalfWidth(ReferenceRow row) => Ewma.HalfWidth(row["s"], row["lambda"], row["L"]).Value;

    private static string EwmaOutside()
    {
        var half = Ewma.HalfWidth(2.0539, 0.3).Value;
        var outside = Ewma.Averages(ReferenceTable.Column(ControlData, "ewma_x"), 50, 0.3).Value.Count(average => Math.Abs(average - 50) > half);
        return outside == 0 ? "none" : outside + " outside";
    }

    private static LinearFit DriftOf(ReferenceRow row) => LinearFit.Of(row.List("day"), row.List("offset_pct")).Value;

    private static TheilSen Sen(ReferenceRow row, InterceptDefinition definition = InterceptDefinition.MedianOfResiduals, double confidence = 0.95)
    {
        var times = row.TextOf("t") == "1..10" ? [.. Enumerable.Range(1, 10).Select(day => (double)day)] : row.List("t");
        return TheilSen.Of(times, row.List("y"), definition, confidence).Value;
    }

    private static (double Gain, double Zero) TwoPoints(ReferenceRow row) => Calibration.TwoPoints((row["r1"], row["s1"]), (row["r2"], row["s2"])).Value;

    private static Estimate Reading(double value) => Estimate.Exact(value, "uS/cm");

    private static RunRule Rule(string name) => name switch
    {
        "Nelson 1" => RunRule.OneBeyondThree,
        "Nelson 2" => RunRule.NineOnOneSide,
        "Nelson 3" => RunRule.SixRisingOrFalling,
        "Nelson 4" => RunRule.FourteenAlternating,
        "Nelson 5" => RunRule.TwoOfThreeBeyondTwo,
        "Nelson 6" => RunRule.FourOfFiveBeyondOne,
        "Nelson 7" => RunRule.FifteenWithinOne,
        "Nelson 8" => RunRule.EightBeyondOne,
        _ when name.StartsWith("Western Electric 4", StringComparison.Ordinal) => RunRule.EightOnOneSide,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "Unknown rule."),
    };
}
