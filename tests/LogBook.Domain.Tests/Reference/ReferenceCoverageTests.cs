using System.Reflection;
using LogBook.Domain.Tests.Compensation;
using LogBook.Domain.Tests.Coupons;
using LogBook.Domain.Tests.Cycles;
using LogBook.Domain.Tests.DosePlans;
using LogBook.Domain.Tests.Dosing;
using LogBook.Domain.Tests.Drums;
using LogBook.Domain.Tests.Meters;
using LogBook.Domain.Tests.Microbiology;
using LogBook.Domain.Tests.Quantities;
using LogBook.Domain.Tests.Saturation;
using LogBook.Domain.Tests.TestKits;
using LogBook.Domain.Tests.Trends;

namespace LogBook.Domain.Tests.Reference;

/// <summary>No row of a chapter may be lost in silence: it is asserted, or named here with its reason.</summary>
public sealed class ReferenceCoverageTests
{
    private static readonly ReferenceChapter[] Chapters =
    [
        CyclesReferenceTests.Chapter, DosingReferenceTests.Chapter, CompensationReferenceTests.Chapter, TrendsReferenceTests.Chapter,
        TestKitsReferenceTests.Chapter, DrumsReferenceTests.Chapter, MetersReferenceTests.Chapter, UnitsReferenceTests.Chapter,
        SaturationReferenceTests.Chapter, CouponsReferenceTests.Chapter, MicrobiologyReferenceTests.Chapter, DosePlansReferenceTests.Chapter,
    ];

    // Written by hand, so that a row that changes its status or disappears is seen.
    private static readonly Dictionary<string, (int Rows, string[] Excluded)> Expected = new()
    {
        ["01-cycles-and-water-balance.csv"] = (54, []),
        ["02-dosing.csv"] = (29, []),
        ["03-saturation-indices.csv"] = (81, []),
        ["04-conductivity.csv"] = (40, ["04-026", "04-027", "04-032", "04-036", "04-037", "04-040"]),
        ["05-probe-drift.csv"] = (76, []),
        ["06-test-kits.csv"] = (53, ["06-012"]),
        ["07-tank-volume.csv"] = (29, []),
        ["08-meters.csv"] = (25, []),
        ["09-corrosion-coupons.csv"] = (19, [.. Ids("09", 12, 19)]),
        ["10-microbiology.csv"] = (39, [.. Ids("10", 3, 5), "10-008", .. Ids("10", 14, 15), "10-017", .. Ids("10", 19, 35)]),
        ["11-units.csv"] = (39, []),
        ["12-biocide-schedule.csv"] = (21, []),
    };

    private static IEnumerable<string> Ids(string chapter, int first, int last) =>
        Enumerable.Range(first, last - first + 1).Select(number => $"{chapter}-{number:000}");

