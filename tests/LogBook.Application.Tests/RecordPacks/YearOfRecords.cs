using LogBook.Application.Demo;
using LogBook.Application.Tests.Imports;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>A year of the busiest site of the invented firm in a database, made once.</summary>
public sealed class YearOfRecords : IAsyncLifetime
{
    public const string Site = "WEN-1";

    public DemoFirmResult Firm { get; } = DemoFirm.Create();

    public SqliteDatabase Database { get; } = new();

    public async Task InitializeAsync()
    {
        await Database.StartAsync();
        Database.Clock.SetUtcNow(new DateTimeOffset(2027, 1, 2, 8, 0, 0, TimeSpan.Zero));
        var outcome = await Documents.ImportAsync(Database, Firm.Document with { Visits = [.. Firm.Document.Visits.Where(visit => visit.Site == Site && visit.Arrived.Utc.Year == 2026)] });
        Assert.Empty(outcome.Issues);
    }

    public async Task DisposeAsync() => await Database.DisposeAsync();
}
