using LogBook.Bank.Firms;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;

namespace LogBook.Bank.Runs;

/// <summary>The plant without any noise at the moment of a visit's readings. Never shown to the engine.</summary>
internal sealed record Truth
{
    public required DateOnly Day { get; init; }

    public required double Hours { get; init; }

    public required bool Running { get; init; }

    public required double Cycles { get; init; }

    public required double Conductivity { get; init; }

    public required double ProbeFactor { get; init; }

    public required double Inhibitor { get; init; }

    public required double Halogen { get; init; }

    public required double Ph { get; init; }

    public required double Alkalinity { get; init; }

    public required double MakeUpL { get; init; }

    public required double BledL { get; init; }

    public required double LostL { get; init; }

    public required double DialL { get; init; }

    public required double CountedL { get; init; }

    public required double Calcium { get; init; }

    public required double CalciumKept { get; init; }

    public required double MakeUpCalcium { get; init; }

    public required double MakeUpConductivity { get; init; }

    public required IReadOnlyDictionary<string, double> HoursRun { get; init; }

    /// <summary>Litres in each drum as found.</summary>
    public required IReadOnlyDictionary<string, double> DrumL { get; init; }

    /// <summary>Litres that left each drum through its pump since the start.</summary>
    public required IReadOnlyDictionary<string, double> UsedL { get; init; }

    public static Truth Of(PlantSimulation plant, BankSystem system, DateOnly day, DateTime start, IReadOnlyDictionary<string, double> used)
    {
        var balance = plant.Balance;
        return new Truth
        {
            Day = day,
            Hours = (plant.Utc - start).TotalHours,
            Running = plant.IsRunning,
            Cycles = plant.Cycles,
            Conductivity = plant.ConductivityUsPerCm,
            ProbeFactor = plant.ProbeFactor,
            Inhibitor = plant.Of(Substance.Inhibitor),
            Halogen = plant.Of(Substance.Halogen),
            Ph = plant.Ph,
            Alkalinity = plant.AlkalinityMgPerL,
            MakeUpL = balance.MakeUpL,
            BledL = balance.BledL,
            LostL = balance.LostL,
            DialL = plant.DialL,
            CountedL = plant.CountedL,
            Calcium = plant.Of(Substance.Calcium),
            CalciumKept = plant.Of(Substance.CalciumKept),
            MakeUpCalcium = plant.MakeUpOf(Substance.Calcium),
            MakeUpConductivity = plant.MakeUpOf(Substance.Conductance),
            HoursRun = system.Full.Outputs.ToDictionary(o => o.Code, o => plant.HoursRun(o.Code), StringComparer.Ordinal),
            DrumL = system.Full.Drums.ToDictionary(d => d.Code, d => plant.DrumL(d.Code), StringComparer.Ordinal),
            UsedL = used,
        };
    }

    /// <summary>Range of the programme for a test in the tower.</summary>
    public static TestRange? RangeOf(BankSystem system, string test) => system.Programme.Ranges.FirstOrDefault(r => r.Test == test);
}
