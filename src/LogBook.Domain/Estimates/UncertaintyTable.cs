using System.Collections.Concurrent;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>
/// The one table of default standard uncertainties. <see cref="Default"/> serves until an installation, system or product has its own:
/// pass another instance made with <see cref="With"/>.
/// </summary>
/// <remarks>
/// Parts that repeat carry a name, so that they cancel in ratios and do not average out: "hand-meter:HM-1", "lot:IN-0412", "meter:MU",
/// "valve:bleed", "pump:P-INH", "volume".
/// </remarks>
public sealed class UncertaintyTable
{
    private readonly Dictionary<string, DefaultUncertainty> _rows;

    // Every reading of every visit asks for one of a few dozen.
    private readonly ConcurrentDictionary<(string Code, string? Of, double Step), ReadingUncertainty> _known = new();

    /// <summary>Makes a table.</summary>
    /// <param name="rows">Rows with unique codes; all of <see cref="UncertaintyCodes"/> are needed.</param>
    /// <exception cref="ArgumentException">A code is there twice.</exception>
    public UncertaintyTable(IEnumerable<DefaultUncertainty> rows) => _rows = rows.ToDictionary(row => row.Code, StringComparer.Ordinal);

    /// <summary>The defaults.</summary>
    public static UncertaintyTable Default { get; } = new(
    [
        new(UncertaintyCodes.HandConductivity, 1, "%", "hand meter, one reading in flowing water", 'C'),
        new(UncertaintyCodes.HandConductivityProved, 1.5, "%", "hand meter checked in a standard within 30 days; the same on every site it visits", 'C'),
        new(UncertaintyCodes.HandConductivityUnproved, 3, "%", "hand meter without such a check", 'C'),
        new(UncertaintyCodes.CompensationNear25, 1, "%", "temperature compensation, 15 to 35 °C (reference chapter 4: errors up to 2-3 % at the ends)", 'R'),
        new(UncertaintyCodes.CompensationFar, 2, "%", "temperature compensation outside 15 to 35 °C (reference chapter 4)", 'R'),
        new(UncertaintyCodes.ControllerDisplay, 1, "%", "controller display, scatter and step", 'C'),
        new(UncertaintyCodes.DropTest, 5, "%", "drop size; a step of one drop comes on top as step/sqrt(12)", 'C'),
        new(UncertaintyCodes.PhotometricTest, 8, "%", "inhibitor and DPD tests; the step comes on top as step/sqrt(12)", 'C'),
        new(UncertaintyCodes.LotShare, 0.5, "1", "share of a test's variance that belongs to the reagent lot; split evenly, no source", 'C'),
        new(UncertaintyCodes.Ph, 0.1, "[pH]", "hand pH meter or photometer", 'C'),
        new(UncertaintyCodes.WaterMeter, 2, "%", "water meter in use, repeats; new meters are within 1.5 % (COMAR 20.70.06.04)", 'P'),
        new(UncertaintyCodes.PaddleWheel, 5, "%", "paddle wheel, repeats", 'C'),
        new(UncertaintyCodes.BleedValveTimed, 5, "%", "bleed flow timed into a bucket within 180 days, repeats", 'C'),
        new(UncertaintyCodes.BleedValveUntimed, 20, "%", "bleed flow on file, not timed lately, repeats", 'C'),
        new(UncertaintyCodes.PumpRating, 10, "%", "pump output by its rating at the stroke and speed set, repeats", 'C'),
        new(UncertaintyCodes.PumpDrawdown, 3, "%", "pump output after a drawdown, repeats", 'C'),
        new(UncertaintyCodes.LevelSightGlass, 0.5, "cm", "sight glass (reference chapter 7: 3 to 5 mm)", 'R'),
        new(UncertaintyCodes.LevelDip, 1, "cm", "dip stick (reference chapter 7: 5 to 10 mm)", 'R'),
        new(UncertaintyCodes.LevelGauge, 2, "%", "gauge or marks, % of the capacity", 'R'),
        new(UncertaintyCodes.LevelScale, 0.5, "kg", "floor scale, one usual division", 'C'),
        new(UncertaintyCodes.SystemVolume, 20, "%", "system volume on file (reference chapter 2: often known to 20 %)", 'R'),
        new(UncertaintyCodes.DipSlide, 0.5, "1", "dip slide, decades (reference chapter 10)", 'R'),
        new(UncertaintyCodes.PlateCount, 0.25, "1", "plate count, decades (reference chapter 10)", 'R'),
        new(UncertaintyCodes.MakeUpMean, 3, "%", "mean of the make-up readings that fed the present water, at least", 'K'),
    ]);

