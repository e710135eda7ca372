using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.SetPoints;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Calculators;

/// <summary>What the calculations of a system begin with: its programme as the controller holds it, and what was last measured.</summary>
public sealed record CalculatorStart
{
    private static readonly Text OfProgramme = new("programme from {0}", "programa desde {0}", "programa desde {0}");
    private static readonly Text OfSetUp = new("set-up of the system", "ficha del sistema", "cadastro do sistema");
    private static readonly Text Timed = new("timed into a bucket on {0}", "cronometrado en un cubo el {0}", "cronometrado em balde em {0}");
    private static readonly Text OfReadings = new("median of the last {0} make-up readings, newest {1}", "mediana de las últimas {0} lecturas de reposición, la más nueva {1}", "mediana das últimas {0} leituras de reposição, a mais nova {1}");
    private static readonly Text ForProgramme = new("make-up the programme was worked out for", "reposición para la que se calculó el programa", "reposição para a qual o programa foi calculado");
    private static readonly Text OfVisit = new("worked out at the visit of {0}", "calculado en la visita del {0}", "calculado na visita de {0}");
    private static readonly Text Busy = new("largest mean of an interval in the last year", "mayor media de un intervalo en el último año", "maior média de um intervalo no último ano");
    private static readonly Text Plate = new("70 % of full load (common practice, no source)", "70 % de la carga plena (práctica común, sin fuente)", "70 % da carga plena (prática comum, sem fonte)");
    private static readonly Text OwnRatio = new("own ratio of conductivity to ions", "relación propia de conductividad a iones", "relação própria de condutividade e íons");
    private static readonly Text UsualBend = new("usual: 0.025 for each cycle above one", "usual: 0,025 por cada ciclo sobre uno", "usual: 0,025 por ciclo acima de um");
    private static readonly Text OfBalance = new("evaporation / (cycles − 1)", "evaporación / (ciclos − 1)", "evaporação / (ciclos − 1)");
    private static readonly Text OfProduct = new("usual level of the product", "nivel usual del producto", "nível usual do produto");

    /// <summary>The system with the pumps and drums of the day.</summary>
    public required WaterSystem System { get; init; }

    /// <summary>Programme as the controller holds it; null where none is in force.</summary>
    public required Programme? Programme { get; init; }

    /// <summary>Readings of the make-up's conductivity, µS/cm; of the programme where there is no reading.</summary>
    public required MakeUpReadings Conductivity { get; init; }

    /// <summary>Readings of the make-up's ions by test, mg/L.</summary>
    public required IReadOnlyDictionary<string, MakeUpReadings> Ions { get; init; }

    /// <summary>Limits on file.</summary>
    public required IReadOnlyList<IonLimit> Limits { get; init; }

    /// <summary>Cycles aimed at.</summary>
    public required KnownNumber? TargetCycles { get; init; }

    /// <summary>Set point, µS/cm.</summary>
    public required KnownNumber? SetPoint { get; init; }

    /// <summary>Differential, µS/cm.</summary>
    public required KnownNumber? Differential { get; init; }

    /// <summary>High alarm, µS/cm.</summary>
    public required KnownNumber? HighAlarm { get; init; }

    /// <summary>Tests whose range in the programme cannot be converted, so that its limit is not known.</summary>
    public IReadOnlyList<string> NotConverted { get; init; } = [];

    /// <summary>Conductivity of the make-up, µS/cm.</summary>
    public required KnownNumber? MakeUp { get; init; }

    /// <summary>How far conductivity under-reads cycles for each cycle above one.</summary>
    public required KnownNumber Bend { get; init; }

    /// <summary>Cycles by the last visit that tells them, else the target.</summary>
    public required KnownNumber? Cycles { get; init; }

    /// <summary>Volume, L.</summary>
    public required KnownNumber? VolumeL { get; init; }

    /// <summary>Flow of the open bleed valve, L/h.</summary>
    public required KnownNumber? BleedLPerH { get; init; }

    /// <summary>Evaporation in the busy season, L/h.</summary>
    public required KnownNumber? EvaporationLPerH { get; init; }

    /// <summary>Mean liquid loss, L/h.</summary>
    public required KnownNumber? LossLPerH { get; init; }

