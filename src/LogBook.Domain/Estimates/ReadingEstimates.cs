using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>Turns a reading as entered into an estimate in the test's own unit and basis, with the default uncertainty of its method.</summary>
public static class ReadingEstimates
{
    private const double ProvedForDays = 30;

    // Thermometers and ORP probes: common practice, no citable source.
    private const double TemperatureCel = 0.5;
    private const double OrpMillivolts = 10;

    private static readonly HashSet<string> Titrations = new(StringComparer.OrdinalIgnoreCase)
    {
        TestCodes.Chloride, TestCodes.Calcium, TestCodes.Magnesium, TestCodes.TotalHardness, TestCodes.Alkalinity, TestCodes.PAlkalinity, TestCodes.Sulphate,
    };

    /// <summary>Estimates the readings of a visit; those without a number, or with a foreign unit or basis, are left out.</summary>
    /// <param name="history">For instruments, lots and their steps.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="before">Results of the visit as it was known before, in the same order: a reading that is still the same object keeps its own.</param>
    /// <returns>The results in the order of the readings.</returns>
    internal static TestResult[] AllOf(SystemHistory history, SystemVisit visit, TestResult[] before)
    {
        var readings = visit.Record.Readings;
        var results = new TestResult[readings.Count];
        var (count, next) = (0, 0);
        for (var i = 0; i < results.Length; i++)
        {
            if (next < before.Length && ReferenceEquals(before[next].Reading, readings[i]))
            {
                results[count++] = before[next++];
            }
            else if (Of(history, visit, readings[i]) is { HasValue: true, Value: var result })
            {
                results[count++] = result;
            }
        }

        return count == results.Length ? results : results[..count];
    }

    /// <summary>Estimates a reading.</summary>
    /// <param name="history">For instruments, lots and their steps.</param>
    /// <param name="visit">Visit of the reading; its water temperature serves the compensation.</param>
    /// <param name="reading">The reading.</param>
    /// <returns>The result; none when it has no number or its unit or basis is foreign to the test.</returns>
    public static Computed<TestResult> Of(SystemHistory history, SystemVisit visit, Reading reading)
    {
        if (reading.NotTaken is not null || reading.NotQuantifiable == true || RangeJudgement.NumberOf(reading) is not { } entered)
        {
            return Computed<TestResult>.None(VisitReasons.NotMeasured);
        }

        var taken = (reading.TakenAt ?? visit.Visit.Arrived).Utc;
        var number = InOwnUnit(reading, entered, out var unit);
        return number.HasValue
            ? Computed<TestResult>.Of(new TestResult(UncertaintyOf(history, visit, reading).On(number.Value, unit), reading, taken))
            : number.WithoutValue<TestResult>();
    }

    /// <summary>Whether a hand meter was checked in a standard within 30 days before a moment.</summary>
    /// <param name="history">For the instruments.</param>
    /// <param name="instrument">Code of the meter.</param>
    /// <param name="moment">UTC.</param>
    /// <returns>True when it was.</returns>
    public static bool IsProved(SystemHistory history, string? instrument, DateTime moment) =>
        instrument is not null
        && history.Firm.LastCheck(instrument, moment) is { } last
        && (moment - last).TotalDays <= ProvedForDays;

    /// <summary>Whether a hand meter was checked in a standard between two moments.</summary>
    /// <param name="history">For the instruments.</param>
    /// <param name="instrument">Code of the meter.</param>
    /// <param name="from">UTC, excluded.</param>
    /// <param name="to">UTC, included.</param>
    /// <returns>True when it was.</returns>
    public static bool WasChecked(SystemHistory history, string? instrument, DateTime from, DateTime to) =>
        instrument is not null
        && history.Firm.LastCheck(instrument, to) > from;

    /// <summary>Conductivity by a hand meter.</summary>
    /// <param name="history">For the checks of the meter.</param>
    /// <param name="visit">For the time and the water temperature.</param>
    /// <param name="instrument">Code of the meter, or null when it was not entered: then it counts as unproved.</param>
    /// <returns>Its uncertainty.</returns>
    public static ReadingUncertainty HandMeter(SystemHistory history, SystemVisit visit, string? instrument) =>
        history.Firm.Engine.Uncertainties.ConductivityReading(instrument ?? "?", IsProved(history, instrument, visit.At), WaterTemperature(visit));

    private static double? WaterTemperature(SystemVisit visit)
    {
        foreach (var reading in visit.Record.Readings)
        {
            if (reading.Test == TestCodes.Temperature && reading.At == SamplePoints.Tower && reading.Value is { } value)
            {
                var celsius = Units.Convert(value, reading.Unit, "Cel");
                return celsius.HasValue ? celsius.Value : null;
            }
        }

        // Not measured: recirculating water of a running tower is within 15 to 35 °C.
        return visit.Record.Running == false ? null : 25;
    }

    private static Computed<double> InOwnUnit(Reading reading, double entered, out string unit)
    {
        unit = reading.Test switch
        {
            TestCodes.Conductivity => "uS/cm",
            TestCodes.Ph => "[pH]",
            TestCodes.Temperature or TestCodes.Approach => "Cel",
            TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella => "[CFU]/mL",
            TestCodes.CorrosionSteel or TestCodes.CorrosionCopper => "[mil_i]/a",
            _ => Units.SameDimension(reading.Unit, "mg/L") ? "mg/L" : reading.Unit,
        };
        var number = reading.Test == TestCodes.Approach ? Units.ConvertDifference(entered, reading.Unit, unit) : Units.Convert(entered, reading.Unit, unit);
        return number.HasValue && reading.Basis is { } basis && Bases.OfTest(reading.Test) is { } own ? BasisConversion.Convert(number.Value, basis, own) : number;
    }

    private static ReadingUncertainty UncertaintyOf(SystemHistory history, SystemVisit visit, Reading reading)
    {
        var table = history.Firm.Engine.Uncertainties;
        var step = reading.PerDrop ?? (reading.Lot is { } lot ? history.Firm.Lots.GetValueOrDefault(lot)?.Step : null) ?? history.Firm.Tests.GetValueOrDefault(reading.Test)?.Step ?? 0;
        return reading.Test switch
        {
            TestCodes.Conductivity when reading.Source == ReadingSource.Controller => table.ControllerDisplay(),
            TestCodes.Conductivity => HandMeter(history, visit, reading.Instrument),
            TestCodes.Ph => table.Ph(),
            TestCodes.Temperature or TestCodes.Approach => new ReadingUncertainty(0, TemperatureCel),
            TestCodes.Orp => new ReadingUncertainty(0, OrpMillivolts),
            _ when reading.PerDrop is not null || Titrations.Contains(reading.Test) => table.DropTest(step, reading.Lot),
            _ => table.PhotometricTest(step, reading.Lot),
        };
    }
}
