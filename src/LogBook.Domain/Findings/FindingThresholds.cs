using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>
/// Default thresholds of every rule in one table, each with its basis; an installation, a system or a product may carry its own
/// by <c>with</c>.
/// </summary>
/// <remarks>Basis: published source, reference chapter, mass balance, common practice without a citable source, or from memory.</remarks>
public sealed record FindingThresholds
{
    private static readonly Text Common = new("common practice", "práctica habitual", "prática usual");
    private static readonly Text MassBalance = new("from the mass balance", "del balance de masa", "do balanço de massa");
    private static readonly Text Conductivities = new(
        "range of conductivity against cycles computed with PHREEQC, widened",
        "rango de conductividad frente a ciclos calculado con PHREEQC, ampliado",
        "faixa de condutividade contra ciclos calculada com PHREEQC, ampliada");

    private static readonly Text Doses = new("dose balance, common practice", "balance de dosis, práctica habitual", "balanço de dose, prática usual");
    private static readonly Text Drift = new("straight line with 95 % interval", "recta con intervalo del 95 %", "reta com intervalo de 95 %");
    private static readonly Text Formula = new(
        "common practice; the formula is within 0.35 of a speciation program",
        "práctica habitual; la fórmula difiere menos de 0,35 de un programa de especiación",
        "prática usual; a fórmula difere menos de 0,35 de um programa de especiação");

    private static readonly Text CouponBands = new(
        "AWT committee bands (Boffardi), as quoted publicly", "bandas del comité AWT (Boffardi), según citas públicas", "faixas do comitê AWT (Boffardi), segundo citações públicas");

    private static readonly Text WhiteRust = new(
        "galvanizeit.org and AWT white rust paper 2012", "galvanizeit.org y documento AWT sobre óxido blanco 2012", "galvanizeit.org e documento AWT sobre ferrugem branca 2012");

    private static readonly Text FromMemory = new("from memory, unconfirmed", "de memoria, sin confirmar", "de memória, sem confirmação");
    private static readonly Text Rises = new(
        "start + make-up conductivity × evaporation × time / volume", "inicio + conductividad de reposición × evaporación × tiempo / volumen", "início + condutividade da reposição × evaporação × tempo / volume");

    private static readonly Text Contact = new(
        "bvwater.co.uk article on non-oxidising biocides", "artículo de bvwater.co.uk sobre biocidas no oxidantes", "artigo de bvwater.co.uk sobre biocidas não oxidantes");

    private static readonly Text Registers = new("arithmetic of registers", "aritmética de los contadores", "aritmética dos registradores");
    private static readonly Text Guidance = new(
        "HSG274 Part 1, 2nd edition 2024, as described publicly",
        "HSG274 Parte 1, 2.ª edición 2024, según descripciones públicas",
        "HSG274 Parte 1, 2.ª edição 2024, segundo descrições públicas");

    /// <summary>The defaults.</summary>
    public static FindingThresholds Default { get; } = new();

    /// <summary>Probe error as found, % of the reference.</summary>
    public Threshold ProbeErrorPercent { get; init; } = new(5, Common);

    /// <summary>Probe error as found, µS/cm; the larger of both counts.</summary>
    public Threshold ProbeErrorUsPerCm { get; init; } = new(25, Common);

    /// <summary>Probe error as left that wants somebody at once, %.</summary>
    public Threshold ProbeLeftPercent { get; init; } = new(10, Common);

    /// <summary>Shortest settling of a hand meter before its reading counts, min.</summary>
    public Threshold SettledMinutes { get; init; } = new(5, Common);

    /// <summary>Probe error forecast for the next visit, %.</summary>
    public Threshold ProbeForecastPercent { get; init; } = new(5, Drift);

    /// <summary>As-found errors that a drift needs.</summary>
    public Threshold ProbeDriftPoints { get; init; } = new(4, Drift);

    /// <summary>Share of an error that cleaning must take away to call it fouling.</summary>
    public Threshold FouledShare { get; init; } = new(2 / 3.0, MassBalance);

    /// <summary>Error from which cleaning can tell fouling, %.</summary>
    public Threshold FouledErrorPercent { get; init; } = new(4, MassBalance);

