using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Databases;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.Extensions.Time.Testing;

namespace LogBook.Testing.Readers;

/// <summary>A firm in a SQLite file of its own, with rows written as intake writes them.</summary>
public sealed class ReadingFirm : IAsyncDisposable
{
    public static readonly DateTime Start = new(2025, 3, 3, 9, 0, 0, DateTimeKind.Utc);

    private static readonly JsonSerializerOptions AheadJson = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    private readonly string _folder = Directory.CreateTempSubdirectory("logbook-reading").FullName;

    private ReadingFirm()
    {
        Options = new LogBookOptions { Database = Path.Combine(_folder, "logbook.db") };
        var builder = new DbContextOptionsBuilder<LogBookDb>();
        builder.UseLogBook(Options);
        builder.ConfigureWarnings(Databases.TestDatabase.RefuseChance);
        builder.AddInterceptors(Counter);
        Store = new LogBookStore(new PooledDbContextFactory<LogBookDb>(builder.Options), Clock, Options);
    }

    public static Viewer Supervisor { get; } = new(1, "I. Wendle", "IWE", PersonRole.Supervisor, null, Language.English);

    public static Viewer Technician { get; } = new(2, "R. Yaffle", "RYA", PersonRole.Technician, null, Language.English);

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(Start.AddDays(400)));

    public StatementCounter Counter { get; } = new();

    public LogBookOptions Options { get; }

    public LogBookStore Store { get; }

    public static async Task<ReadingFirm> CreateAsync()
    {
        var firm = new ReadingFirm();
        await firm.Store.WriteAsync(Viewer.System("test"), db => db.Database.EnsureCreatedAsync());
        return firm;
    }

    /// <summary>A customer of that number.</summary>
    public static Viewer CustomerOf(int customerId) => new(9, "Estates office", null, PersonRole.Customer, [customerId], Language.English);

    public async Task<(int Customer, int Site, int System)> AddSiteAsync(string code, string name = "Yaffleford College", double? everyDays = 7, string? assignedTo = "RYA", string timeZone = "Europe/London")
    {
        var customer = new CustomerRow { Code = code[..3], CodeKey = code[..3] + code, Name = name + " Ltd", Document = JsonSerializer.Serialize(new Customer { Code = code[..3], Name = name }, ExchangeJson.Default.Customer) };
        await AddAsync(customer);
        var site = new Site { Code = code, Customer = code[..3], Name = name, TimeZone = timeZone, VisitEveryDays = everyDays, AssignedTo = assignedTo };
        var siteRow = new SiteRow
        {
            CustomerId = customer.Id, Code = code, CodeKey = CodeKeys.Of(code), Name = name, TimeZone = site.TimeZone, VisitEveryDays = everyDays, AssignedTo = assignedTo,
            Document = JsonSerializer.Serialize(site, ExchangeJson.Default.Site),
        };
        await AddAsync(siteRow);
        var system = new WaterSystem
        {
            Site = code, Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
            Programmes =
            [
                new Programme { From = new DateOnly(2025, 1, 6), SetPointUsPerCm = 1350, Ranges = [new TestRange { At = "tower", Test = "conductivity", Low = 1215, High = 1485, Unit = "uS/cm" }] },
                new Programme { From = new DateOnly(2025, 6, 2), SetPointUsPerCm = 1400, Ranges = [new TestRange { At = "tower", Test = "conductivity", Low = 1260, High = 1540, Unit = "uS/cm" }] },
            ],
        };
        var systemRow = new SystemRow { CustomerId = customer.Id, SiteId = siteRow.Id, Code = "CT-1", CodeKey = "CT-1", Name = system.Name, Kind = system.Kind, Document = JsonSerializer.Serialize(system, ExchangeJson.Default.WaterSystem) };
        await AddAsync(systemRow);
        return (customer.Id, siteRow.Id, systemRow.Id);
    }

    public static Visit VisitOf(string site, DateTime arrived, double conductivity, string technician = "RYA", Guid? id = null) => new()
    {
        Id = id ?? Guid.CreateVersion7(new DateTimeOffset(arrived)),
        Site = site,
        Technician = technician,
        Kind = VisitKind.Routine,
        Arrived = Moment.OfUtc(arrived),
        Left = Moment.OfUtc(arrived.AddMinutes(55)),
        Systems =
        [
            new VisitedSystem
            {
                System = "CT-1",
                Readings = [new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Value = conductivity, Unit = "uS/cm" }],
            },
        ],
    };

    public async Task<int> AddVisitAsync((int Customer, int Site, int System) at, Visit visit, bool isVoid = false, params IReadOnlyList<Visit> earlierVersions)
    {
        var row = new VisitRow
        {
            VisitId = visit.Id, CustomerId = at.Customer, SiteId = at.Site, Kind = visit.Kind ?? VisitKind.Routine, Technician = visit.Technician, ArrivedAt = visit.Arrived.Utc,
            LeftAt = visit.Left?.Utc, ReceivedAt = visit.Arrived.Utc.AddHours(1), CurrentVersion = earlierVersions.Count + 1, State = earlierVersions.Count > 0 ? VisitState.Reissued : VisitState.Closed,
            VoidedAt = isVoid ? visit.Arrived.Utc.AddDays(1) : null, VoidedBy = isVoid ? "I. Wendle" : null, VoidedWhy = isVoid ? "entered twice" : null,
        };
        await AddAsync(row);
        var number = 1;
        foreach (var version in earlierVersions.Append(visit))
        {
            var canonical = VisitDocument.Canonical(version);
            await AddAsync(new VisitVersionRow
            {
                CustomerId = at.Customer, VisitRowId = row.Id, Version = number, Document = canonical, Sha256 = VisitDocument.Sha256OfCanonical(canonical),
                ReceivedAt = version.AmendedAt?.Utc ?? visit.Arrived.Utc.AddHours(1), Source = default, Who = version.AmendedBy ?? visit.Technician, Reason = version.Reason,
            });
            number++;
        }

        return row.Id;
    }

    public Task AddFindingAsync((int Customer, int Site, int System) at, string kind, Severity severity, DateOnly firstSeen, Guid? firstVisit = null, FindingState state = FindingState.Open, string? because = null, About? about = null, string text = "said in English")
    {
        var finding = new Finding
        {
            Kind = kind, System = "CT-1", About = about, Severity = severity, FirstSeen = firstSeen, LastSeen = firstSeen, State = state, Because = because, Text = text, FirstVisit = firstVisit,
            Evidence = [new Evidence { What = "as found against reference", Value = -7.4, Low = -11.5, High = -3.3, LimitLow = -5, LimitHigh = 5, Unit = "%" }],
        };
        return AddAsync(new FindingRow
        {
            CustomerId = at.Customer, SiteId = at.Site, SystemId = at.System, Kind = kind, AboutKey = About.Key(about), Severity = severity, State = state, FirstSeen = firstSeen, LastSeen = firstSeen, FirstVisit = firstVisit,
            English = JsonSerializer.Serialize(finding, ExchangeJson.Default.Finding),
            Spanish = JsonSerializer.Serialize(finding with { Text = "dicho en español" }, ExchangeJson.Default.Finding),
            Portuguese = JsonSerializer.Serialize(finding with { Text = "dito em português" }, ExchangeJson.Default.Finding),
            EngineVersion = "1",
        });
    }

    /// <summary>What the assessment of a system keeps of its clocks and drums.</summary>
    public Task SetAheadAsync((int Customer, int Site, int System) at, SystemAhead ahead) => Store.WriteAsync(Viewer.System("test"), async db =>
        (await db.Systems.AsTracking().SingleAsync(system => system.Id == at.System)).Ahead = JsonSerializer.Serialize(ahead, AheadJson));

    /// <summary>Numbers of a site's only system.</summary>
    public Task<(int Customer, int Site, int System)> SystemAsync(string site) => Store.ReadAsync(Viewer.System("test"), async db =>
    {
        var found = await db.Systems.Join(db.Sites.Where(row => row.Code == site), system => system.SiteId, row => row.Id, (system, _) => system).SingleAsync();
        return (found.CustomerId, found.SiteId, found.Id);
    });

    /// <summary>A rule of the firm.</summary>
    public Task AddRuleAsync(Rule rule) => AddAsync(new SetUpRow
    {
        Kind = SetUpKind.Rule, Code = rule.Code, CodeKey = CodeKeys.Of(rule.Code), From = rule.From, Name = rule.Name, Document = JsonSerializer.Serialize(rule, ExchangeJson.Default.Rule),
    });

    /// <summary>Puts a system under rules.</summary>
    public Task SetRulesAsync((int Customer, int Site, int System) at, params IReadOnlyList<string> rules) => ChangeSystemAsync(at, system => system with { Rules = rules });

    /// <summary>Changes the set-up of a system.</summary>
    public Task ChangeSystemAsync((int Customer, int Site, int System) at, Func<WaterSystem, WaterSystem> change) => Store.WriteAsync(Viewer.System("test"), async db =>
    {
        var row = await db.Systems.AsTracking().SingleAsync(system => system.Id == at.System);
        row.Document = JsonSerializer.Serialize(change(JsonSerializer.Deserialize(row.Document, ExchangeJson.Default.WaterSystem)!), ExchangeJson.Default.WaterSystem);
    });

    /// <summary>Products of the firm.</summary>
    public async Task AddProductsAsync(params IReadOnlyList<Product> products)
    {
        foreach (var product in products)
        {
            await AddAsync(new SetUpRow
            {
                Kind = SetUpKind.Product, Code = product.Code, CodeKey = CodeKeys.Of(product.Code), Name = product.Name, Document = JsonSerializer.Serialize(product, ExchangeJson.Default.Product),
            });
        }
    }

    /// <summary>People of the firm, and the firm's own row.</summary>
    public async Task AddPeopleAsync(params IReadOnlyList<Person> people)
    {
        await AddAsync(new FirmRow { Id = 1, Name = "Quernwath Cooling Water Services", CreatedAt = Start, FirstRunDone = true });
        foreach (var person in people)
        {
            await AddAsync(new SetUpRow
            {
                Kind = SetUpKind.Person, Code = person.Code, CodeKey = CodeKeys.Of(person.Code), Name = person.Name, Document = JsonSerializer.Serialize(person, ExchangeJson.Default.Person),
            });
        }
    }

    public Task AddAsync(object row) => Store.WriteAsync(Viewer.System("test"), async db =>
    {
        db.Add(row);
        await db.SaveChangesAsync();
    });

    /// <summary>Statements that a reading sends.</summary>
    public async Task<int> CountAsync(Func<Task> read)
    {
        Counter.Reset();
        await read();
        return Counter.Count;
    }

    public ValueTask DisposeAsync()
    {
        Store.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
