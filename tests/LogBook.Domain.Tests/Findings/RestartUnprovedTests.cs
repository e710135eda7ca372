using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class RestartUnprovedTests
{
    [Fact]
    public void Judge_StartedAfterASeasonWithoutRecord_Act_UntilASampleIsTaken()
    {
        var plant = Seasonal();
        var found = plant.Visit(211, record => record with { Events = [Started(209)] }).Assess().Open(FindingKinds.RestartUnproved);
        var sampled = plant.Visit(218, record => record with { Readings = [.. record.Readings, Sample(TestCodes.Legionella)] }).Assess().Open(FindingKinds.RestartUnproved);

        Assert.Equal(Severity.Act, found?.Severity);
        Assert.Equal(97, found!.Evidence[0].Value!.Value, 0.5);
        Assert.Null(sampled);
    }

    [Fact]
    public void Judge_DisinfectedAtTheStart_StaysQuiet()
    {
        var plant = Seasonal().Visit(211, record => record with { Events = [Started(209), new VisitEvent { Type = EventType.Disinfected, At = At(209) }] });

        Assert.Empty(plant.Assess().All(FindingKinds.RestartUnproved));
    }

    [Fact]
    public void Judge_DisinfectedBeforeTheStop_IsNoProof()
    {
        var plant = new HistoryBuilder();
        plant.Visit(0, record => record with { Events = [new VisitEvent { Type = EventType.Disinfected }] });
        plant.Visit(28, record => record with { Events = [new VisitEvent { Type = EventType.Stopped }] });
        plant.Visit(56, record => record with { Events = [Started(50)] });

        Assert.Equal(Severity.Act, plant.Assess().Open(FindingKinds.RestartUnproved)?.Severity);
    }

    [Fact]
    public void Judge_DipSlideAlone_IsNoProof()
    {
        var plant = Seasonal().Visit(211, record => record with
        {
            Events = [Started(209)],
            Readings = [.. record.Readings, new Reading { At = "tower", Test = TestCodes.DipSlide, Value = 1000, Unit = "[CFU]/mL" }],
        });

        Assert.Equal(Severity.Act, plant.Assess().Open(FindingKinds.RestartUnproved)?.Severity);
    }

    [Fact]
    public void Judge_SampleWhoseResultIsPending_IsOnRecord()
    {
        var plant = Seasonal().Visit(211, record => record with
        {
            Events = [Started(209)],
            Readings = [.. record.Readings, Sample(TestCodes.ColonyCount) with { ResultAt = At(216) }],
        });

        Assert.Empty(plant.Assess().All(FindingKinds.RestartUnproved));
    }

    [Theory]
    [InlineData(4, 0)]
    [InlineData(8, 1)]
    public void Judge_FoundStandingAndThenRunning_ByTheLengthOfTheStop(int days, int expected)
    {
        var plant = new HistoryBuilder().Every(28, 2);
        plant.Visit(60, record => record with { Running = false, InUse = false });
        plant.Visit(60 + days);

        Assert.Equal(expected, plant.Assess().All(FindingKinds.RestartUnproved).Count);
    }

    [Fact]
    public void Judge_StopOnFile_IsTakenFromThePattern()
    {
        var plant = new HistoryBuilder
        {
            System = system => system with { Operation = new Operation { Stops = [new Stop { From = new DateOnly(2025, 2, 10), To = new DateOnly(2025, 2, 20) }] } },
        };

        Assert.Equal(Severity.Act, plant.Every(28, 3).Assess().Open(FindingKinds.RestartUnproved)?.Severity);
    }

    [Fact]
    public void Judge_FoundRunningInAStopOnFile_ThereWasNone()
    {
        var plant = new HistoryBuilder
        {
            System = system => system with { Operation = new Operation { Stops = [new Stop { From = new DateOnly(2025, 2, 10), To = new DateOnly(2025, 2, 20) }] } },
        };
        plant.Visit(0).Visit(40).Visit(56);

        Assert.Empty(plant.Assess().All(FindingKinds.RestartUnproved));
    }

    [Fact]
    public void Judge_RecordsBeginAfterTheRestart_StaysQuiet()
    {
        var plant = new HistoryBuilder
        {
            System = system => system with { Operation = new Operation { Seasons = [new Season { From = "01-01", To = "10-31" }] } },
        };

        Assert.Empty(plant.Every(28, 2).Assess().All(FindingKinds.RestartUnproved));
    }

    [Fact]
    public void Judge_StillStanding_StaysQuiet()
    {
        var plant = Seasonal().Visit(211, record => record with { Running = false, InUse = false });

        Assert.Empty(plant.Assess().All(FindingKinds.RestartUnproved));
    }

    // Runs from August to the end of April; records from 6 January 2025 on, stopped at the visit of 28 April.
    private static HistoryBuilder Seasonal()
    {
        var plant = new HistoryBuilder
        {
            System = system => system with { Operation = new Operation { Seasons = [new Season { From = "08-01", To = "04-30" }] } },
        };
        return plant.Every(28, 4).Visit(112, record => record with { Events = [new VisitEvent { Type = EventType.Stopped }] });
    }

    private static Moment At(double day) => Moment.OfUtc(HistoryBuilder.Start.AddDays(day));

    private static VisitEvent Started(double day) => new() { Type = EventType.Started, At = At(day) };

    private static Reading Sample(string test) => new() { At = "tower", Test = test, Value = 1, Unit = "[CFU]/mL", Source = ReadingSource.Lab };
}