    // Tables beside the chapters: how many rows, which tests read them, and the columns that no test asserts or computes from.
    private static readonly Dictionary<string, ReferenceSideTable> SideTables = new()
    {
        ["01-ec-vs-cycles.csv"] = new(
            70,
            [(typeof(CyclesReferenceTests), nameof(CyclesReferenceTests.ConductivityRatioOverTrue_MeasuredWaters_LiesWithinTheirBandWidened))],
            "makeup carbonate pH Ca_mgL_as_CaCO3 Mg_mgL_as_CaCO3 Alk_mgL_as_CaCO3 Na_mgL Cl_mgL SO4_mgL EC25_phreeqc_uS_cm EC_ratio SI_calcite_phreeqc_dat status"),
        ["03-factor-b-table.csv"] = new(
            69,
            [
                (typeof(SaturationReferenceTests), nameof(SaturationReferenceTests.FactorB_EveryRowOfThePrintedTable_IsThatRow)),
                (typeof(SaturationReferenceTests), nameof(SaturationReferenceTests.FactorB_ClosedForm_IsTheColumnBesideThePrintedTable)),
            ],
            "closed_minus_table status source"),
        ["03-phreeqc-grid.csv"] = new(
            60,
            [
                (typeof(SaturationReferenceTests), nameof(SaturationReferenceTests.Index_SixtyWaters_AgreesWithItsFormulaAndStaysWithinTheHonestTolerance)),
                (typeof(IonsReferenceTests), nameof(IonsReferenceTests.Conductivity_SixtyWaters_AgreesWithBothFormulas)),
            ],
            // Other data sets of the program, what the product does not compute, and differences of two other columns.
            "kind cycles SI_calcite_wateq4f SI_calcite_pitzer SI_calcite_minteq_v4 SI_gypsum_phreeqc_dat free_Ca_fraction d_LSI_closed d_LSI_table d_SM2330_I d_SM2330_TDS status"),
        ["04-ec-grid.csv"] = new(
            60,
            [
                (typeof(IonsReferenceTests), nameof(IonsReferenceTests.Conductivity_SixtyWaters_AgreesWithBothFormulas)),
                (typeof(IonsReferenceTests), nameof(IonsReferenceTests.Conductivity_SixtyWaters_ErrsAsMeasured)),
                (typeof(IonsReferenceTests), nameof(IonsReferenceTests.FromConductivity_SixtyWaters_TakesTheirOwnFactor)),
            ],
            "status"),
        ["04-f25-iso7888.csv"] = new(
            36,
            [
                (typeof(CompensationReferenceTests), nameof(CompensationReferenceTests.Iso7888Factor_PrintedTable_IsNeverLowAndAtMost00011High)),
                (typeof(CompensationReferenceTests), nameof(CompensationReferenceTests.Iso7888Factor_ColumnOfTheFormula_IsThatColumn)),
            ],
            "difference status source"),
        ["04-kcl-temperature.csv"] = new(
            12, [(typeof(CompensationReferenceTests), nameof(CompensationReferenceTests.AtMolality_RowOfNistTable_IsThatRow))], "status source"),
        ["04-temperature-compensation.csv"] = new(
            45, [(typeof(CompensationReferenceTests), nameof(CompensationReferenceTests.Compensation_FiveWatersAtManyTemperatures_ErrsAsMeasured))], "water_id status"),
        ["05-control-chart-data.csv"] = new(
            20,
            [
                (typeof(TrendsReferenceTests), nameof(TrendsReferenceTests.Row_Computed_AgreesWithReference)),
                (typeof(TrendsReferenceTests), nameof(TrendsReferenceTests.MovingRanges_HandbookSeries_ArePrintedBesideTheValues)),
                (typeof(TrendsReferenceTests), nameof(TrendsReferenceTests.Ewma_HandbookSeries_AgreesWithPrintedAverages)),
                (typeof(TrendsReferenceTests), nameof(TrendsReferenceTests.Cusum_HandbookSeries_AgreesWithPrintedSums)),
            ],
            "i"),
        ["05-norris-data.csv"] = new(36, [(typeof(TrendsReferenceTests), nameof(TrendsReferenceTests.Row_Computed_AgreesWithReference))], ""),
    };

    public static TheoryData<string> Files => new(Expected.Keys);

    public static TheoryData<string> SideFiles => new(SideTables.Keys);

    /// <summary>A table that is copied and forgotten, or named and not there, is seen here.</summary>
    [Fact]
    public void Tables_AllThatLieHere_AreAChapterOrASideTable() => Assert.Equal(
        Expected.Keys.Concat(SideTables.Keys).Order(StringComparer.Ordinal), ReferenceTable.Files);

    [Theory]
    [MemberData(nameof(SideFiles))]
    public void SideTable_Rows_AreReadByTestsThatRun(string file)
    {
        var table = SideTables[file];

        Assert.Equal(table.Rows, ReferenceTable.Lines(file).Count);
        Assert.Empty(table.NotAsserted.Except(ReferenceTable.Headings(file)));
        Assert.NotEmpty(table.Tests);
        Assert.All(table.Tests, test => Assert.NotNull(test.Class.GetMethod(test.Name)!.GetCustomAttribute<FactAttribute>()));
    }

    /// <summary>Every other column has to be named by the tests of its table: the name is a text in the code of their classes.</summary>
    [Theory]
    [MemberData(nameof(SideFiles))]
    public void SideTable_EveryColumn_IsReadOrNamed(string file)
    {
        var table = SideTables[file];
        var columns = ReferenceTable.Headings(file).Except(table.NotAsserted).ToList();

        Assert.NotEmpty(columns);
        Assert.Empty(columns.Except(table.Tests.SelectMany(test => CodeTexts.Of(test.Class))));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Chapter_EveryRow_IsAssertedOrExcludedByName(string file)
    {
        var chapter = Chapters.Single(candidate => candidate.File == file);

        var excluded = chapter.Rows.Where(row => chapter.WhyExcluded(row) is not null).Select(row => row.Id);

        Assert.Equal(Expected[file].Rows, chapter.Rows.Count);
        Assert.Equal(chapter.Rows.Count, chapter.Rows.Select(row => row.Id).Distinct().Count());
        Assert.Equal(Expected[file].Excluded, excluded);
        Assert.Equal(Expected[file].Rows - Expected[file].Excluded.Length, chapter.Asserted.Count());
    }

    [Fact]
    public void Chapters_ExcludedRows_HaveAReason() => Assert.All(
        Chapters.SelectMany(chapter => chapter.Rows.Except(chapter.Asserted).Select(row => (row.Id, Why: chapter.WhyExcluded(row)))),
        row => Assert.False(string.IsNullOrWhiteSpace(row.Why), row.Id));
}
