namespace LogBook.Bank.Firms;

/// <summary>How a system's visits are written down: equipment that is missing, tests that are not done there, units.</summary>
internal sealed record PaperHabits
{
    public bool MakeUpMeter { get; init; } = true;

    public bool Total { get; init; } = true;

    public bool Gauges { get; init; } = true;

    public bool Chloride { get; init; } = true;

    public bool Calcium { get; init; } = true;

    public bool Silica { get; init; }

    /// <summary>Make-up is tested at every so many visits.</summary>
    public int MakeUpEvery { get; init; } = 1;

    public bool PumpReadings { get; init; } = true;

    public bool BleedTests { get; init; } = true;

    public string LevelUnit { get; init; } = "cm";

    public string ConductivityUnit { get; init; } = "uS/cm";

    public bool Fahrenheit { get; init; }
}
