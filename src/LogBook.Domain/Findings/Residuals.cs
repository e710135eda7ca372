using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.Findings;

/// <summary>Which tests are residuals of products, and their ranges.</summary>
internal static class Residuals
{
    private static readonly HashSet<string> Standard = new(StringComparer.OrdinalIgnoreCase)
    {
        TestCodes.Inhibitor, TestCodes.Phosphonate, TestCodes.Orthophosphate, TestCodes.Molybdate, TestCodes.Azole, TestCodes.FreeHalogen, TestCodes.TotalHalogen,
    };

    public static bool IsResidual(VisitFacts visit, string test) => IsResidual(visit.History.Firm, test);

    public static bool IsResidual(FirmSetUp firm, string test) => Standard.Contains(test) || firm.ResidualTests.Contains(test);

    /// <summary>Range of a test of the tower water in the test's own unit and basis; null without one or with a foreign unit.</summary>
    public static (double? Low, double? High)? RangeOf(VisitFacts visit, string test)
    {
        var ranges = visit.Programme?.Ranges ?? [];
        for (var i = 0; i < ranges.Count; i++)
        {
            if (FeedParts.Same(ranges[i].Test, test) && FeedParts.Same(ranges[i].At, SamplePoints.Tower))
            {
                return (In(ranges[i], ranges[i].Low, visit, test), In(ranges[i], ranges[i].High, visit, test));
            }
        }

        return null;
    }

    private static double? In(TestRange range, double? value, VisitFacts visit, string test)
    {
        if (value is not { } number)
        {
            return null;
        }

        var unit = visit.TowerReading(test)?.Value.Unit ?? range.Unit;
        var converted = Units.Convert(number, range.Unit, unit);
        if (range.Basis is { } basis && Bases.OfTest(test) is { } own)
        {
            converted = converted.Then(v => BasisConversion.Convert(v, basis, own));
        }

        return converted.HasValue ? converted.Value : null;
    }
}
