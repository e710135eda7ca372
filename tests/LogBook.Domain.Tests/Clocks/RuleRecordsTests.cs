using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;

namespace LogBook.Domain.Tests.Clocks;

/// <summary>
/// What had to be told to an authority, as a record. The rule is the template of New York State (4-1.6 as read at regs.health.ny.gov); the
/// days and results are invented.
/// </summary>
public sealed class RuleRecordsTests
{
    private static readonly Rule State = RuleTemplates.All.Single(template => template.Rule.Code == "NYS-LEG").Rule;

    private static readonly DateTime Received = HistoryBuilder.Start.AddDays(10);

    [Theory]
    [InlineData(5.0, RuleStanding.Met, 0)]
    [InlineData(30.0, RuleStanding.Missed, 1)]
    [InlineData(100.0, RuleStanding.Missed, 3)]
    [InlineData(null, RuleStanding.Missed, 10)]
    public void Notice_ByTheHour_IsMetOrAGap(double? toldAfterHours, RuleStanding standing, int daysOver)
    {
        var builder = Builder();
        builder.Notifications = toldAfterHours is { } hours
            ? [new Notification(builder.IdOf(0), TestCodes.Legionella, State.Code, Received.AddHours(hours), "I. Wendle", "Oxterhelm health office", "by telephone, reference OX-114")]
            : [];

        var spell = Assert.Single(Spells(builder, toDay: 21));

        Assert.Equal((standing, daysOver, Day(10), Day(11)), (spell.Standing, spell.DaysOver, spell.Since, spell.DueBy));
    }

    [Fact]
    public void Notice_WithinItsHours_Runs() => Assert.Equal(RuleStanding.Running, Assert.Single(Spells(Builder(), toDay: 11)).Standing);

    private static List<RuleSpell> Spells(HistoryBuilder builder, int toDay) =>
        [.. RuleRecords.Of(builder.Build(), Day(0), Day(toDay)).SelectMany(record => record.Spells).Where(spell => spell.Kind == DutyKind.Notify)];

    private static DateOnly Day(int day) => DateOnly.FromDateTime(HistoryBuilder.Start).AddDays(day);

    private static HistoryBuilder Builder() => new HistoryBuilder { Rules = [State], VisitEveryDays = null }.Visit(0, record => record with
    {
        Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 1_500, "[CFU]/mL") with { ResultAt = Moment.OfUtc(Received.AddHours(-3)), ReceivedAt = Moment.OfUtc(Received) }],
    });
}
