using LogBook.Application.Reviews;
using LogBook.Testing.Readers;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.Tests.Readers;

public sealed class AttentionQueryTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    [Fact]
    public async Task ListAsync_Always_IsBySeverityThenAge()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.ProbeDrifting, Severity.Watch, Day.AddDays(-30));
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day);
        await firm.AddFindingAsync(site, FindingKinds.FeedLow, Severity.Plan, Day.AddDays(-3));
        await firm.AddFindingAsync(site, FindingKinds.AlarmStanding, Severity.Act, Day);

        var list = await Query(firm).ListAsync(ReadingFirm.Technician with { Language = Language.Spanish }, new AttentionFilter());

        Assert.Equal([FindingKinds.AlarmStanding, FindingKinds.FeedLow, FindingKinds.WaterLoss, FindingKinds.ProbeDrifting], list!.Rows.Select(row => row.Key.Kind));
        Assert.All(list.Rows, row => Assert.Equal("dicho en español", row.Finding.Text));
    }

    [Fact]
    public async Task ListAsync_SecondLook_IsForReviewersOnly()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.SecondLook, Severity.Plan, Day);
        var key = new FindingKey("YAF-1", "CT-1", FindingKinds.SecondLook, "", Day);

        Assert.Empty((await Query(firm).ListAsync(ReadingFirm.Technician, new AttentionFilter()))!.Rows);
        Assert.Null(await Query(firm).FindAsync(ReadingFirm.Technician, key));
        Assert.Null(await Query(firm).ListAsync(ReadingFirm.Technician, new AttentionFilter(SecondLook: true)));

        // Apart from what a plant needs, but said.
        var list = await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter());
        Assert.Equal((0, 1), (list!.Rows.Count, list.SecondLooks));
        Assert.Single((await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter(SecondLook: true)))!.Rows);
        Assert.NotNull(await Query(firm).FindAsync(ReadingFirm.Supervisor, key));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task ListAsync_Customer_SeesNoFindingAtAll()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day);

        Assert.Null(await Query(firm).ListAsync(ReadingFirm.CustomerOf(site.Customer), new AttentionFilter()));
        Assert.Null(await Query(firm).FindAsync(ReadingFirm.CustomerOf(site.Customer), new FindingKey("YAF-1", "CT-1", FindingKinds.WaterLoss, "", Day)));
    }

    [Theory]
    [InlineData("YAF-1", null, null, 1)]
    [InlineData(null, FindingKinds.WaterLoss, null, 2)]
    [InlineData(null, null, Severity.Act, 1)]
    [InlineData("NUR-1", FindingKinds.FeedLow, null, 0)]
    public async Task ListAsync_Filter_ShowsOnlyWhatMatches(string? site, string? kind, Severity? severity, int expected)
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddFindingAsync(await firm.AddSiteAsync("YAF-1"), FindingKinds.WaterLoss, Severity.Plan, Day);
        var other = await firm.AddSiteAsync("NUR-1");
        await firm.AddFindingAsync(other, FindingKinds.WaterLoss, Severity.Act, Day);

        var list = await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter(kind, site, severity));

        Assert.Equal(expected, list!.Total);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task ListAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddFindingAsync(await firm.AddSiteAsync("AAA-0"), FindingKinds.WaterLoss, Severity.Plan, Day);
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()));
        for (var i = 1; i < 10; i++)
        {
            await firm.AddFindingAsync(await firm.AddSiteAsync($"AAA-{i}"), FindingKinds.WaterLoss, Severity.Plan, Day);
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 8);
    }

    private static AttentionQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
