using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Imports;
using LogBook.Application.Notices;
using LogBook.Application.Planning;
using LogBook.Application.Reviews;
using LogBook.Application.Shelf;
using LogBook.Application.Summaries;
using LogBook.Application.TakeOver;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Application.Tests.Readers;

/// <summary>
/// What is suspected of instruments, lots and somebody's records is for supervisors alone: every way on which a technician or a customer
/// could come to it, each with a supervisor who does see it there and a finding of the plant that everybody of the firm sees.
/// </summary>
public sealed class SecondLookWallTests
{
    private static readonly Guid Visited = Guid.Parse("0198c000-0000-7000-8000-000000000001");

    private static readonly DateOnly Day = new(2026, 4, 6);

    private static readonly string[] AllKinds = [.. FindingKey.AboutRecords, FindingKinds.WaterLoss];

    // What a way shows of kinds: to a reviewer all, to a technician the plant's alone, to a customer none.
    private static readonly Dictionary<string, Func<IServiceProvider, Viewer, Task<IEnumerable<string>>>> Ways = new(StringComparer.Ordinal)
    {
        ["needs attention"] = async (get, viewer) => (await Of<AttentionQuery>(get).ListAsync(viewer, new AttentionFilter(Severity: Severity.Act))) is { } list
            ? [.. list.Rows.Select(row => row.Key.Kind), .. viewer.MayReview ? (await Of<AttentionQuery>(get).ListAsync(viewer, new AttentionFilter(SecondLook: true)))!.Rows.Select(row => row.Key.Kind) : []]
            : [],
        ["kinds to filter by"] = async (get, viewer) => (await Of<AttentionQuery>(get).ListAsync(viewer, new AttentionFilter()))?.Kinds ?? [],
        ["a finding's address"] = async (get, viewer) => (await Task.WhenAll(AllKinds.Select(kind => Of<AttentionQuery>(get).FindAsync(viewer, new FindingKey("YAF-1", "CT-1", kind, "", Day))))).OfType<AttentionRow>().Select(row => row.Key.Kind),
        ["site card"] = async (get, viewer) => (await Of<SiteCardQuery>(get).OfAsync(viewer, "YAF-1"))?.Findings.Select(row => row.Key.Kind) ?? [],
        ["list of sites"] = async (get, viewer) => AllKinds.Reverse().Take((await Of<SitesQuery>(get).ListAsync(viewer)).Single().Open.Act),
        ["site history"] = async (get, viewer) => (await Of<SiteHistoryQuery>(get).OfAsync(viewer, "YAF-1", "CT-1", Day.AddDays(-60), Day.AddDays(60)))?.Findings.Select(row => row.Key.Kind) ?? [],
        ["visit"] = async (get, viewer) => (await Of<VisitQuery>(get).OfAsync(viewer, Visited))?.Findings.Select(row => row.Key.Kind) ?? [],
        ["take-over pack"] = async (get, viewer) => (await Of<TakeOverQuery>(get).OfAsync(viewer, "YAF-1")) is { } pack
            ? AllKinds.Where(kind => pack.Story.Any(line => line.Words.In(Language.English).StartsWith(FindingTexts.NameOf(kind).En, StringComparison.Ordinal)) || pack.Card.Findings.Any(row => row.Key.Kind == kind))
            : [],
        ["findings interface"] = async (get, viewer) => (await Of<FindingsQuery>(get).ListAsync(viewer)).Select(finding => finding.Kind),
        ["export"] = async (get, viewer) => (await Of<ExchangeExport>(get).ExportAsync(viewer, withFindings: true))!.Findings.Select(finding => finding.Kind),
    };

    public static TheoryData<string> AllWays => [.. Ways.Keys];

