namespace LogBook.Domain.Simulation;

/// <summary>Some weeks of a programme run ahead. Moments UTC, conductivities µS/cm at 25 °C.</summary>
public sealed record LookAheadResult
{
    /// <summary>First day, local.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Weeks run.</summary>
    public required int Weeks { get; init; }

    /// <summary>Products whose level is followed, those of the feeds that are run; in the order of <see cref="LookAheadHour.MgPerL"/>.</summary>
    public required IReadOnlyList<string> Products { get; init; }

    /// <summary>Feeds that are not run ahead: by measured value, by hand, from a feeder.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Everything that switched, in order.</summary>
    public required IReadOnlyList<PlantEvent> Events { get; init; }

    /// <summary>Doses of the plan, by the moment they fell due.</summary>
    public required IReadOnlyList<LookAheadDose> Doses { get; init; }

    /// <summary>Doses that meet.</summary>
    public required IReadOnlyList<LookAheadClash> Clashes { get; init; }

    /// <summary>Bleeds added up.</summary>
    public required LookAheadBleeds Bleeds { get; init; }

    /// <summary>Highest conductivity and its moment, by events and full hours.</summary>
    public required LookAheadPeak Peak { get; init; }

    /// <summary>High alarm of the programme.</summary>
    public required double? HighAlarmUsPerCm { get; init; }

    /// <summary>Alarms that came up.</summary>
    public required IReadOnlyList<string> Alarms { get; init; }

    /// <summary>Conductivity and residuals at each full hour.</summary>
    public required IReadOnlyList<LookAheadHour> Hours { get; init; }
}
