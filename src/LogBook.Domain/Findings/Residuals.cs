using LogBook.Domain.Estimates;
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

    public static bool IsResidual(VisitFacts visit, string test) =>
        Standard.Contains(test) || visit.History.Firm.Products.Values.Any(product => test.Equals(product.Residual?.Test, StringComparison.OrdinalIgnoreCase));

    /// <summary>Range of a test of the tower water in the test's own unit and basis; null without one or with a foreign unit.</summary>
    public static (double? Low, double? High)? RangeOf(VisitFacts visit, string test)
    {
        var range = visit.Programme?.Ranges.FirstOrDefault(r =>
            r.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase) && r.Test.Equals(test, StringComparison.OrdinalIgnoreCase));
        if (range is null)
        {
            return null;
        }

        return (In(range, range.Low, visit, test), In(range, range.High, visit, test));
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
