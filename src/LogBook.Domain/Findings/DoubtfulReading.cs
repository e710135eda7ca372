using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A hand reading that the controller's display contradicts by more than any probe in use is off.</summary>
/// <remarks>A digit misread makes half or double of a value; dirt takes 10 to 20 % from a probe before somebody cleans it (common practice, no source). Such a reading alone raises no alarm; the next visit confirms it or not.</remarks>
internal static class DoubtfulReading
{
    private const double Share = 0.30;

    /// <summary>Whether the visit's reference conductivity stands alone against the display.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>False where either is missing.</returns>
    public static bool IsConductivity(VisitFacts visit)
    {
        var display = visit.Tests.FirstOrDefault(test => test.Reading is { Test: TestCodes.Conductivity, At: SamplePoints.Tower, Source: ReadingSource.Controller });
        return display is { Value.Value: > 0 } && visit.TowerReading(TestCodes.Conductivity) is { } reference
            && Math.Abs((reference.Value.Value / display.Value.Value) - 1) > Share;
    }
}
