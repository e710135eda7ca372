using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Rounds.Planning;

/// <summary>What the assessment keeps of what lies ahead.</summary>
public sealed class AheadTests
{
    private static readonly Rule Monthly = new() { Code = "OXT-COUNT", Name = "Oxterhelm Code, colony count", Jurisdiction = "Oxterhelm", From = new DateOnly(2024, 7, 1), Test = TestCodes.ColonyCount, EveryDays = 30 };

    [Fact]
    public void Drum_SteadyUse_RunsOutAroundStockOverUse()
    {
        var builder = new HistoryBuilder { RefillAtL = 0 }.Every(28, 4);

        var drum = Assert.Single(builder.Assess().Ahead.Drums);

        // 55 L at the start, 0.3849 L a day over 84 days leave 22.7 L, of which 2 L stay below the suction: 20.7 L last 54 days.
        Assert.Equal(20.7, drum.StockL, 0.1);
        Assert.Equal(0.385, drum.UsePerDayL!.Value, 0.02);
        var middle = Day(84 + 54);
        Assert.InRange(middle, drum.From!.Value, drum.To!.Value);
        Assert.True(drum.From > Day(84), "The range does not reach back to the reading.");
        Assert.Equal(("P-40", "D-INH", Day(84), 60.0), (drum.Product, drum.Drum, drum.ReadOn, drum.CapacityL!.Value));
    }

    [Fact]
    public void Drum_NotReadAtTheLastVisit_IsToldByTheReadingBefore()
    {
        var builder = new HistoryBuilder { RefillAtL = 0 }.Every(28, 3);
        builder.Visit(84, record => record with { Drums = [] });

        Assert.Equal(Day(56), Assert.Single(builder.Assess().Ahead.Drums).ReadOn);
    }

    [Fact]
    public void Duty_OfATest_IsDueOnItsLastDay()
    {
        var builder = new HistoryBuilder { Rules = [Monthly] };
        builder.Visit(0, record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.ColonyCount, 100, "[CFU]/mL")] });
        builder.Visit(20);

        var duty = Assert.Single(builder.Assess().Ahead.Duties);

        Assert.Equal((DutyKind.Interval, Day(0), Day(30), TestCodes.ColonyCount), (duty.Kind, duty.Since, duty.LastDay, duty.Test));
    }

    [Fact]
    public void Promise_DoneLater_IsGone()
    {
        var (done, open) = (new Guid(1, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 2), new Guid(2, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 2));
        var builder = new HistoryBuilder();
        builder.Visit(0, record => record with
        {
            Actions =
            [
                new VisitAction { Id = done, Text = "clean strainer", Owner = "RYA", Due = Day(20) },
                new VisitAction { Id = open, Text = "renew gasket", Owner = "RYA", Due = Day(40) },
                new VisitAction { Text = "repair float valve", Owner = "customer", Due = Day(10) },
                new VisitAction { Text = "look at the fan", Owner = "RYA" },
            ],
        });
        builder.Visit(28, record => record with { Actions = [new VisitAction { Id = done, Text = "clean strainer", Owner = "RYA", Due = Day(20), State = ActionState.Done }] });

        Assert.Equal([new PromiseAhead("renew gasket", Day(40), "RYA")], builder.Assess().Ahead.Promises);
    }

    [Fact]
    public void Tests_TakenAtHalfOfTheVisitsOrMore_AreUsual()
    {
        var builder = new HistoryBuilder();
        for (var i = 0; i < 6; i++)
        {
            var (often, seldom) = (i % 2 == 0, i == 3);
            builder.Visit(7 * i, record => record with
            {
                Readings =
                [
                    .. record.Readings,
                    .. often ? [HistoryBuilder.Tower(TestCodes.Iron, 0.2, "mg/L")] : Array.Empty<Reading>(),
                    .. seldom ? [HistoryBuilder.Tower(TestCodes.Silica, 20, "mg/L")] : Array.Empty<Reading>(),
                ],
            });
        }

        var tests = builder.Assess().Ahead.Tests;

        Assert.Contains(new UsualTest("tower", TestCodes.Iron), tests);
        Assert.DoesNotContain(new UsualTest("tower", TestCodes.Silica), tests);
        Assert.Equal(6, tests.Count);
    }

    [Fact]
    public void Lengths_RoutineVisits_AreKeptLatestFirst()
    {
        var builder = new HistoryBuilder();
        builder.Visit(0, null, visit => visit with { Left = Domain.Exchange.Moment.OfUtc(visit.Arrived.Utc.AddMinutes(40)) });
        builder.Visit(28, null, visit => visit with { Kind = VisitKind.Delivery });
        builder.Visit(56);

        Assert.Equal([60.0, 40.0], builder.Assess().Ahead.Lengths.Select(length => length.Minutes));
    }

    [Fact]
    public void NoVisit_NothingIsAhead() => Assert.Same(SystemAhead.Nothing, new HistoryBuilder().Assess().Ahead);

    private static DateOnly Day(int day) => DateOnly.FromDateTime(HistoryBuilder.Start).AddDays(day);
}
