using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.SetPoints;

/// <summary>Limits that a calculation of the set point begins with. Each may be changed; the programme, the maker of the equipment and the permit rule.</summary>
public static class IonLimits
{
    /// <summary>Chloride at stainless steel whose grade is not on file, mg/L: that of the common grade 304.</summary>
    /// <remarks>
    /// British Stainless Steel Association, "Stainless steels in supply and waste water systems": crevice corrosion should be rare below
    /// 200 mg/L for 304 (and 1,000 mg/L for 316) at supply-water temperatures. Hot surfaces and deposits take less.
    /// </remarks>
    public const double StainlessChlorideMgPerL = 200;

    /// <summary>Silica, mg/L as SiO2 (common practice, no source; the same as the finding "scaling").</summary>
    public const double SilicaMgPerL = 150;

    private static readonly Text Range = new("range of the programme", "rango del programa", "faixa do programa");

    private static readonly Text Stainless = new(
        "stainless steel, grade not on file: 304 (British Stainless Steel Association; 316 bears 1000 mg/L; less on hot surfaces)",
        "acero inoxidable de grado no registrado: 304 (British Stainless Steel Association; el 316 soporta 1000 mg/L; menos en superficies calientes)",
        "aço inoxidável de grau não registrado: 304 (British Stainless Steel Association; o 316 suporta 1000 mg/L; menos em superfícies quentes)");

    private static readonly Text Silica = new(
        "silica scale (common practice, no source)", "incrustación de sílice (práctica común, sin fuente)", "incrustação de sílica (prática comum, sem fonte)");

    private static readonly Text Discharge = new("limit of the discharge", "límite del vertido", "limite do descarte");

    /// <summary>Tests that can limit the cycles, in the order in which they are shown.</summary>
    public static IReadOnlyList<string> Tests { get; } = [TestCodes.Chloride, TestCodes.Calcium, TestCodes.TotalHardness, TestCodes.Alkalinity, TestCodes.Silica, TestCodes.Sulphate];

    /// <summary>Limits on file for a system.</summary>
    /// <param name="system">The system with its metals.</param>
    /// <param name="programme">Programme in force, or null.</param>
    /// <returns>
    /// High ends of the programme's ranges for ions of the tower water, brought to mg/L in the basis of the test, the chloride limit of stainless steel, the conductivity that the permit of the discharge allows, and silica
    /// where the programme has none. Other metals have no published limit here: enter the maker's.
    /// </returns>
    public static IReadOnlyList<IonLimit> Of(WaterSystem system, Programme? programme)
    {
        List<IonLimit> limits =
        [
            .. RangesOf(programme).Select(range => (range.Test, Most: InOwnBasis(range)))
                .Where(pair => pair.Most.HasValue).Select(pair => new IonLimit(pair.Test, pair.Most.Value, IonLimitKind.Programme, Range)),
        ];
        if (system.Metals.Contains(Metal.Stainless))
        {
            limits.Add(new IonLimit(TestCodes.Chloride, StainlessChlorideMgPerL, IonLimitKind.Metal, Stainless));
        }

        if (!limits.Exists(limit => limit.Test == TestCodes.Silica))
        {
            limits.Add(new IonLimit(TestCodes.Silica, SilicaMgPerL, IonLimitKind.Scale, Silica));
        }

        if (system.DischargeUsPerCm is > 0 and var discharge)
        {
            limits.Add(new IonLimit(TestCodes.Conductivity, discharge, IonLimitKind.Discharge, string.IsNullOrWhiteSpace(system.DischargeSource) ? Discharge : Named(system.DischargeSource.Trim())));
        }

        return limits;
    }

    private static Text Named(string source) => new($"{Discharge.En} ({source})", $"{Discharge.Es} ({source})", $"{Discharge.Pt} ({source})");

    /// <summary>Tests whose range in the programme cannot be brought to mg/L in the test's own basis: nobody knows whether it holds.</summary>
    /// <param name="programme">Programme in force, or null.</param>
    /// <returns>Codes of tests, in the order of the programme.</returns>
    public static IReadOnlyList<string> NotConverted(Programme? programme) => [.. RangesOf(programme).Where(range => !InOwnBasis(range).HasValue).Select(range => range.Test).Distinct()];

    private static IEnumerable<TestRange> RangesOf(Programme? programme) => (programme?.Ranges ?? [])
        .Where(range => range.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase) && Tests.Contains(range.Test) && range.High is > 0);

    private static Computed<double> InOwnBasis(TestRange range) => Units.Convert(range.High!.Value, range.Unit, UnitCodes.MgPerL)
        .Then(mgPerL => range.Basis is { } basis && Bases.OfTest(range.Test) is { } own ? BasisConversion.Convert(mgPerL, basis, own) : Computed<double>.Of(mgPerL));
}
