using LogBook.Domain.Cycles;

namespace LogBook.Domain.SetPoints;

/// <summary>What a set point is worked out from.</summary>
public sealed record SetPointCase
{
    /// <summary>Cycles aimed at, above 1; null where the limits alone decide.</summary>
    public double? TargetCycles { get; init; }

    /// <summary>Conductivity readings of the make-up, µS/cm at 25 °C.</summary>
    public required MakeUpReadings Conductivity { get; init; }

    /// <summary>Readings of the make-up by code of the test, mg/L in the test's basis.</summary>
    public IReadOnlyDictionary<string, MakeUpReadings> Ions { get; init; } = new Dictionary<string, MakeUpReadings>();

    /// <summary>Limits of the circulating water; one of conductivity caps the set point itself.</summary>
    public IReadOnlyList<IonLimit> Limits { get; init; } = [];

    /// <summary>How far conductivity under-reads cycles: see <see cref="ConductivityLaw"/>.</summary>
    public double Bend { get; init; } = ConductivityLaw.UsualBend;

    /// <summary>Standard uncertainty of <see cref="Bend"/>; smaller where the system has a baseline of its own.</summary>
    public double BendUncertainty { get; init; } = ConductivityLaw.BendUncertainty;

    /// <summary>Differential as a share of the set point, %, 0 to below 50.</summary>
    public double DifferentialPercent { get; init; } = 2;
}