    /// <summary>Days in which two calibrations of an uncleaned probe to the same side tell fouling.</summary>
    public Threshold FouledCalibrationDays { get; init; } = new(180, MassBalance);

    /// <summary>Conductivity above the set point, % of it, where the programme has no range.</summary>
    public Threshold ConductivityHighPercent { get; init; } = new(10, Common);

    /// <summary>Conductivity below the set point, % of it, where the programme has no range.</summary>
    public Threshold ConductivityLowPercent { get; init; } = new(15, Common);

    /// <summary>Days for which a probe found within its tolerance may stand for a reference.</summary>
    public Threshold ProbeVerifiedDays { get; init; } = new(35, Common);

    /// <summary>Cycles off target on two visits, %.</summary>
    public Threshold CyclesPercent { get; init; } = new(15, Common);

    /// <summary>Ratio of conductivity to chloride cycles off the system's own median, %.</summary>
    public Threshold RoutesPercent { get; init; } = new(15, Common);

    /// <summary>Ratio of conductivity to chloride cycles before a baseline, at least.</summary>
    public Threshold RoutesLow { get; init; } = new(0.70, Conductivities);

    /// <summary>Ratio of conductivity to chloride cycles before a baseline, at most.</summary>
    public Threshold RoutesHigh { get; init; } = new(1.10, Conductivities);

    /// <summary>Loss beyond the system's own usual for the bleed's hours, % of the normal bleed, in two stretches.</summary>
    public Threshold WaterLossPercent { get; init; } = new(25, MassBalance);

    /// <summary>Such a loss that decides in one stretch, % of the normal bleed.</summary>
    public Threshold WaterLossOncePercent { get; init; } = new(50, MassBalance);

    /// <summary>Hours of the bleed over what the water lost needs.</summary>
    public Threshold BleedHoursTimes { get; init; } = new(1.5, MassBalance);

    /// <summary>Differentials below the set point at which a bleed should long be shut.</summary>
    public Threshold BleedShutDifferentials { get; init; } = new(3, MassBalance);

    /// <summary>Loss over the bleed valve's full flow that tells of a valve that does not close, %.</summary>
    public Threshold BleedShutPercent { get; init; } = new(70, MassBalance);

    /// <summary>Advance of a register over what is expected below which it counts as stopped, %.</summary>
    public Threshold MeterAdvancePercent { get; init; } = new(5, MassBalance);

    /// <summary>Times the usual flow that a rollover may imply.</summary>
    public Threshold RolloverTimesUsual { get; init; } = new(3, Registers);

    /// <summary>Difference between dial and total, %.</summary>
    public Threshold PulsesPercent { get; init; } = new(3, Common);

    /// <summary>Make-up off its own normal, %; twice as much while there are fewer than twelve readings.</summary>
    public Threshold MakeUpPercent { get; init; } = new(15, Common);

    /// <summary>Make-up off its own normal, standard deviations of the last twelve readings.</summary>
    public Threshold MakeUpSigmas { get; init; } = new(3, Common);

    /// <summary>Softened hardness over its own normal, mg/L as CaCO3.</summary>
    public Threshold SoftenedHardness { get; init; } = new(10, Common);

    /// <summary>Softened over raw hardness that wants somebody at once, %.</summary>
    public Threshold SoftenerPassesPercent { get; init; } = new(25, Common);

    /// <summary>Cycles of a scaling ion over those of a conservative one, against the own baseline.</summary>
    public Threshold DepositShare { get; init; } = new(0.80, Common);

    /// <summary>The same before a baseline, as a plain ratio.</summary>
    public Threshold DepositFixed { get; init; } = new(0.75, Common);

    /// <summary>The same that decides at once.</summary>
    public Threshold DepositOnce { get; init; } = new(0.60, Common);

    /// <summary>Rise of the approach temperature that tells of scale on the exchanger, K.</summary>
    public Threshold ApproachRise { get; init; } = new(1, Common);

    /// <summary>Langelier index of a treated tower, at most.</summary>
    public Threshold LangelierHigh { get; init; } = new(2.5, Formula);

    /// <summary>Silica in the tower water, mg/L as SiO2, at most.</summary>
    public Threshold SilicaHigh { get; init; } = new(150, Common);

