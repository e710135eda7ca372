using LogBook.Domain.Microbiology;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Microbiology;

public sealed class MicrobiologyReferenceTests
{
    private const string RuleData = "a level of a country and edition: dated rule data that people maintain, not a calculation";

    public static ReferenceChapter Chapter { get; } = new(
        "10-microbiology.csv",
        new Dictionary<string, Func<ReferenceRow, object>>
        {
            ["10-036"] = _ => Units.Convert(1, UnitCodes.CfuPerMl, UnitCodes.CfuPerL).Value,
            ["10-037"] = _ => Units.Convert(1, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerMl).Value,
            ["10-038"] = _ => Units.Convert(1, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerL).Value,
            ["log_reduction"] = row => Counts.LogReduction(row["before"], row["after"]).Value,
        },
        excluded: Enumerable.Range(1, 35).ToDictionary(number => $"10-{number:000}", _ => RuleData));

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Fact]
    public void LogReduction_CountOfZero_HasNoValue() => Assert.Equal(
        CountReasons.NotACount, Assert.Single(Counts.LogReduction(1e6, 0).Reasons));

    [Theory]
    [InlineData(1e4, 1e5, false)]
    [InlineData(1e3, 1e5, true)]
    public void Differ_TwoDipSlides_TakesMoreThanADecade(double one, double other, bool differ) =>
        Assert.Equal(differ, Counts.Differ(one, other, decadesEach: 0.5).Value);
}
