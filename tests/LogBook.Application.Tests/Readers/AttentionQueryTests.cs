using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Domain.Clocks;
using LogBook.Domain.Rounds.Planning;
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
    public async Task ListAsync_TwoHundredSites_SendsTheSameFewStatementsAsForOne()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddFindingAsync(await firm.AddSiteAsync("AAA-0"), FindingKinds.WaterLoss, Severity.Plan, Day);
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()));
        for (var i = 1; i < 200; i++)
        {
            await firm.AddFindingAsync(await firm.AddSiteAsync($"AAA-{i}"), FindingKinds.WaterLoss, Severity.Plan, Day);
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 8);
    }

    [Fact]
    public async Task ListAsync_ByOwner_ShowsWhatThatPersonTookOnAndWhatNobodyDid()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day, state: FindingState.Acknowledged);
        await firm.AddFindingAsync(site, FindingKinds.FeedLow, Severity.Plan, Day, state: FindingState.Acknowledged);
        await firm.AddFindingAsync(site, FindingKinds.ProbeDrifting, Severity.Plan, Day);
        foreach (var (kind, owner) in new[] { (FindingKinds.WaterLoss, "RYA"), (FindingKinds.FeedLow, "IWE") })
        {
            await firm.AddAsync(new FindingMarkRow
            {
                CustomerId = site.Customer, SiteId = site.Site, SystemId = site.System, Kind = kind, AboutKey = "", FirstSeen = Day, State = FindingState.Acknowledged, Owner = owner, Who = "I. Wendle", At = ReadingFirm.Start,
            });
        }

        async Task<IEnumerable<string>> KindsAsync(string? owner) => (await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter(Owner: owner)))!.Rows.Select(row => row.Key.Kind);

        Assert.Equal([FindingKinds.WaterLoss], await KindsAsync("RYA"));
        Assert.Equal([FindingKinds.ProbeDrifting], await KindsAsync(AttentionFilter.Nobody));
        Assert.Equal(3, (await KindsAsync(null)).Count());
        var all = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()))!;
        Assert.Equal(["IWE", "RYA"], all.Owners);
        Assert.Equal(["RYA", "IWE", null], new[] { FindingKinds.WaterLoss, FindingKinds.FeedLow, FindingKinds.ProbeDrifting }.Select(kind => all.Rows.Single(row => row.Key.Kind == kind).Owner));
    }

    [Fact]
    public async Task ListAsync_KindWithAClock_TellsItsOwnDeadline()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.ClockDue, Severity.Plan, Day, about: new About { Rule = "OXT-LEG" });
        await firm.AddFindingAsync(site, FindingKinds.RunsOut, Severity.Plan, Day, about: new About { Drum = "D-INH" });
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day);
        var due = new DateTime(2026, 4, 1, 23, 0, 0, DateTimeKind.Utc);
        var clock = new RunningClock(DutyKind.Interval, due.AddDays(-90), due.AddDays(-18), due, 90) { Rule = "OXT-LEG", RuleFrom = new DateOnly(2024, 7, 1) };
        await firm.AddAsync(new ClockRow { CustomerId = site.Customer, SystemId = site.System, Clocks = System.Text.Json.JsonSerializer.Serialize(new[] { clock }, ClockJson), EngineVersion = "1" });
        await firm.SetAheadAsync(site, new SystemAhead { Drums = [new DrumAhead("D-INH", "P-40", Day, 4, 0.2) { From = new DateOnly(2026, 3, 20), To = new DateOnly(2026, 3, 28) }] });

        var rows = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new AttentionFilter()))!.Rows.ToDictionary(row => row.Key.Kind, row => row.Deadline);

        // London is on summer time: the last day is the 1st of April.
        Assert.Equal(new FindingDeadline(DutyKind.Interval, due, new DateOnly(2026, 4, 1)), rows[FindingKinds.ClockDue]);
        Assert.Equal(new DateOnly(2026, 3, 20), rows[FindingKinds.RunsOut]!.Day);
        Assert.Null(rows[FindingKinds.WaterLoss]);
        var one = await Query(firm).FindAsync(ReadingFirm.Supervisor, new FindingKey("YAF-1", "CT-1", FindingKinds.ClockDue, "rule:OXT-LEG", Day));
        Assert.Equal(rows[FindingKinds.ClockDue], one!.Deadline);
    }

    private static readonly System.Text.Json.JsonSerializerOptions ClockJson = new(System.Text.Json.JsonSerializerDefaults.Web) { Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter() } };

    private static AttentionQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
