using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Application.Tests.Data;

/// <summary>Saves visits until it is killed and says each identity once the visit is acknowledged.</summary>
internal static class SavingChild
{
    public static async Task<int> RunAsync(string database, int seed)
    {
        await using var services = new ServiceCollection().AddLogging().AddLogBook(new LogBookOptions { Database = database }).BuildServiceProvider();
        var intake = services.GetRequiredService<VisitIntake>();
        var viewer = new Viewer(null, "R. Yaffle", "RYA", PersonRole.Technician, null, Language.English);
        for (var i = 0; i < 10_000; i++)
        {
            var at = Moment.OfUtc(new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours((seed * 1000) + i));
            var outcome = await intake.ReceiveAsync(viewer, SampleFirm.Visit(arrived: at.Text), IntakeSource.Tablet);
            if (outcome is not IntakeOutcome.Stored stored)
            {
                await Console.Error.WriteLineAsync(outcome.ToString());
                return 1;
            }

            await Console.Out.WriteLineAsync(stored.VisitId.ToString("D"));
            await Console.Out.FlushAsync();
        }

        return 0;
    }
}
