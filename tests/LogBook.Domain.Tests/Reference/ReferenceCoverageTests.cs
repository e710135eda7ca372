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

    public static TheoryData<string> Files => new(Expected.Keys);

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
