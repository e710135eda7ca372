using LogBook.Application.Calculators;
using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.Records;
using LogBook.Application.Reviews;
using LogBook.Application.Settings;
using LogBook.Application.Sites;
using LogBook.Domain.Findings;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

/// <summary>Pages of one system or finding: the same statements whatever else the firm looks after.</summary>
public sealed class SystemPageStatementsTests
{
    [Fact]
    [Trait("goal", "P2")]
    public async Task Pages_TenTimesTheSitesAndVisits_SendTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await AddAsync(firm, 0);
        var few = await CountAllAsync(firm);
        for (var i = 1; i < 10; i++)
        {
            await AddAsync(firm, i);
        }

        var many = await CountAllAsync(firm);

        Assert.Equal(few, many);
        Assert.All(many, page => Assert.InRange(page.Statements, 1, 12));
    }

    private static async Task<IReadOnlyList<(string Page, int Statements)>> CountAllAsync(ReadingFirm firm)
    {
        var setUp = new SetUpStore(firm.Store, firm.Clock);
        var viewer = ReadingFirm.Supervisor;
        var key = new FindingKey("AAA-0", "CT-1", FindingKinds.SettingsLost, "", Seen);
        (string, Func<Task<object?>>)[] pages =
        [
            ("settings", async () => await new SettingsQuery(firm.Store, setUp, firm.Clock).ThenAndNowAsync(viewer, "AAA-0", "CT-1")),
            ("re-entry", async () => await new SettingsQuery(firm.Store, setUp, firm.Clock).ReEntryAsync(viewer, "AAA-0", "CT-1")),
            ("dose plan", async () => await new DosePlanQuery(firm.Store, setUp, firm.Clock).OfAsync(viewer, "AAA-0", "CT-1")),
            ("probes", async () => await new RecordsQuery(firm.Store, setUp, firm.Clock).OfAsync(viewer, "AAA-0", "CT-1", RecordsOf.Probes)),
            ("meters", async () => await new RecordsQuery(firm.Store, setUp, firm.Clock).OfAsync(viewer, "AAA-0", "CT-1", RecordsOf.Meters)),
            ("pumps", async () => await new RecordsQuery(firm.Store, setUp, firm.Clock).OfAsync(viewer, "AAA-0", "CT-1", RecordsOf.Pumps)),
            ("site clocks", async () => await new CountsQuery(firm.Store, setUp, firm.Clock).OfAsync(viewer, "AAA-0")),
            ("finding", async () => await new AttentionQuery(firm.Store, firm.Clock).FindAsync(viewer, key)),
        ];
        var counts = new List<(string, int)>();
        foreach (var (name, read) in pages)
        {
            // Each page is there: nothing takes no statements.
            counts.Add((name, await firm.CountAsync(async () => Assert.NotNull(await read()))));
        }

        return counts;
    }

    private static DateOnly Seen { get; } = DateOnly.FromDateTime(ReadingFirm.Start);

    private static async Task AddAsync(ReadingFirm firm, int number)
    {
        var at = await firm.AddSiteAsync($"AAA-{number}");
        await firm.AddVisitAsync(at, ReadingFirm.VisitOf($"AAA-{number}", ReadingFirm.Start, 1350));
        await firm.AddFindingAsync(at, FindingKinds.SettingsLost, Severity.Act, Seen);
        for (var more = 1; number > 0 && more < 4; more++)
        {
            await firm.AddVisitAsync(at, ReadingFirm.VisitOf($"AAA-{number}", ReadingFirm.Start.AddDays(7 * more), 1350));
        }
    }
}
