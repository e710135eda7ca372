using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>Whether a plant runs on a day, for lists.</summary>
public static class PlantDays
{
    /// <summary>Whether the plant runs on a day by its seasons and known stops.</summary>
    /// <param name="operation">When it runs; null means always.</param>
    /// <param name="day">Day in the site's zone.</param>
    public static bool Runs(Operation? operation, DateOnly day) => OperatingDays.Runs(operation, day);
}
