using LogBook.Application.TakeOver;
using LogBook.Application.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.TakeOver;

public sealed class TakeOverQueryTests
{
    [Fact]
    [Trait("goal", "P2")]
    public async Task Of_MoreVisits_AsManyStatements()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var query = database.Get<TakeOverQuery>();
        async Task<int> CountAsync()
        {
            database.Statements.Reset();
            var pack = await query.OfAsync(database.Technician, "yaf-1");
            Assert.Equal("YAF-1", pack!.Card.Site.Code);
            return database.Statements.Count;
        }

        await CountAsync();
        var none = await CountAsync();
        foreach (var day in Enumerable.Range(3, 5))
        {
            Assert.IsType<IntakeOutcome.Stored>(await database.Get<VisitIntake>().ReceiveAsync(database.Technician, SampleFirm.Visit(arrived: $"2025-03-0{day}T09:05:00+00:00"), IntakeSource.Tablet));
        }

        Assert.Equal(none, await CountAsync());
        Assert.InRange(none, 1, 20);
    }
}
