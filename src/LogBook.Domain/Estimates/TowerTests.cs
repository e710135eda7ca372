using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>Tests of the tower water for which a programme has a range: asked for at every visit, they change with the programme alone.</summary>
/// <param name="Ranged">All of them, each once, in their order.</param>
/// <param name="Residuals">Those that follow a product.</param>
/// <param name="Asked">All of them and conductivity: the reference counts as a test of the programme wherever the controller shows one.</param>
internal sealed record TowerTests(string[] Ranged, string[] Residuals, string[] Asked)
{
    /// <summary>Reads them from a programme.</summary>
    /// <param name="firm">For the tests of products.</param>
    /// <param name="programme">The programme, or null.</param>
    public static TowerTests Of(FirmSetUp firm, Programme? programme)
    {
        string[] ranged =
        [
            .. (programme?.Ranges ?? [])
                .Where(range => range.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase))
                .Select(range => range.Test)
                .Distinct(StringComparer.OrdinalIgnoreCase),
        ];
        return new TowerTests(
            ranged,
            Array.FindAll(ranged, test => Findings.Residuals.IsResidual(firm, test)),
            [.. ranged.Append(TestCodes.Conductivity).Distinct(StringComparer.OrdinalIgnoreCase)]);
    }
}
