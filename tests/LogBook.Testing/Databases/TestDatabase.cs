using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace LogBook.Testing.Databases;

/// <summary>A database of its own with all services and a clock that stands still until it is moved.</summary>
public abstract class TestDatabase : IAsyncDisposable
{
    private ServiceProvider? _services;

    /// <summary>Now, as the services see it.</summary>
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2025, 3, 10, 8, 0, 0, TimeSpan.Zero));

    /// <summary>Statements that were sent since the last <see cref="StatementCounter.Reset"/>.</summary>
    public StatementCounter Statements { get; } = new();

    /// <summary>How it is reached.</summary>
    public abstract LogBookOptions Options { get; }

    /// <summary>The supervisor of the sample firm: sees all, changes set-up.</summary>
    public Viewer Supervisor { get; } = new(null, "I. Wendle", "IWE", PersonRole.Supervisor, null, Language.English);

    /// <summary>A technician of the sample firm.</summary>
    public Viewer Technician { get; } = new(null, "R. Yaffle", "RYA", PersonRole.Technician, null, Language.English);

    /// <summary>A service.</summary>
    public T Get<T>()
        where T : notnull => (_services ??= Build()).GetRequiredService<T>();

    /// <summary>Makes the schema.</summary>
    public virtual Task StartAsync() => Get<LogBookStartUp>().RunAsync();

    /// <summary>Makes the schema and takes the sample firm's set-up in.</summary>
    public async Task StartWithSampleFirmAsync()
    {
        await StartAsync();
        await using var json = SampleFirm.SetUp();
        var outcome = await Get<ExchangeImport>().ImportAsync(Viewer.System("test"), json);
        if (outcome.Issues.Count > 0)
        {
            throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Issues));
        }
    }

    /// <summary>Key of a customer.</summary>
    public async Task<int> CustomerIdAsync(string code) =>
        await Get<LogBookStore>().ReadAsync(Supervisor, db => db.Customers.Where(c => c.CodeKey == code).Select(c => c.Id).SingleAsync());

    /// <summary>Somebody who sees one customer only.</summary>
    public async Task<Viewer> OfCustomerAsync(string code, PersonRole role = PersonRole.Customer) =>
        new(null, "of " + code, null, role, [await CustomerIdAsync(code)], Language.English);

    /// <summary>A fresh set of services on the same database, as after a restart.</summary>
    public async Task RestartAsync()
    {
        if (_services is not null)
        {
            await _services.DisposeAsync();
        }

        _services = null;
    }

    /// <summary>Runs SQL past all guards, as an intruder would.</summary>
    public async Task SqlAsync(string sql)
    {
        await using var db = await Get<IDbContextFactory<LogBookDb>>().CreateDbContextAsync();
        await db.Database.ExecuteSqlRawAsync(sql);
    }

    /// <inheritdoc />
    public virtual async ValueTask DisposeAsync()
    {
        await RestartAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>Refuses a statement that takes whichever row comes first.</summary>
    internal static void RefuseChance(WarningsConfigurationBuilder warnings) => warnings.Throw(CoreEventId.FirstWithoutOrderByAndFilterWarning, CoreEventId.RowLimitingOperationWithoutOrderByWarning);

    private ServiceProvider Build()
    {
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddSingleton<TimeProvider>(Clock);
        services.AddLogBook(Options);
        services.AddSingleton(new PhotoFolder(Path.Combine(Path.GetDirectoryName(Options.BackupFolder!)!, "photos")));
        services.ConfigureDbContext<LogBookDb>(builder => builder.AddInterceptors(Statements).ConfigureWarnings(RefuseChance));
        return services.BuildServiceProvider();
    }
}
