namespace LogBook.Domain.Assessments;

/// <summary>Codes of the figures an assessment works out.</summary>
public static class FigureCodes
{
    /// <summary>Cycles by conductivity, 1.</summary>
    public const string CyclesByConductivity = "cycles-by-conductivity";

    /// <summary>Cycles by chloride, 1.</summary>
    public const string CyclesByChloride = "cycles-by-chloride";

    /// <summary>Cycles by calcium, 1.</summary>
    public const string CyclesByCalcium = "cycles-by-calcium";

    /// <summary>Cycles by silica, 1.</summary>
    public const string CyclesBySilica = "cycles-by-silica";

    /// <summary>Cycles by volume (make-up over bleed), 1.</summary>
    public const string CyclesByVolume = "cycles-by-volume";

    /// <summary>Cycles by the best agreeing routes, 1.</summary>
    public const string CyclesBest = "cycles-best";

    /// <summary>Make-up of the interval, L.</summary>
    public const string MakeUp = "make-up";

    /// <summary>Controlled bleed of the interval (hours times valve, or meter), L.</summary>
    public const string Bleed = "bleed";

    /// <summary>Hours the bleed was open in the interval, h.</summary>
    public const string BleedHours = "bleed-hours";

    /// <summary>All water lost as liquid in the interval, make-up over cycles, L.</summary>
    public const string LiquidLoss = "liquid-loss";

    /// <summary>Evaporation of the interval, L.</summary>
    public const string Evaporation = "evaporation";

    /// <summary>Loss that the bleed does not explain, L.</summary>
    public const string UnexplainedLoss = "unexplained-loss";

    /// <summary>Product used in the interval from drum levels, L.</summary>
    public const string ProductUsed = "product-used";

    /// <summary>Product expected for the water actually lost, L.</summary>
    public const string ProductExpected = "product-expected";

    /// <summary>Product used over expected, 1.</summary>
    public const string UsedOverExpected = "used-over-expected";

    /// <summary>A test of the make-up against the system's own normal, %.</summary>
    public const string MakeUpShift = "make-up-shift";

    /// <summary>Probe error as found, %.</summary>
    public const string ProbeError = "probe-error";

    /// <summary>Slope of the probe error since its last calibration, cleaning or renewal, % a day.</summary>
    public const string ProbeDrift = "probe-drift";

    /// <summary>Days from the visit until a drum is empty, d.</summary>
    public const string DaysToEmpty = "days-to-empty";

    /// <summary>Make-up of the interval a day, m3/d.</summary>
    public const string MakeUpPerDay = "make-up-per-day";

    /// <summary>Water lost as liquid a day, m3/d.</summary>
    public const string LiquidLossPerDay = "liquid-loss-per-day";

    /// <summary>Product used for each volume of make-up, mL/m3.</summary>
    public const string ProductPerVolume = "product-per-volume";

    /// <summary>Hours the bleed was open for each volume of make-up, h/m3.</summary>
    public const string BleedHoursPerVolume = "bleed-hours-per-volume";

    /// <summary>Product that is missing until an order of the next visit has come, L; below zero where some is left.</summary>
    public const string ProductMissing = "product-missing";

    /// <summary>A figure of one system less the same figure of another, in the figure's own unit.</summary>
    public const string Difference = "difference";

    /// <summary>Output of a pump from the drop of its drum per hour run, L/h.</summary>
    public const string PumpOutput = "pump-output";
}
