namespace LogBook.Domain.Simulation;

/// <summary>How the heat varies: base heat x month x weekday x hour x weather.</summary>
public sealed record LoadProfile
{
    /// <summary>Factor at the middle of each month, January first, 12 values; linear in between.</summary>
    public IReadOnlyList<double> Months { get; init; } = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1];

    /// <summary>Factor of each weekday, Monday first, 7 values.</summary>
    public IReadOnlyList<double> Weekdays { get; init; } = [1, 1, 1, 1, 1, 1, 1];

    /// <summary>Factor of each hour of local time, midnight first, 24 values of mean 1.</summary>
    public IReadOnlyList<double> Hours { get; init; } =
        [0.80, 0.78, 0.76, 0.76, 0.78, 0.82, 0.88, 0.94, 1.00, 1.06, 1.12, 1.17, 1.21, 1.24, 1.25, 1.23, 1.20, 1.15, 1.09, 1.03, 0.98, 0.93, 0.88, 0.84];

    /// <summary>Standard deviation of the day-to-day weather, a share of 1.</summary>
    public double WeatherShare { get; init; } = 0.06;

    /// <summary>Factor at a local time, without weather.</summary>
    /// <param name="local">Local wall time.</param>
    /// <returns>Factor of the base heat.</returns>
    public double At(DateTime local)
    {
        var middle = local.Month - 1 + ((local.Day - 15.5) / 31);
        var from = (int)Math.Floor(middle);
        var share = middle - from;
        var month = (Months[(from + 12) % 12] * (1 - share)) + (Months[(from + 13) % 12] * share);
        return month * Weekdays[((int)local.DayOfWeek + 6) % 7] * Hours[local.Hour];
    }
}
