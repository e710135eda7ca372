using System.Diagnostics;
using System.Globalization;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;
using Xunit.Abstractions;

namespace LogBook.Application.Tests.Data;

public sealed class KillTests(ITestOutputHelper output)
{
    // The short form of every run; LOGBOOK_KILLS asks for more.
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("LOGBOOK_KILLS") ?? "10", CultureInfo.InvariantCulture);

    [Fact]
    [Trait("goal", "R1")]
    public async Task Save_KilledAtRandomMoments_LosesNothingAcknowledgedAndLeavesNothingHalf()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var random = new Random(1);
        var acknowledged = new HashSet<Guid>();

        for (var kill = 0; kill < Kills; kill++)
        {
            foreach (var id in await SaveUntilKilledAsync(database.File, kill, TimeSpan.FromMilliseconds(random.NextDouble() * 150)))
            {
                Assert.True(acknowledged.Add(id));
            }
        }

        var (stored, half) = await database.Get<LogBookStore>().ReadAsync(database.Supervisor, async db =>
        {
            var visits = await db.Visits.Select(v => new
            {
                v.VisitId,
                Versions = db.VisitVersions.Count(x => x.VisitRowId == v.Id),
                Readings = db.Readings.Count(x => x.VisitRowId == v.Id),
                Outbox = db.Outbox.Count(x => x.VisitRowId == v.Id),
            }).ToListAsync();
            var audited = (await db.AuditTrail.Where(a => a.What == AuditActs.Received).Select(a => a.Key).ToListAsync()).ToHashSet();
            return (visits.Select(v => v.VisitId).ToHashSet(), visits.Count(v => v is not { Versions: 1, Readings: 5, Outbox: 1 } || !audited.Contains(v.VisitId.ToString("D"))));
        });
        await database.Get<LogBook.Application.Reviews.AssessmentKeeper>().AssessDueAsync(database.Supervisor);
        var verification = await database.Get<Verifier>().VerifyAsync(database.Supervisor);
        output.WriteLine($"{Kills} kills, {acknowledged.Count} acknowledged, {stored.Count} stored");
        Assert.NotEmpty(acknowledged);
        Assert.Empty(acknowledged.Except(stored));
        Assert.Equal(0, half);
        Assert.Empty(verification.Faults);
    }

    private static async Task<List<Guid>> SaveUntilKilledAsync(string database, int seed, TimeSpan after)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,

            // A child lives for its first saves only.
            Environment = { ["DOTNET_TieredPGO"] = "0" },
            ArgumentList = { typeof(KillTests).Assembly.Location, "save-visits", database, seed.ToString(CultureInfo.InvariantCulture) },
        };
        using var child = Process.Start(start)!;
        var acknowledged = new List<Guid>();
        var killed = false;
        while (await child.StandardOutput.ReadLineAsync() is { } line)
        {
            // A line that the kill cut short was no acknowledgement.
            if (Guid.TryParseExact(line, "D", out var id))
            {
                acknowledged.Add(id);
            }

            if (!killed)
            {
                killed = true;
                _ = Task.Delay(after).ContinueWith(_ => child.Kill(), TaskScheduler.Default);
            }
        }

        await child.WaitForExitAsync();
        Assert.True(killed, "The child saved nothing: " + await child.StandardError.ReadToEndAsync());
        Assert.NotEqual(0, child.ExitCode);
        return acknowledged;
    }
}
