using LogBook.Bank.Firms;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Runs;

/// <summary>Turns the complete record of the simulated technician into what this person writes down at this site.</summary>
internal static class Paperwork
{
    private static readonly HashSet<string> Optional = [TestCodes.Chloride, TestCodes.Calcium, TestCodes.Alkalinity, TestCodes.Silica, TestCodes.Temperature];

    public static Visit Write(Visit visit, BankSystem system, int index, SplitMix draw)
    {
        var record = visit.Systems[0];
        var habits = system.Habits;
        var skip = system.Technician.SkipShare;
        var makeUp = index % habits.MakeUpEvery == 0;
        var skipped = new HashSet<string>(Optional.Where(_ => draw.Chance(skip)), StringComparer.Ordinal);
        var drumsSkipped = draw.Chance(skip / 2);
        var referenceSkipped = draw.Chance(skip / 3);
        var hoursSkipped = draw.Chance(skip / 4);
        var timesSettling = draw.Chance(1 - skip);
        var readings = record.Readings.Where(r =>
            (makeUp || r.At != SamplePoints.MakeUp)
            && !skipped.Contains(r.Test)
            && (habits.Chloride || r.Test != TestCodes.Chloride)
            && (habits.Calcium || r.Test != TestCodes.Calcium)
            && (habits.Silica || r.Test != TestCodes.Silica)
            && !(referenceSkipped && r.Test == TestCodes.Conductivity && r.Source == ReadingSource.Reference && r.At == SamplePoints.Tower));
        return visit with
        {
            Systems =
            [
                record with
                {
                    Readings = [.. readings.Select(r => InOwnUnits(r, habits))],
                    Probes = [.. record.Probes
                        .Where(p => !referenceSkipped || p.Calibrated == true || p.AfterCleaning is not null)
                        .Select(p => timesSettling ? p : p with { SettledMin = null })],
                    Meters = habits.MakeUpMeter ? [.. record.Meters.Select(m => habits.Total ? m : m with { Total = null })] : [],
                    Drums = drumsSkipped
                        ? [.. record.Drums.Where(d => d.AddedL is not null || d.Swapped == true).Select(d => Level(d, system))]
                        : [.. record.Drums.Select(d => habits.Gauges || d.Swapped == true ? Level(d, system) : d with { Level = null, Unit = null }).Where(d => d.Level is not null || d.AddedL is not null)],
                    HoursRun = hoursSkipped ? [] : record.HoursRun,
                    Pumps = habits.PumpReadings ? record.Pumps : [],
                    Drawdowns = habits.PumpReadings ? record.Drawdowns : [],
                    BleedTest = habits.BleedTests ? record.BleedTest : null,
                },
            ],
        };
    }

    private static Reading InOwnUnits(Reading reading, PaperHabits habits) => reading.Unit switch
    {
        "uS/cm" when habits.ConductivityUnit == "mS/cm" => reading with { Value = Math.Round(reading.Value!.Value / 1000, 3), Unit = "mS/cm" },
        "Cel" when habits.Fahrenheit => reading with { Value = Math.Round((reading.Value!.Value * 1.8) + 32), Unit = "[degF]" },
        _ => reading,
    };

    private static DrumReading Level(DrumReading reading, BankSystem system)
    {
        var drum = system.Full.Drums.First(d => d.Code == reading.Drum);
        double? In(double? cm) => cm is not { } level ? null : system.Habits.LevelUnit switch
        {
            "%" => Math.Round(level / drum.HeightCm!.Value * 100),
            "L" => Math.Round(level / drum.HeightCm!.Value * drum.CapacityL!.Value, 1),
            "[in_i]" => Math.Round(level / 2.54 * 4) / 4,
            _ => level,
        };
        return reading with { Level = In(reading.Level), Left = In(reading.Left), Unit = system.Habits.LevelUnit };
    }
}
