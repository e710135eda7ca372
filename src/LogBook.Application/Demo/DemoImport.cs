using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Demo;

/// <summary>Writes an invented firm into an empty database, by the same way in as any document.</summary>
public sealed class DemoImport(LogBookStore store, SetUpStore setUp, ExchangeImport import)
{
    /// <summary>Name of the invented firm.</summary>
    public const string FirmName = "Quernwath Cooling Water Services";

    private static readonly Viewer Self = Viewer.System("demo");

    /// <summary>Where the demo's clock starts: eight in the morning after the last day of visits.</summary>
    public static DateTime FirstMoment => DemoFirm.LastDay.AddDays(1).ToDateTime(new TimeOnly(8, 0), DateTimeKind.Utc);

    /// <summary>Whether a database holds anything that is not the demo: it is then never written to.</summary>
    public async Task<bool> HoldsAnotherFirmAsync(CancellationToken cancellationToken = default) =>
        await setUp.FirmRowAsync(Self, cancellationToken) is { } row
            ? !row.IsDemo
            : await store.ReadAsync(Self, db => db.Customers.AnyAsync(cancellationToken), cancellationToken);

    /// <summary>Imports the firm, assesses it and, last, names it: a run that was cut short is never half shown.</summary>
    /// <param name="document">Set-up and visits.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>What was written, or why nothing was.</returns>
    public async Task<ImportOutcome> RunAsync(ExchangeDocument document, CancellationToken cancellationToken = default)
    {
        if (await HoldsAnotherFirmAsync(cancellationToken) || await setUp.FirmRowAsync(Self, cancellationToken) is not null)
        {
            return new ImportOutcome(false, 0, 0, 0, [new Issue("--database", "not-empty", "The database holds a firm already; the demo is kept in a file of its own.")]);
        }

        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        var outcome = await import.ImportAsync(Self, json, cancellationToken: cancellationToken);
        if (outcome.Written)
        {
            await setUp.SaveFirmAsync(Self, FirmName, isDemo: true, FirstMoment, cancellationToken);
        }

        return outcome;
    }
}