    /// <summary>How well numbers are known where nothing else is said.</summary>
    public UncertaintyTable Uncertainties { get; init; } = UncertaintyTable.Default;

    /// <summary>Feeds with an output.</summary>
    public required IReadOnlyList<FeedStart> Feeds { get; init; }

    /// <summary>Collects what is known of a system on a day.</summary>
    /// <param name="history">Its history; visits after the day are not looked at.</param>
    /// <param name="on">Day in the site's zone.</param>
    /// <returns>What is known.</returns>
    public static CalculatorStart Of(SystemHistory history, DateOnly on)
    {
        VisitFacts? last = null;
        foreach (var visit in history.Visits.Where(visit => history.DayOf(visit.At) <= on))
        {
            last = new VisitFacts(history, visit, last);
        }

        var asked = history.ProgrammeOn(on);
        var programme = last is null || last.Programme != asked ? asked : ControllerPlan.Of(last) ?? asked;
        var (system, table) = (history.System, history.Firm.Engine.Uncertainties);
        KnownNumber? Of(double? value, string unit, double share = 0) => value is { } number && programme is not null
            ? new KnownNumber(new Estimate(number, unit, share * Math.Abs(number)), new Said(OfProgramme, programme.From))
            : null;

        var (conductivity, makeUp) = MakeUpOf(last, programme);
        var cycles = CyclesOf(last) ?? Of(programme?.TargetCycles, "1", 0.1);
        var evaporation = last is not null && BusySeason.EvaporationPerHour(last) is { } busy
            ? new KnownNumber(busy.Scaled(1, "L/h"), new Said(BusySeason.ByPlate(system.FullLoadKw) is { } plate && plate.Value == busy.Value ? Plate : Busy))
            : BusySeason.ByPlate(system.FullLoadKw) is { } byPlate ? new KnownNumber(byPlate.Scaled(1, "L/h"), new Said(Plate)) : null;
        return new CalculatorStart
        {
            System = PartsOnDay.Of(system, on),
            Programme = programme,
            Conductivity = conductivity,
            Ions = IonsOf(last, programme),
            Limits = IonLimits.Of(system, asked),
            NotConverted = IonLimits.NotConverted(asked),
            TargetCycles = Of(programme?.TargetCycles, "1"),
            SetPoint = Of(programme?.SetPointUsPerCm, "uS/cm"),
            Differential = Of(programme?.DifferentialUsPerCm, "uS/cm"),
            HighAlarm = Of(programme?.HighAlarmUsPerCm, "uS/cm"),
            MakeUp = makeUp,
            Bend = BendOf(last),
            Cycles = cycles,
            VolumeL = system.VolumeL is > 0 and var volume ? new KnownNumber(table.SystemVolume().On(volume, "L"), new Said(OfSetUp)) : null,
            BleedLPerH = ValveOf(history, on),
            EvaporationLPerH = evaporation,
            LossLPerH = evaporation is not null && cycles is { Estimate.Value: > 1.05 }
                ? new KnownNumber(evaporation.Estimate.Over(cycles.Estimate.Minus(Estimate.Exact(1)), "L/h"), new Said(OfBalance))
                : null,
            Uncertainties = table,
            Feeds = [.. (programme?.Feeds ?? []).Select(feed => FeedOf(history, on, last, feed, programme!)).OfType<FeedStart>()],
        };
    }

    private static KnownNumber? ValveOf(SystemHistory history, DateOnly on)
    {
        var (system, table) = (history.System, history.Firm.Engine.Uncertainties);
        return system.BleedTimed is { LPerH: > 0 } timed && timed.On <= on
            ? new KnownNumber(table.BleedValve(on.DayNumber - timed.On.DayNumber <= 180).On(timed.LPerH, "L/h"), new Said(Timed, timed.On))
            : system.BleedValveLPerH is > 0 and var valve ? new KnownNumber(table.BleedValve(false).On(valve, "L/h"), new Said(OfSetUp)) : null;
    }