    [Theory]
    [MemberData(nameof(AllWays))]
    [Trait("goal", "S1")]
    public async Task Way_SupervisorSeesIt_NobodyElseDoes(string way)
    {
        await using var firm = await FirmAsync();
        await using var services = ServicesOf(firm);
        async Task<string[]> SeesAsync(Viewer viewer) => [.. (await Ways[way](services, viewer)).Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(AllKinds.Order(StringComparer.Ordinal), await SeesAsync(ReadingFirm.Supervisor));
        Assert.Equal([FindingKinds.WaterLoss], await SeesAsync(ReadingFirm.Technician));
        Assert.Empty(await SeesAsync(ReadingFirm.CustomerOf(1)));
    }

    // The round is a technician's own, on a page and as a tablet brings it; a supervisor's tells no findings.
    [Fact]
    [Trait("goal", "S1")]
    public async Task Round_Technician_IsToldOfThePlantAlone()
    {
        await using var firm = await FirmAsync();
        await using var services = ServicesOf(firm);

        var since = Assert.Single((await Of<TodaysRoundQuery>(services).OfAsync(ReadingFirm.Technician))!.Stops).Since;

        Assert.Equal([FindingKinds.WaterLoss], since.Select(entry => entry.Finding?.Kind).OfType<string>());
        Assert.Null(await Of<TodaysRoundQuery>(services).OfAsync(ReadingFirm.CustomerOf(1)));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Summary_Customer_TellsTheWaterLossAlone()
    {
        await using var firm = await FirmAsync();
        await using var services = ServicesOf(firm);

        var summary = System.Text.Json.JsonSerializer.Serialize(await ActivatorUtilities.CreateInstance<SummaryReader>(services).FindAsync(ReadingFirm.Supervisor, Visited, Language.English));

        Assert.Contains("said of water-loss", summary, StringComparison.Ordinal);
        Assert.All(FindingKey.AboutRecords, kind => Assert.DoesNotContain("said of " + kind, summary, StringComparison.Ordinal));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Mails_Technician_IsToldOfThePlantAlone()
    {
        await using var firm = await FirmAsync();
        await using var services = ServicesOf(firm);
        await AddReaderAsync(firm, 1, "i.wendle@quernwath.example", PersonRole.Supervisor, "IWE");
        await AddReaderAsync(firm, 2, "r.yaffle@quernwath.example", PersonRole.Technician, "RYA");

        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            await Of<AtOnceNotices>(services).QueueAsync(db, [], await db.Findings.ToListAsync(), Day, CancellationToken.None);
            await db.SaveChangesAsync();
        });
        await Of<DigestWriter>(services).QueueDueAsync();

        var mails = await firm.Store.ReadAsync(Viewer.System("test"), db => db.Outbox.ToListAsync());
        string TextOf(string kind, string reader) => string.Join(' ', mails.Where(row => row.Kind == kind && row.Recipient.StartsWith(reader, StringComparison.Ordinal)).Select(row => row.Subject + row.TextBody + row.HtmlBody));
        foreach (var kind in new[] { OutboxKinds.AtOnce, OutboxKinds.Digest })
        {
            Assert.All(AllKinds, about => Assert.Contains("said of " + about, TextOf(kind, "i.wendle"), StringComparison.Ordinal));
            Assert.Contains("said of water-loss", TextOf(kind, "r.yaffle"), StringComparison.Ordinal);
            Assert.All(FindingKey.AboutRecords, about => Assert.DoesNotContain("said of " + about, TextOf(kind, "r.yaffle"), StringComparison.Ordinal));
        }

        Assert.Contains("Act 1", TextOf(OutboxKinds.Digest, "r.yaffle"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PackList_SuspectedMeter_IsToBeProvedAndNothingMoreIsSaid()
    {
        // Proved yesterday: only what is suspected of it makes it due.
        await using var firm = await FirmAsync();
        await using var services = ServicesOf(firm);
        var (customer, site, system) = await firm.SystemAsync("YAF-1");
        var today = DateOnly.FromDateTime(firm.Clock.GetUtcNow().UtcDateTime);
        var proved = new Instrument { Code = "HM-2", Kind = InstrumentKind.ConductivityMeter, Checks = [new InstrumentCheck { At = Moment.OfUtc(firm.Clock.GetUtcNow().UtcDateTime.AddDays(-1)), Standard = 1413, Read = 1413, Unit = "uS/cm" }] };
        await firm.AddAsync(new SetUpRow { Kind = SetUpKind.Instrument, Code = "HM-2", CodeKey = "HM-2", Name = "Hand meter 2", Document = System.Text.Json.JsonSerializer.Serialize(proved, ExchangeJson.Default.Instrument) });
        await firm.SetAheadAsync((customer, site, system), new SystemAhead { Instruments = [new InstrumentUse("RYA", "HM-2")] });
        await Of<PlanStore>(services).AssignAsync(ReadingFirm.Supervisor, today, "YAF-1", "RYA", 0);
        async Task<bool> IsDueAsync() => Assert.Single((await Of<PackQuery>(services).OfAsync(ReadingFirm.Technician, today, "RYA"))!.List.Instruments).IsDue;

        var before = await IsDueAsync();
        await firm.AddFindingAsync((customer, site, system), FindingKinds.InstrumentShift, Severity.Act, Day, about: new About { Instrument = "HM-2" });

        Assert.Equal((false, true), (before, await IsDueAsync()));
    }

    private static T Of<T>(IServiceProvider services)
        where T : notnull => services.GetRequiredService<T>();

    private static async Task<ReadingFirm> FirmAsync()
    {
        var firm = await ReadingFirm.CreateAsync();
        await firm.AddPeopleAsync(new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician }, new Person { Code = "IWE", Name = "I. Wendle", Role = PersonRole.Supervisor });
        var site = await firm.AddSiteAsync("YAF-1");

        // A colleague's visit of the day: the round of either reader tells what came since their own.
        var at = Day.ToDateTime(new TimeOnly(9, 0), DateTimeKind.Utc);
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", at.AddDays(-10), 1350, "RYA"));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", at.AddDays(-9), 1350, "IWE"));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", at, 1350, "PUM", Visited));
        foreach (var kind in AllKinds)
        {
            await firm.AddFindingAsync(site, kind, Severity.Act, Day, Visited, text: "said of " + kind);
        }

        return firm;
    }

    private static ServiceProvider ServicesOf(ReadingFirm firm)
    {
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddLogBook(firm.Options);
        services.AddSingleton(firm.Store);
        services.AddSingleton<TimeProvider>(firm.Clock);
        return services.BuildServiceProvider();
    }

    private static async Task AddReaderAsync(ReadingFirm firm, int id, string email, PersonRole role, string person)
    {
        await firm.AddAsync(new IdentityRole<int>(RoleNames.Of(role)) { Id = id, NormalizedName = RoleNames.Of(role).ToUpperInvariant() });
        await firm.AddAsync(new LogBookUser
        {
            Id = id, UserName = email, NormalizedUserName = email.ToUpperInvariant(), Email = email, NormalizedEmail = email.ToUpperInvariant(), SecurityStamp = "-",
            PersonCode = person, Language = Language.English, NoticeAtOnce = true, NoticeDigest = true,
        });
        await firm.AddAsync(new IdentityUserRole<int> { UserId = id, RoleId = id });
    }
}