    /// <summary>Langelier index below which an index alone calls the water corrosive.</summary>
    public Threshold LangelierLow { get; init; } = new(-0.35, Formula);

    /// <summary>Steel coupon, mil/a: plan.</summary>
    public Threshold CouponSteelPlan { get; init; } = new(5, CouponBands);

    /// <summary>Steel coupon, mil/a: act.</summary>
    public Threshold CouponSteelAct { get; init; } = new(10, CouponBands);

    /// <summary>Copper alloy coupon, mil/a: plan.</summary>
    public Threshold CouponCopperPlan { get; init; } = new(0.35, CouponBands);

    /// <summary>Copper alloy coupon, mil/a: act.</summary>
    public Threshold CouponCopperAct { get; init; } = new(1.0, CouponBands);

    /// <summary>Shortest exposure of a coupon that tells, d.</summary>
    public Threshold CouponDays { get; init; } = new(30, Common);

    /// <summary>pH on new galvanised steel, at most.</summary>
    public Threshold NewGalvanisedPh { get; init; } = new(8.2, WhiteRust);

    /// <summary>Weeks in which galvanised steel counts as new.</summary>
    public Threshold NewGalvanisedWeeks { get; init; } = new(12, WhiteRust);

    /// <summary>Shortest gap between two non-oxidising biocides where no label tells, h.</summary>
    public Threshold BiocideGapHours { get; init; } = new(24, FromMemory);

    /// <summary>Part of the time a non-oxidising product acts in which no oxidant is to feed, %.</summary>
    public Threshold OxidantAlone { get; init; } = new(100, Contact);

    /// <summary>Part of the high alarm that a hold of the bleed may reach, %.</summary>
    public Threshold HoldRise { get; init; } = new(100, Rises);

    /// <summary>Part of the label's contact time without circulation that leaves a dose untreated, %.</summary>
    public Threshold UntreatedPercent { get; init; } = new(50, Contact);

    /// <summary>Longest stop after which a restart needs no disinfection or sample where no rule tells, d.</summary>
    public Threshold RestartDays { get; init; } = new(5, FromMemory);

    /// <summary>Product used over expected, lower limit.</summary>
    public Threshold FeedLow { get; init; } = new(0.75, Doses);

    /// <summary>Product used over expected, upper limit.</summary>
    public Threshold FeedHigh { get; init; } = new(1.25, Doses);

    /// <summary>Oxidant or acid against the system's own use, share either way.</summary>
    public Threshold OwnUseShare { get; init; } = new(0.40, Common);

    /// <summary>Hours run over expected from which an empty drum tells an overfeed.</summary>
    public Threshold OverfedTimes { get; init; } = new(3, MassBalance);

    /// <summary>Pump output against its own drawdown, early output or rating, share either way.</summary>
    public Threshold PumpOutputShare { get; init; } = new(0.25, Common);

    /// <summary>A drawdown against the first one or the rating, share either way.</summary>
    public Threshold DrawdownShare { get; init; } = new(0.15, Common);

    /// <summary>Residual over what the product used would give, below which another product is suspected.</summary>
    public Threshold WrongProductShare { get; init; } = new(0.25, Common);

    /// <summary>Change of a stock that nothing explains, share of the drum's capacity.</summary>
    public Threshold StockShare { get; init; } = new(0.03, Common);

    /// <summary>Fall of a stock that nothing explains and that wants somebody at once, share of the drum's capacity.</summary>
    public Threshold StockFallActShare { get; init; } = new(0.25, Common);

    /// <summary>Hours and drum over what the dose plan asks, at most, to call doses missed.</summary>
    public Threshold DoseMissedShare { get; init; } = new(0.60, MassBalance);

    /// <summary>Days in use without any working biocide: plan.</summary>
    public Threshold BiocideLapsePlanDays { get; init; } = new(3, Common);

    /// <summary>Days in use without any working biocide: act.</summary>
    public Threshold BiocideLapseActDays { get; init; } = new(7, Common);

    /// <summary>Share of the system's volume on file that a label is judged with.</summary>
    public Threshold LabelVolumeShare { get; init; } = new(0.80, Doses);