    private static (MakeUpReadings Readings, KnownNumber? Middle) MakeUpOf(VisitFacts? last, Programme? programme)
    {
        var (values, newest) = ReadingsOf(last, TestCodes.Conductivity);
        if (values.Count > 0)
        {
            var readings = new MakeUpReadings(values);
            return (readings, new KnownNumber(readings.Middle("uS/cm").Value, new Said(OfReadings, new Count(readings.Count), newest)));
        }

        return programme?.MakeUp?.ConductivityUsPerCm is > 0 and var asked
            ? (new MakeUpReadings([asked]), new KnownNumber(new Estimate(asked, "uS/cm", 0.1 * asked), new Said(ForProgramme)))
            : (new MakeUpReadings([]), null);
    }

    private static Dictionary<string, MakeUpReadings> IonsOf(VisitFacts? last, Programme? programme)
    {
        var ions = new Dictionary<string, MakeUpReadings>(StringComparer.OrdinalIgnoreCase);
        foreach (var test in IonLimits.Tests)
        {
            var values = ReadingsOf(last, test).Values;
            var asked = test switch
            {
                TestCodes.Chloride => programme?.MakeUp?.ChlorideMgPerL,
                TestCodes.Calcium => programme?.MakeUp?.CalciumMgPerLAsCaCO3,
                TestCodes.Alkalinity => programme?.MakeUp?.AlkalinityMgPerLAsCaCO3,
                TestCodes.Silica => programme?.MakeUp?.SilicaMgPerL,
                TestCodes.Sulphate => programme?.MakeUp?.SulphateMgPerL,
                _ => null,
            };
            if (values.Count > 0 || asked is not null)
            {
                ions[test] = new MakeUpReadings(values.Count > 0 ? values : [asked!.Value]);
            }
        }

        return ions;
    }

    // Newest first; a result that is only known to lie below or above something tells no percentile.
    private static (IReadOnlyList<double> Values, DateOnly? Newest) ReadingsOf(VisitFacts? last, string test)
    {
        var values = new List<double>();
        DateOnly? newest = null;
        for (var visit = last; visit is not null && values.Count < MakeUpReadings.Most; visit = visit.Previous)
        {
            if (visit.MakeUpReading(test) is { IsCensored: false } reading)
            {
                values.Add(reading.Value.Value);
                newest ??= visit.Day;
            }
        }

        return (values, newest);
    }

    private static KnownNumber? CyclesOf(VisitFacts? last)
    {
        for (var visit = last; visit is not null && (last!.Visit.At - visit.Visit.At).TotalDays <= 120; visit = visit.Previous)
        {
            if (visit.Cycles.Best is { HasValue: true, Value: var best })
            {
                return new KnownNumber(best, new Said(OfVisit, visit.Day));
            }
        }

        return null;
    }

    private static KnownNumber BendOf(VisitFacts? last)
    {
        if (last?.Cycles is { OwnRatio: { } ratio, Best: { HasValue: true, Value.Value: > 1.5 and var cycles } })
        {
            // The own ratio at these cycles as the bend of the line that goes through it.
            var bend = (1 - ratio) / (cycles - 1);
            if (bend is >= 0 and <= 0.06)
            {
                return new KnownNumber(new Estimate(bend, "1", 0.3 * Math.Max(bend, 0.005)), new Said(OwnRatio));
            }
        }

        return new KnownNumber(new Estimate(ConductivityLaw.UsualBend, "1", ConductivityLaw.BendUncertainty), new Said(UsualBend));
    }

    private static FeedStart? FeedOf(SystemHistory history, DateOnly on, VisitFacts? last, Feed feed, Programme programme)
    {
        if (ProgrammeSettings.OutputOf(feed, PartsOnDay.Of(history.System, on)) is not { } output)
        {
            return null;
        }

        var pump = PartsOnDay.PumpOn(history.System, output, on);
        var drum = PartsOnDay.DrumOn(history.System, feed.Drum, on);
        var product = drum is null ? null : history.Firm.Products.GetValueOrDefault(drum.Product);
        var target = feed.TargetMgPerL is { } own
            ? new KnownNumber(Estimate.Exact(own, "mg/L"), new Said(OfProgramme, programme.From))
            : product?.DoseMgPerL is { } usual ? new KnownNumber(Estimate.Exact(usual, "mg/L"), new Said(OfProduct)) : null;
        return new FeedStart(output, feed, product, pump, KnownPumps.Of(history, last, pump), target) { PumpForLabelLPerH = KnownPumps.ForLabel(history, last, pump) };
    }
}
