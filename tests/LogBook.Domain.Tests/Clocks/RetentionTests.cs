using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Clocks;

public sealed class RetentionTests
{
    private static readonly DateOnly First = new(2020, 1, 6);
    private static readonly DateOnly Last = new(2024, 2, 29);

    [Theory]
    [InlineData(null, 5, "2029-02-28", null)]
    [InlineData(3.0, 5, "2029-02-28", null)] // Shorter than usual: nobody knows what else the records must prove.
    [InlineData(5.0, 5, "2029-02-28", null)]
    [InlineData(7.0, 7, "2031-02-28", "OXT-LEG")]
    [InlineData(7.5, 7.5, "2031-08-29", "OXT-LEG")]
    public void Of_RuleWithYears_LengthensAndNeverShortens(double? years, double expected, string until, string? by)
    {
        var period = Retention.Of([System("OXT-LEG")], [RuleOf("OXT-LEG", years)], First, Last, isHeld: false);

        Assert.Equal((expected, DateOnly.ParseExact(until, "yyyy-MM-dd", null), by), (period.Years, period.Until, period.Rule?.Code));
    }

    [Fact]
    public void Of_SeveralSystemsAndVersions_TakesTheLongestThatTouchesTheRecords()
    {
        Rule[] rules =
        [
            RuleOf("OXT-LEG", 6),
            RuleOf("OXT-COL", 10) with { From = new DateOnly(2010, 1, 1), To = new DateOnly(2020, 1, 5) },
            RuleOf("oxt-col", 8) with { From = new DateOnly(2020, 1, 6) },
            RuleOf("OXT-NOT", 30),
        ];

        var period = Retention.Of([System("OXT-LEG"), System("OXT-COL")], rules, First, Last, isHeld: false);

        // The version of ten years ended the day before the first entry; the rule of thirty is no rule of these systems.
        Assert.Equal((8.0, "oxt-col"), (period.Years, period.Rule!.Code));
    }

    [Fact]
    public void Of_LegalHold_WinsOverEveryPeriod()
    {
        var held = Retention.Of([System("OXT-LEG")], [RuleOf("OXT-LEG", 7)], First, Last, isHeld: true);
        var free = Retention.Of([System("OXT-LEG")], [RuleOf("OXT-LEG", 7)], First, Last, isHeld: false);

        Assert.Null(held.Until);
        Assert.False(held.IsOver(DateOnly.MaxValue));
        Assert.Equal((false, true), (free.IsOver(new DateOnly(2031, 2, 28)), free.IsOver(new DateOnly(2031, 3, 1))));
    }

    private static WaterSystem System(string rule) => new() { Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating, Rules = [rule] };

    private static Rule RuleOf(string code, double? years) => new() { Code = code, Name = code, From = new DateOnly(2018, 7, 1), KeepYears = years };
}
