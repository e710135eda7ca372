using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Probes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;

namespace LogBook.Entry.State;

/// <summary>Figures that can be told while the visit is still being entered; every number comes from the domain.</summary>
public static class SideFigures
{
    /// <summary>Figures of the system in hand.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Names and values; none while the readings are missing.</returns>
    public static IReadOnlyList<(Text Name, string Value)> Of(FormState state)
    {
        var figures = new List<(Text, string)>();
        var system = state.Build.Visit.Systems.FirstOrDefault(s => s.System == state.Plan?.System.Code);
        var tower = Conductivity(system, SamplePoints.Tower);
        var makeUp = Conductivity(system, SamplePoints.MakeUp);
        var cycles = tower is { } t && makeUp is { } m ? CyclesOfConcentration.FromConductivity(t, m) : (Computed<Estimate>?)null;
        if (cycles is { HasValue: true, Value: var estimate })
        {
            figures.Add((EntryTexts.ConductivityRatio, Shown.Computed(estimate.Value, state.Language)));
        }

        foreach (var probe in system?.Probes ?? [])
        {
            if (probe.Reference is { } reference && ProbeError.Percent(Estimate.Exact(probe.AsFound, probe.Unit), Estimate.Exact(reference, probe.Unit)) is { HasValue: true, Value: var error })
            {
                figures.Add((EntryTexts.ProbeErrorFigure, Shown.Computed(error.Value, state.Language) + " %"));
            }
        }

        return figures;
    }

    private static Conductivity? Conductivity(VisitedSystem? system, string at)
    {
        var reading = system?.Readings.LastOrDefault(r => r.At == at && r.Test == TestCodes.Conductivity && r.Source != ReadingSource.Controller && r.Qualifier is null && r.Value is not null);
        return reading is not null && Units.ToConductivity(reading.Value!.Value, reading.Unit) is { HasValue: true, Value: var conductivity } ? conductivity : null;
    }
}
