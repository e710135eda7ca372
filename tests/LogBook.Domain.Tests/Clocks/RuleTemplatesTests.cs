using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Tests.Clocks;

public sealed class RuleTemplatesTests
{
    public static TheoryData<int> All => [.. Enumerable.Range(0, RuleTemplates.All.Count)];

    [Theory]
    [MemberData(nameof(All))]
    public void Template_TakenIntoASetUp_IsARuleOfTheExchangeFormat(int index)
    {
        var rule = RuleTemplates.All[index].Rule;

        var read = ExchangeReader.ReadAndCheck(ExchangeWriter.Write(new ExchangeDocument { Format = "logbook-exchange", Version = 1, Rules = [rule] }), new FirmSetUp(new ExchangeDocument { Format = "logbook-exchange", Version = 1 }));

        Assert.Empty(read.Issues);
        Assert.NotNull(rule.Source);
        Assert.NotNull(rule.Jurisdiction);
    }

    [Fact]
    public void Templates_SameCode_FollowEachOtherWithoutAGap() => Assert.All(
        RuleTemplates.All.GroupBy(template => template.Rule.Code).Where(versions => versions.Count() > 1),
        versions => Assert.All(
            versions.OrderBy(v => v.Rule.From).Zip(versions.OrderBy(v => v.Rule.From).Skip(1)),
            pair => Assert.Equal(pair.First.Rule.To!.Value.AddDays(1), pair.Second.Rule.From)));

    /// <summary>Ranges in which the source asks for nothing: 10-003 CDC up to 9, 10-008 NY below 20, 10-019 UFC below 10,000, all CFU/mL.</summary>
    [Theory]
    [InlineData("CDC-LEG", 9)]
    [InlineData("NYS-LEG", 19)]
    [InlineData("UFC-COL", 9_999)]
    public void Bands_BelowTheFirst_AskForNothing(string code, double perMl)
    {
        Assert.NotEmpty(Rule(code).Bands);
        Assert.All(Rule(code).Bands, band => Assert.True(band.From > perMl));
    }

    /// <summary>Units: 20 CFU/mL lies in the first band of New York State, above the second of Germany and above the first of Quebec.</summary>
    [Theory]
    [InlineData("NYS-LEG", 1)]
    [InlineData("DE-LEG", 2)]
    [InlineData("QC-LEG", 1)]
    public void Bands_TwentyPerMillilitre_AreComparedInTheirOwnUnit(string code, int reached) => Assert.Equal(
        reached, Rule(code).Bands.Count(band => Units.Convert(20, UnitCodes.CfuPerMl, band.Unit).Value >= band.From));

    /// <summary>The L8 monitoring table of an older edition: cooling water weekly, monthly, quarterly.</summary>
    [Theory]
    [InlineData(7, "conductivity", "free-halogen", "pH")]
    [InlineData(31, "calcium", "chloride", "inhibitor", "make-up analysis")]
    [InlineData(91, "alkalinity", "iron", "legionella", "solids", "sulphate", "temperature")]
    public void UnitedKingdom_MonitoringTable_IsThere(double days, params string[] tests) => Assert.Equal(
        tests,
        RuleTemplates.All.Select(template => template.Rule).Where(rule => rule.Jurisdiction == "United Kingdom" && rule.EveryDays == days && rule.Test is not "dip-slide")
            .Select(rule => (rule.Test ?? rule.Task)!).Order(StringComparer.Ordinal));

    private static Rule Rule(string code) => RuleTemplates.All.Single(template => template.Rule.Code == code).Rule;
}