    /// <summary>All rows.</summary>
    public IReadOnlyCollection<DefaultUncertainty> Rows => _rows.Values;

    /// <summary>One row.</summary>
    /// <param name="code">One of <see cref="UncertaintyCodes"/>.</param>
    /// <returns>The row.</returns>
    /// <exception cref="KeyNotFoundException">The code is not in the table.</exception>
    public DefaultUncertainty this[string code] => _rows[code];

    /// <summary>A copy with one value changed.</summary>
    /// <param name="code">Code in the table.</param>
    /// <param name="value">New standard uncertainty in the row's unit, not negative.</param>
    /// <param name="basis">Why.</param>
    /// <returns>The new table.</returns>
    /// <exception cref="KeyNotFoundException">The code is not in the table.</exception>
    public UncertaintyTable With(string code, double value, string basis)
    {
        var changed = this[code] with { Value = Require.FiniteNotNegative(value), Basis = basis };
        return new UncertaintyTable(Rows.Select(row => row.Code == code ? changed : row));
    }

    /// <summary>Conductivity by a hand meter.</summary>
    /// <param name="instrumentCode">Code of the meter: names the part that repeats.</param>
    /// <param name="provedWithin30Days">Whether it was checked in a standard within 30 days before.</param>
    /// <param name="waterCelsius">Water temperature, for the compensation; none takes the wider value.</param>
    /// <returns>For a value in µS/cm at 25 °C.</returns>
    public ReadingUncertainty ConductivityReading(string instrumentCode, bool provedWithin30Days, double? waterCelsius = 25) => Known(
        provedWithin30Days ? UncertaintyCodes.HandConductivityProved : UncertaintyCodes.HandConductivityUnproved,
        instrumentCode,
        Compensation(waterCelsius),
        static (table, kind) => new ReadingUncertainty(
            table.Share(UncertaintyCodes.HandConductivity),
            CommonName: "hand-meter:" + kind.Of,
            CommonShare: table.Share(kind.Code)).WithRandomShare(kind.Step));

    /// <summary>Conductivity from the controller's display.</summary>
    /// <returns>For a value in µS/cm; says nothing about the probe's own error.</returns>
    public ReadingUncertainty ControllerDisplay() => new(Share(UncertaintyCodes.ControllerDisplay));

    /// <summary>Temperature compensation of one reading, as a share.</summary>
    /// <param name="waterCelsius">Water temperature, °C; none takes the wider value.</param>
    /// <returns>Share of the value.</returns>
    public double Compensation(double? waterCelsius) =>
        Share(waterCelsius is >= 15 and <= 35 ? UncertaintyCodes.CompensationNear25 : UncertaintyCodes.CompensationFar);

    /// <summary>A drop titration.</summary>
    /// <param name="perDrop">mg/L a drop, not negative.</param>
    /// <param name="lot">Reagent lot, when known: then half of the variance repeats with it.</param>
    /// <returns>For a result in mg/L.</returns>
    /// <remarks>Reference: 06-test-kits.csv, drop_resolution_u.</remarks>
    public ReadingUncertainty DropTest(double perDrop, string? lot = null) => Test(UncertaintyCodes.DropTest, perDrop, lot);

    /// <summary>A photometric or comparator test (inhibitor, DPD halogen).</summary>
    /// <param name="step">Smallest step, in the unit of the result, not negative.</param>
    /// <param name="lot">Reagent lot, when known.</param>
    /// <returns>For a result in the unit of <paramref name="step"/>.</returns>
    public ReadingUncertainty PhotometricTest(double step, string? lot = null) => Test(UncertaintyCodes.PhotometricTest, step, lot);

    /// <summary>A pH.</summary>
    /// <returns>For a value in pH.</returns>
    public ReadingUncertainty Ph() => new(0, this[UncertaintyCodes.Ph].Value);

    /// <summary>Water counted by a meter.</summary>
    /// <param name="kind">How it works.</param>
    /// <param name="meterCode">Names the part, all of which repeats.</param>
    /// <returns>For a volume; the counter's step comes on top, see <see cref="Meters.MeterDifference"/>.</returns>
    public ReadingUncertainty WaterMeter(WaterMeterKind kind, string meterCode) => Known(
        kind == WaterMeterKind.PaddleWheel ? UncertaintyCodes.PaddleWheel : UncertaintyCodes.WaterMeter,
        meterCode,
        0,
        static (table, kind) => new(0, CommonName: "meter:" + kind.Of, CommonShare: table.Share(kind.Code)));

