using LogBook.Application.Demo;
using LogBook.Application.Tests.Imports;
using LogBook.Application.Visits;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>A year of the busiest site of the invented firm in a database, with two photos of each visit, made once.</summary>
public sealed class YearOfRecords : IAsyncLifetime
{
    public const string Site = "WEN-1";

    public DemoFirmResult Firm { get; } = DemoFirm.Create();

    public SqliteDatabase Database { get; } = new();

    /// <summary>The photos of each visit.</summary>
    public Dictionary<Guid, IReadOnlyList<Photo>> Photos { get; } = [];

    public async Task InitializeAsync()
    {
        await Database.StartAsync();
        Database.Clock.SetUtcNow(new DateTimeOffset(2027, 1, 2, 8, 0, 0, TimeSpan.Zero));
        var visits = Firm.Document.Visits.Where(visit => visit.Site == Site && visit.Arrived.Utc.Year == 2026).ToList();
        foreach (var visit in visits.DistinctBy(visit => visit.Id))
        {
            Photos[visit.Id] = [.. new[] { "CT-1/controller", "CT-1/observations/tower" }.Select(of => new Photo { Id = Guid.CreateVersion7(), Of = of, TakenAt = visit.Arrived })];
        }

        var outcome = await Documents.ImportAsync(Database, Firm.Document with { Visits = [.. visits.Select(visit => visit with { Photos = Photos[visit.Id] })] });
        Assert.Empty(outcome.Issues);
        foreach (var (photo, place) in Photos.Values.SelectMany(photos => photos).Select((photo, place) => (photo, place)))
        {
            using var picture = new MemoryStream(SamplePicture.Jpeg(64, 48, place));
            Assert.Equal(PhotoOutcome.Stored, await Database.Get<PhotoStore>().KeepAsync(Database.Supervisor, photo.Id, picture));
        }
    }

    public async Task DisposeAsync() => await Database.DisposeAsync();
}
