using LogBook.Domain.Tests.Assessments;

namespace LogBook.Domain.Tests.Estimates;

public class LevelScatterTests
{
    // Two dips of 1 cm, 60 L / 62 cm each: sqrt(2) x 0.968 = 1.369 L by the table.
    private const double ByTable = 1.369;

    [Fact]
    public void Widened_LevelsOnALine_StaysWithTheTable() => Assert.Equal(ByTable, UncertaintyOfUse(_ => 0), 0.005);

    [Fact]
    public void Widened_RoughLevels_IsWhatTheyShow()
    {
        // Every other level 1.6 L too high: neighbours on a line, the middle off by 1.6 L, over sqrt(1.5) and 0.6745: u = 1.94 L.
        Assert.Equal(Math.Sqrt(2) * 1.6 / Math.Sqrt(1.5) / 0.6745, UncertaintyOfUse(i => i % 2 == 0 ? 0 : 1.6), 0.05);
    }

    [Fact]
    public void Widened_OneSpill_IsNotSeenAsScatter() => Assert.Equal(ByTable, UncertaintyOfUse(i => i == 9 ? 6 : 0), 0.005);

    [Fact]
    public void Widened_Wild_IsThreefoldAtMost() => Assert.Equal(3 * ByTable, UncertaintyOfUse(i => i % 2 == 0 ? 0 : 8), 0.02);

    [Theory]
    [InlineData(2, 1.2)]
    [InlineData(7, 1.1)]
    [InlineData(18, 0.968)]
    public void Widened_BeforeItsOwnReadingsTell_ACentimetreCountsAsAGauge(int visits, double ofLevel) =>
        Assert.Equal(Math.Sqrt(2) * ofLevel, UncertaintyOfUse(_ => 0, visits), 0.06);

    private static double UncertaintyOfUse(Func<int, double> off, int visits = 18)
    {
        var builder = new HistoryBuilder { RefillAtL = 0, InhibitorPerDayL = 0.1, System = system => system with { Pumps = [] } };
        for (var i = 0; i < visits; i++)
        {
            var high = off(i);
            builder.Visit(28 * i, record => record with { Drums = [record.Drums[0] with { Level = record.Drums[0].Level + (high / 60 * 62) }] });
        }

        // By the levels of the last two visits alone.
        var history = builder.Build();
        Domain.Estimates.VisitFacts? facts = null;
        foreach (var visit in history.Visits)
        {
            facts = new Domain.Estimates.VisitFacts(history, visit, facts);
        }

        return Domain.Estimates.ProductUse.UsedBetween(facts!.Previous!, facts, "D-INH").Value.StandardUncertainty;
    }
}
