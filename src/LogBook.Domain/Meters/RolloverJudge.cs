namespace LogBook.Domain.Meters;

/// <summary>What decides whether a count that fell is a rollover: arithmetic alone cannot.</summary>
/// <param name="Elapsed">Time between the readings, in UTC.</param>
/// <param name="MaxLPerH">What the pipe can carry, L/h, or null.</param>
/// <param name="UsualLPerH">Usual mean flow of this meter, L/h, or null; up to three times as much is believed.</param>
/// <remarks>Reference: 08-meters.md, difference; 08-meters.csv, meter_reset_suspected.</remarks>
public sealed record RolloverJudge(TimeSpan Elapsed, double? MaxLPerH, double? UsualLPerH)
{
    /// <summary>Times the usual flow that a rollover may imply.</summary>
    public const double TimesUsual = 3;

    /// <summary>Most that can have passed, L.</summary>
    public double? MostLitres => (MaxLPerH, UsualLPerH) switch
    {
        ({ } max, { } usual) => Math.Min(max, TimesUsual * usual) * Elapsed.TotalHours,
        ({ } max, null) => max * Elapsed.TotalHours,
        (null, { } usual) => TimesUsual * usual * Elapsed.TotalHours,
        _ => null,
    };

    /// <summary>Whether a rollover of that size can be believed.</summary>
    /// <param name="litres">Amount that a rollover would mean, L.</param>
    /// <returns>True when it is possible and not above three times the usual; false also when neither is known.</returns>
    public bool Believes(double litres) => MostLitres is { } most && litres <= most;
}
