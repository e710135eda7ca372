using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>Minutes on site that a routine visit needs; the way there is not in it.</summary>
/// <param name="Minutes">Minutes from arrival to departure.</param>
/// <param name="Visits">Visits of the site that it is the median of; 0 where it is the rule of thumb.</param>
/// <param name="Readings">Readings of a visit.</param>
/// <param name="Drums">Drums of the site.</param>
/// <param name="Systems">Systems of the site.</param>
public sealed record VisitNeed(double Minutes, int Visits, int Readings, int Drums, int Systems)
{
    /// <summary>Minutes to arrive, ask, look first, read back and close. Common practice, no source.</summary>
    public const double MinutesOfSite = 15;

    /// <summary>Minutes of a system: display, settings, ten minutes' settling of the hand meter. Common practice, no source.</summary>
    public const double MinutesOfSystem = 15;

    /// <summary>Minutes of a reading. Common practice, no source.</summary>
    public const double MinutesOfReading = 3;

    /// <summary>Minutes of a drum: level, label, top-up. Common practice, no source.</summary>
    public const double MinutesOfDrum = 4;

    /// <summary>Visits from which the site's own median says more than the rule of thumb. Common practice, no source.</summary>
    public const int FewestVisits = 4;

    /// <summary>Minutes of a working day; the way between sites is part of it. Common practice, no source.</summary>
    public const double MinutesOfDay = 480;

    /// <summary>Minutes that its work asks for by the rule of thumb, whatever visits have taken.</summary>
    public double MinutesOfWork { get; init; }

    /// <summary>Minutes spent at a visit.</summary>
    /// <param name="arrived">Arrival, UTC.</param>
    /// <param name="left">Departure, UTC; null where it was not written.</param>
    /// <returns>Minutes; null without a departure, or where it lies before the arrival.</returns>
    public static double? MinutesSpent(DateTime arrived, DateTime? left) => left is { } end && end >= arrived ? (end - arrived).TotalMinutes : null;

    /// <summary>Whether it is the rule of thumb.</summary>
    public bool IsRuleOfThumb => Visits == 0;

    /// <summary>The need of a site.</summary>
    /// <param name="systems">Systems in use with what lies ahead of them.</param>
    /// <param name="day">Day of the visit, for the programme in force.</param>
    /// <returns>The median of the site's own visits that nobody doubts; the rule of thumb where they are fewer than <see cref="FewestVisits"/>.</returns>
    public static VisitNeed Of(IReadOnlyList<(WaterSystem System, SystemAhead Ahead)> systems, DateOnly day)
    {
        var readings = systems.Sum(pair => TestsOf(pair.System, pair.Ahead, day).Count);
        var drums = systems.Sum(pair => pair.System.Drums.Select(drum => drum.Code).Distinct(StringComparer.OrdinalIgnoreCase).Count());

        // A visit to two systems stands in the records of both; one of them that wants a second look is enough to leave it out.
        var honest = systems.SelectMany(pair => pair.Ahead.Lengths).GroupBy(length => length.Visit)
            .Where(group => group.All(length => !length.IsDoubted)).Select(group => group.First().Minutes).ToList();
        var work = MinutesOfSite + (MinutesOfSystem * systems.Count) + (MinutesOfReading * readings) + (MinutesOfDrum * drums);
        return (honest.Count >= FewestVisits
            ? new VisitNeed(Statistics.Median(honest), honest.Count, readings, drums, systems.Count)
            : new VisitNeed(work, 0, readings, drums, systems.Count)) with { MinutesOfWork = work };
    }

    /// <summary>Readings of a visit to a system: those the programme in force has ranges for, and those taken at most visits.</summary>
    /// <param name="system">The system.</param>
    /// <param name="ahead">What lies ahead of it.</param>
    /// <param name="day">Day of the visit.</param>
    /// <returns>Each sample point and test once.</returns>
    public static IReadOnlyList<UsualTest> TestsOf(WaterSystem system, SystemAhead ahead, DateOnly day)
    {
        var programme = system.Programmes.Where(programme => programme.From <= day).MaxBy(programme => programme.From);
        return
        [
            .. (programme?.Ranges ?? []).Select(range => new UsualTest(range.At.ToLowerInvariant(), range.Test)).Concat(ahead.Tests)
                .DistinctBy(test => (test.At, test.Test.ToUpperInvariant())),
        ];
    }
}
