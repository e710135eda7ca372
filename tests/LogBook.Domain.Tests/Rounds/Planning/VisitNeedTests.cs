using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class VisitNeedTests
{
    private static readonly DateOnly Day = new(2025, 12, 1);

    private static readonly WaterSystem Tower = new()
    {
        Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
        Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder }, new Drum { Code = "D-B1", Product = "N-15", Shape = DrumShape.VerticalCylinder }],
        Programmes =
        [
            new Programme { From = new DateOnly(2025, 1, 6), Ranges = [Range("inhibitor"), Range("pH")] },
            new Programme { From = new DateOnly(2026, 1, 6), Ranges = [Range("inhibitor"), Range("pH"), Range("iron"), Range("copper")] },
        ],
    };

    [Fact]
    public void Of_FewVisits_IsTheRuleOfThumb()
    {
        var ahead = new SystemAhead { Tests = [new UsualTest("tower", "PH"), new UsualTest("make-up", "conductivity")], Lengths = Lengths(40, 50, 60) };

        var need = VisitNeed.Of([(Tower, ahead)], Day);

        // 15 for the site, 15 for its one system, three readings (pH counts once) of 3, two drums of 4 minutes.
        Assert.Equal((true, 3, 2, 1, 47.0), (need.IsRuleOfThumb, need.Readings, need.Drums, need.Systems, need.Minutes));
        Assert.Equal(47, need.MinutesOfWork);
    }

    [Fact]
    public void Of_EnoughHonestVisits_IsTheirMedian()
    {
        var need = VisitNeed.Of([(Tower, new SystemAhead { Lengths = Lengths(40, 50, 60, 75, 300) })], Day);

        Assert.Equal((false, 5, 60.0), (need.IsRuleOfThumb, need.Visits, need.Minutes));

        // What visits take stands beside what their work asks for.
        Assert.Equal(15 + 15 + (3 * need.Readings) + (4 * 2), need.MinutesOfWork);
    }

    [Fact]
    public void Of_DoubtedVisits_DoNotCount()
    {
        IReadOnlyList<VisitLength> lengths = [.. Lengths(55, 60, 65, 70), .. Lengths(6, 7, 8, 9, 6, 7).Select(length => length with { Visit = Guid.CreateVersion7(), IsDoubted = true })];

        Assert.Equal((4, 62.5), (VisitNeed.Of([(Tower, new SystemAhead { Lengths = lengths })], Day).Visits, VisitNeed.Of([(Tower, new SystemAhead { Lengths = lengths })], Day).Minutes));
    }

    [Fact]
    public void Of_TwoSystems_CountsAVisitOnceAndNotWhereEitherDoubtsIt()
    {
        var first = Lengths(60, 60, 60, 60, 90);
        var second = first.Select((length, place) => length with { IsDoubted = place == 4 }).ToList();

        var need = VisitNeed.Of([(Tower, new SystemAhead { Lengths = first }), (Tower with { Code = "CT-2" }, new SystemAhead { Lengths = second })], Day);

        Assert.Equal((4, 60.0, 2), (need.Visits, need.Minutes, need.Systems));
    }

    private static List<VisitLength> Lengths(params double[] minutes) => [.. minutes.Select((length, place) => new VisitLength(new Guid(place + 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), length, false))];

    private static TestRange Range(string test) => new() { At = "tower", Test = test, Low = 1, High = 2, Unit = "mg/L" };
}
