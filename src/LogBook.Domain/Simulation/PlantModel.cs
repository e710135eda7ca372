using LogBook.Domain.Programmes;

namespace LogBook.Domain.Simulation;

/// <summary>The plant as it truly is, beside the set-up that people believe. Volumes L, flows L/h.</summary>
public sealed record PlantModel
{
    /// <summary>True volume of the circuit, L; stays constant.</summary>
    public required double VolumeL { get; init; }

    /// <summary>True flow of the open bleed valve, L/h.</summary>
    public required double BleedLPerH { get; init; }

    /// <summary>Drift while circulating, L/h.</summary>
    public double DriftLPerH { get; init; }

    /// <summary>Base heat rejected, kW.</summary>
    public required double HeatKw { get; init; }

    /// <summary>How the heat varies.</summary>
    public LoadProfile Load { get; init; } = new();

    /// <summary>Water evaporated for each kWh of heat, L.</summary>
    /// <remarks>1.26 is 85 % of the heat by evaporation at 2,430 kJ/kg (reference/01, row 01-041).</remarks>
    public double EvaporatedLPerKwh { get; init; } = 1.26;

    /// <summary>Make-up water; absent parts count as none.</summary>
    public required MakeUpWater MakeUp { get; init; }

    /// <summary>Half the swing of the make-up's strength over a year, a share of 1; strongest in late summer.</summary>
    public double SeasonShare { get; init; } = 0.05;

    /// <summary>Standard deviation of the make-up's strength from week to week, a share of 1.</summary>
    public double WeekShare { get; init; } = 0.03;

    /// <summary>Standard deviation of the probe's slow wander, a share of 1.</summary>
    public double ProbeShare { get; init; } = 0.005;

    /// <summary>Conductivity = conductance x (1 - bend x (cycles - 1)).</summary>
    /// <remarks>0.025 lies among the rows "carbonate kept" of reference/01-ec-vs-cycles.</remarks>
    public double ConductivityBend { get; init; } = 0.025;

    /// <summary>Conductivity by inhibitor above or below its usual level, µS/cm for each mg/L as product (assumption).</summary>
    public double InhibitorUsPerCmPerMgPerL { get; init; } = 0.3;

    /// <summary>Usual inhibitor level, mg/L as product; the bend includes it.</summary>
    public double UsualInhibitorMgPerL { get; init; }

    /// <summary>Calcium above which deposit forms, mg/L as CaCO3; infinite means never.</summary>
    public double DepositAboveMgPerL { get; init; } = double.PositiveInfinity;

    /// <summary>Share of the excess that deposits in an hour.</summary>
    public double DepositPerHour { get; init; }

    /// <summary>What a feeder of solid product gives off while water circulates, kg/h; 0 where there is none.</summary>
    public double FeederKgPerH { get; init; }

    /// <summary>Products known to the plant.</summary>
    public IReadOnlyList<PlantProduct> Products { get; init; } = [];

    /// <summary>Whether a leak stops with the circulation (isolated circuit).</summary>
    public bool LeakOnlyWhileRunning { get; init; }

    /// <summary>Cycles at the start; conservative ions, conductivity and calcium follow.</summary>
    public double StartCycles { get; init; } = 1;
}