    /// <summary>Flow of the open bleed valve.</summary>
    /// <param name="timedWithin180Days">Whether it was timed into a bucket within 180 days before.</param>
    /// <param name="outputCode">Names the part, all of which repeats.</param>
    /// <returns>For a flow.</returns>
    public ReadingUncertainty BleedValve(bool timedWithin180Days, string outputCode = "bleed") => Known(
        timedWithin180Days ? UncertaintyCodes.BleedValveTimed : UncertaintyCodes.BleedValveUntimed,
        outputCode,
        0,
        static (table, kind) => new(0, CommonName: "valve:" + kind.Of, CommonShare: table.Share(kind.Code)));

    /// <summary>Output of a feed pump.</summary>
    /// <param name="afterDrawdown">Whether it was measured, not only rated.</param>
    /// <param name="pumpCode">Names the part, all of which repeats.</param>
    /// <returns>For a flow.</returns>
    public ReadingUncertainty PumpOutput(bool afterDrawdown, string pumpCode) => Known(
        afterDrawdown ? UncertaintyCodes.PumpDrawdown : UncertaintyCodes.PumpRating,
        pumpCode,
        0,
        static (table, kind) => new(0, CommonName: "pump:" + kind.Of, CommonShare: table.Share(kind.Code)));

    /// <summary>System volume on file.</summary>
    /// <returns>For a volume; repeats under the name "volume".</returns>
    public ReadingUncertainty SystemVolume() => new(0, CommonName: "volume", CommonShare: Share(UncertaintyCodes.SystemVolume));

    /// <summary>Level of a drum, by how it was read.</summary>
    /// <param name="drum">The drum; its capacity serves for gauges.</param>
    /// <param name="unit">UCUM unit of the level: cm or inches are taken as a dip, % and volumes as a gauge, weights as a scale.</param>
    /// <param name="method">When it is known better.</param>
    /// <returns>Standard uncertainty in cm, L or kg (the base of the unit's kind; L for %). None for an unknown unit, or a gauge without a capacity.</returns>
    public Computed<Estimate> DrumLevel(Drum drum, string? unit, LevelMethod? method = null) => Units.Parse(unit).Then(definition =>
        (method ?? MethodOf(definition.Dimension)) switch
        {
            LevelMethod.SightGlass => Absolute(UncertaintyCodes.LevelSightGlass),
            LevelMethod.Dip => Absolute(UncertaintyCodes.LevelDip),
            LevelMethod.Scale => Absolute(UncertaintyCodes.LevelScale),
            _ => Drums.DrumVolume.Brim(drum).Map(brim => Estimate.Exact(brim.Litres * Share(UncertaintyCodes.LevelGauge), "L")),
        });

    /// <summary>A percentage of the table as a share.</summary>
    /// <param name="code">Code whose unit is %.</param>
    /// <returns>Value / 100.</returns>
    public double Share(string code) => this[code].Value / 100;

    private static LevelMethod MethodOf(UnitDimension dimension) => dimension switch
    {
        UnitDimension.Length => LevelMethod.Dip,
        UnitDimension.Mass => LevelMethod.Scale,
        _ => LevelMethod.Gauge,
    };

    private Computed<Estimate> Absolute(string code) => Computed<Estimate>.Of(Estimate.Exact(this[code].Value, this[code].Unit));

    private ReadingUncertainty Test(string code, double step, string? lot) => Known(code, lot, Require.FiniteNotNegative(step), static (table, kind) =>
    {
        var resolution = kind.Step / Math.Sqrt(12);
        var share = table.Share(kind.Code);
        var ofLot = table[UncertaintyCodes.LotShare].Value;
        return kind.Of is null
            ? new ReadingUncertainty(share, resolution)
            : new ReadingUncertainty(share * Math.Sqrt(1 - ofLot), resolution, "lot:" + kind.Of, share * Math.Sqrt(ofLot));
    });

    private ReadingUncertainty Known(string code, string? of, double step, Func<UncertaintyTable, (string Code, string? Of, double Step), ReadingUncertainty> make)
    {
        var kind = (code, of, step);
        return _known.TryGetValue(kind, out var known) ? known : _known.GetOrAdd(kind, make(this, kind));
    }
}