    /// <summary>Residual over the low end of its range that wants somebody at once.</summary>
    public Threshold ResidualActLow { get; init; } = new(0.25, Common);

    /// <summary>Residual over the high end of its range that wants somebody at once.</summary>
    public Threshold ResidualActHigh { get; init; } = new(2, Common);

    /// <summary>Hours after the start of a dose in which its residual tells nothing.</summary>
    public Threshold SlugHours { get; init; } = new(2, Common);

    /// <summary>Chance of an empty drum before the next visit: plan.</summary>
    public Threshold EmptyChancePlan { get; init; } = new(0.20, Common);

    /// <summary>Chance of an empty drum before the next visit: act.</summary>
    public Threshold EmptyChanceAct { get; init; } = new(0.50, Common);

    /// <summary>Change of the set point that wants somebody at once, %.</summary>
    public Threshold SetPointPercent { get; init; } = new(10, Common);

    /// <summary>Settings that must differ at once to call them lost.</summary>
    public Threshold SettingsLostCount { get; init; } = new(5, Common);

    /// <summary>Share of the settings read that must differ to call them lost, %.</summary>
    public Threshold SettingsLostPercent { get; init; } = new(30, Common);

    /// <summary>Total colony count or dip slide, colonies per mL: plan, where no rule has bands.</summary>
    public Threshold ColoniesPlan { get; init; } = new(1e4, Guidance);

    /// <summary>Total colony count or dip slide, colonies per mL: act, where no rule has bands.</summary>
    public Threshold ColoniesAct { get; init; } = new(1e5, Common);

    /// <summary>Part of an interval at its end in which what is due is announced, %.</summary>
    public Threshold DueSoonPercent { get; init; } = new(20, Common);

    /// <summary>Hours left of a countdown to tell an authority below which it is urgent.</summary>
    public Threshold NotifyActHours { get; init; } = new(6, Common);

    /// <summary>A visit is late when more than this part of the interval has passed over it, %.</summary>
    public Threshold VisitLatePercent { get; init; } = new(25, Common);

    /// <summary>A visit is late when at least so many days over the interval have passed.</summary>
    public Threshold VisitLateDays { get; init; } = new(2, Common);

    /// <summary>Controller clock against true time, min.</summary>
    public Threshold ClockMinutes { get; init; } = new(30, Common);

    /// <summary>pH below this on a system without acid.</summary>
    public Threshold PhLowWithoutAcid { get; init; } = new(7.0, Common);

    /// <summary>pH below its range by this much on a system with acid.</summary>
    public Threshold PhBelowRangeWithAcid { get; init; } = new(1.0, Common);

    /// <summary>Sites that a meter or lot must show its offset on.</summary>
    public Threshold ShiftSites { get; init; } = new(3, Common);

    /// <summary>Comparisons that an offset of a meter or lot needs.</summary>
    public Threshold ShiftComparisons { get; init; } = new(5, Common);

    /// <summary>Days within which those comparisons lie.</summary>
    public Threshold ShiftDays { get; init; } = new(30, Common);

    /// <summary>Median offset of a hand meter, %.</summary>
    public Threshold InstrumentShiftPercent { get; init; } = new(3, Common);

    /// <summary>Reading of a hand meter in a standard off its value, %; decides alone.</summary>
    public Threshold StandardPercent { get; init; } = new(3, Common);

    /// <summary>Median offset of a reagent lot, %.</summary>
    public Threshold LotShiftPercent { get; init; } = new(10, Common);

    /// <summary>Stay below this share of what the tests take is a sign for a second look.</summary>
    public Threshold StayShare { get; init; } = new(0.5, Common);

    /// <summary>Visits running on which a test of the programme may be missed.</summary>
    public Threshold MissedVisits { get; init; } = new(2, Common);

    /// <summary>Days after a check in a standard from which a hand meter counts as unproved for long.</summary>
    public Threshold MeterProvedDays { get; init; } = new(35, Common);

    /// <summary>Times the median of the last six results, or part of it, from which a result is doubted.</summary>
    public Threshold SuspectTimes { get; init; } = new(5, Common);

    /// <summary>Hours after which a summary that the mail server has not taken wants somebody.</summary>
    public Threshold SummaryHours { get; init; } = new(24, Common);
}
