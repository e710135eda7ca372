using LogBook.Domain.Compensation;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Saturation;

namespace LogBook.Domain.Estimates;

/// <summary>Langelier index of the tower water at a visit.</summary>
public static class WaterIndex
{
    // The closed form is within 0.35 of a speciation program (reference chapter 3): taken as its expanded uncertainty.
    private const double FormulaUncertainty = 0.35 / 2;

    private static readonly string[] ColdPoints = [SamplePoints.MakeUp, SamplePoints.Raw, SamplePoints.Softened];

    /// <summary>The index at the hottest temperature measured.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>Index without unit; none where pH, calcium, alkalinity, a temperature or both of solids and conductivity are missing.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, LSI_closed_form. Knows nothing of inhibitors and of rates.</remarks>
    public static Computed<Estimate> Langelier(VisitFacts visit)
    {
        if (visit.TowerReading(TestCodes.Ph) is not { Value.Value: >= 0 and <= 14 } ph
            || visit.TowerReading(TestCodes.Calcium) is not { IsCensored: false } calcium
            || visit.TowerReading(TestCodes.Alkalinity) is not { IsCensored: false } alkalinity
            || SolidsOf(visit) is not { } solids
            || HottestOf(visit) is not { } hottest)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var water = new CalciteWater(Temperature.FromCelsius(hottest), solids, calcium.Value.Value, alkalinity.Value.Value);
        return Saturation.Langelier.Index(Ph.From(ph.Value.Value), water)
            .Map(index => new Estimate(index, "1", Math.Sqrt((FormulaUncertainty * FormulaUncertainty) + (ph.Value.StandardUncertainty * ph.Value.StandardUncertainty))));
    }

    private static double? SolidsOf(VisitFacts visit)
    {
        if (visit.TowerReading(TestCodes.Tds)?.Value is { Unit: "mg/L" } measured)
        {
            return measured.Value;
        }

        return visit.TowerReading(TestCodes.Conductivity) is { } conductivity
            && DissolvedSolids.FromConductivity(Conductivity.FromMicrosiemensPerCm(conductivity.Value.Value)) is { HasValue: true, Value: var solids }
            ? solids
            : null;
    }

    private static double? HottestOf(VisitFacts visit)
    {
        double? hottest = null;
        for (var i = 0; i < visit.Tests.Count; i++)
        {
            var test = visit.Tests[i];
            if (test.Reading.Test == TestCodes.Temperature && !ColdPoints.Contains(test.Reading.At, StringComparer.OrdinalIgnoreCase))
            {
                hottest = Math.Max(hottest ?? test.Value.Value, test.Value.Value);
            }
        }

        return hottest;
    }
}
