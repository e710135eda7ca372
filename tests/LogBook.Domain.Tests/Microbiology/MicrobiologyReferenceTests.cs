using System.Globalization;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Microbiology;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Microbiology;

public sealed class MicrobiologyReferenceTests
{
    private const string OwnReference = "a multiple of the plant's own reference value, which is not kept: a band of a rule is a count, and nothing multiplies it";
    private const string NoTest = "a test that the format does not name: a firm may add it with a range, but only dip slides, colony counts and Legionella are judged by bands with a source's words";
    private const string NoNumber = "a target without a number: 'undetectable' depends on the laboratory's limit, and the format does not name the test";
    private const string Nothing = "the range in which nothing is asked: RuleTemplatesTests holds that the template starts above it";
    private const string Custom = "common practice: no text to compare; DipSlideBands_DefaultLimits_AreThoseOfTheRows holds the limits";

    public static ReferenceChapter Chapter { get; } = new(
        "10-microbiology.csv",
        new Dictionary<string, Func<ReferenceRow, object>>
        {
            ["10-036"] = _ => Units.Convert(1, UnitCodes.CfuPerMl, UnitCodes.CfuPerL).Value,
            ["10-037"] = _ => Units.Convert(1, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerMl).Value,
            ["10-038"] = _ => Units.Convert(1, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerL).Value,
            // Levels of countries and editions: the shipped templates say what the source says from the same count on.
            ["10-001"] = _ => Band("CDC-LEG", 100),
            ["10-002"] = _ => Band("CDC-LEG", 10),
            ["10-006"] = _ => Band("OSHA-LEG", 100),
            ["10-007"] = _ => Band("OSHA-LEG", 1000),
            ["10-009"] = _ => Band("NYS-LEG", 20),
            ["10-010"] = _ => Band("NYS-LEG", 1000),
            ["10-011"] = _ => Band("DE-LEG", 100),
            ["10-012"] = _ => Band("DE-LEG", 1000),
            ["10-013"] = _ => Band("DE-LEG", 10_000),
            ["10-016"] = _ => Band("QC-LEG", 10_000),
            ["10-018"] = _ => Band("NSW-LEG", 1000) == Band("NSW-COL", 5_000_000) ? Band("NSW-LEG", 1000) : "two texts",
            ["log_reduction"] = row => Counts.LogReduction(row["before"], row["after"]).Value,
        },
        excluded: new Dictionary<string, string>
        {
            ["10-003"] = Nothing,
            ["10-008"] = Nothing,
            ["10-014"] = OwnReference,
            ["10-015"] = NoTest,
            ["10-019"] = Nothing,
            ["10-020"] = NoNumber,
            ["10-033"] = Custom,
            ["10-034"] = Custom,
            ["10-035"] = Custom,
        });

    // What a template says from exactly this count on, in its own unit.
    private static string Band(string code, double from) =>
        RuleTemplates.All.Single(template => template.Rule.Code == code).Rule.Bands.Single(band => band.From == from).Says!;

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    /// <summary>The three bands meet where the finding begins to plan and to act, where no rule has bands.</summary>
    [Theory]
    [InlineData("10-033", 1e4)]
    [InlineData("10-034", 1e4, 1e5)]
    [InlineData("10-035", 1e5)]
    public void DipSlideBands_DefaultLimits_AreThoseOfTheRows(string id, params double[] limits)
    {
        var row = Chapter.Rows.Single(candidate => candidate.Id == id);
        var thresholds = FindingThresholds.Default;

        var numbers = row.Inputs.Split(' ').Where(word => char.IsAsciiDigit(word[0])).Select(word => double.Parse(word, CultureInfo.InvariantCulture));

        Assert.Equal("dip_slide_band", row.Calc);
        Assert.Equal(limits, numbers);
        Assert.Equal(limits, new[] { thresholds.ColoniesPlan.Value, thresholds.ColoniesAct.Value }.Intersect(limits));
    }

    [Fact]
    public void LogReduction_CountOfZero_HasNoValue() => Assert.Equal(
        CountReasons.NotACount, Assert.Single(Counts.LogReduction(1e6, 0).Reasons));

    [Theory]
    [InlineData(1e4, 1e5, false)]
    [InlineData(1e3, 1e5, true)]
    public void Differ_TwoDipSlides_TakesMoreThanADecade(double one, double other, bool differ) =>
        Assert.Equal(differ, Counts.Differ(one, other, decadesEach: 0.5).Value);
}
