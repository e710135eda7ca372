using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>What a person is to do on a day.</summary>
/// <param name="Person">Code.</param>
/// <param name="Name">Name; the code where the person is not in the set-up.</param>
/// <param name="Stops">Stops in order.</param>
public sealed record PersonDay(string Person, string Name, IReadOnlyList<PlanStop> Stops)
{
    /// <summary>Minutes on site; the way between sites is not in it.</summary>
    public double Minutes => Stops.Sum(stop => stop.Minutes);

    /// <summary>Minutes that were spent where visits tell it, and what those visits need; null while none does.</summary>
    public (double Spent, double Needed)? Made => Stops.Any(stop => stop.Spent is not null)
        ? (Stops.Sum(stop => stop.Spent ?? 0), Stops.Where(stop => stop.Spent is not null).Sum(stop => stop.Minutes))
        : null;

    /// <summary>Whether the minutes on site alone are more than a day has.</summary>
    public bool IsTooMuch => Minutes > VisitNeed.MinutesOfDay;
}
