using System.Globalization;
using CsCheck;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Tests.Rounds;
using LogBook.Domain.Visits;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Reviews;

/// <summary>
/// Visits of several systems arrive in random order, with late results, amendments and amendments of amendments drawn at random:
/// what was stored step by step is what a rebuild of everything stores, byte for byte.
/// </summary>
/// <remarks>LOGBOOK_ORDERS sets how many firms are drawn.</remarks>
public sealed class ArrivalOrderTests
{
    private static readonly int Orders = int.Parse(Environment.GetEnvironmentVariable("LOGBOOK_ORDERS") ?? "3", CultureInfo.InvariantCulture);

    // A meter that goes off, a lot that reads high, and enough sites without either to tell by.
    private static RoundBuilder Round() => new()
    {
        Sites = ["S-1", "S-2", "S-3", "S-4", "S-5"],
        VisitsEach = 7,
        MeterFactor = (meter, day) => meter == "HM-2" && day >= 55 ? 1.08 : 1,
        LotAt = (site, day) => day < 55 ? "IN-1" : site is "S-5" ? "IN-3" : "IN-2",
        LotFactor = lot => lot == "IN-2" ? 1.25 : 1,
    };

    private static readonly Gen<(int Late, int LateDays, int First, int Second, double Factor)> Acts =
        Gen.Select(Gen.Int[0, 4], Gen.Int[1, 30], Gen.Int[0, 4], Gen.Int[0, 2], Gen.Double[0.6, 1.4]);

    [Fact]
    public async Task Stored_StepByStepInAnyOrderWithLateResultsAndAmendments_IsWhatARebuildStores()
    {
        var round = Round();
        var plain = round.Visits();
        var shifts = 0;
        await Gen.Select(Acts.Array[plain.Count], Gen.Shuffle(Enumerable.Range(0, 3 * plain.Count).ToArray())).SampleAsync(
            async (acts, order) =>
            {
                var arrivals = Arrivals(plain, acts, order);
                await using var database = await StartAsync(round);
                for (var i = 0; i < arrivals.Count; i++)
                {
                    var outcome = await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, arrivals[i], IntakeSource.Import);
                    Assert.True(outcome is IntakeOutcome.Stored, outcome is IntakeOutcome.Refused refused ? string.Join('\n', refused.Issues) : outcome.ToString());
                }

                var step = await StoredAsync(database);
                Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);
                await database.Get<AssessmentKeeper>().AssessAllAsync(database.Supervisor);

                Assert.Equal(await StoredAsync(database), step);
                shifts += step.Contains(FindingKinds.InstrumentShift, StringComparison.Ordinal) ? 1 : 0;
            },
            iter: Orders,
            threads: 1);

        // Else nothing that goes from one system to the others was ever at stake.
        Assert.True(shifts > 0);
    }

    // Versions of one visit come in their own order, as the intake wants them; everything else in the order drawn.
    private static List<Visit> Arrivals(List<Visit> plain, (int Late, int LateDays, int First, int Second, double Factor)[] acts, int[] order)
    {
        var versions = plain.Select((visit, i) => Versions(visit, acts[i])).ToList();
        var next = new int[plain.Count];
        var arrivals = new List<Visit>();
        foreach (var place in order)
        {
            var visit = place / 3;
            if (next[visit] < versions[visit].Count)
            {
                arrivals.Add(versions[visit][next[visit]++]);
            }
        }

        return arrivals;
    }

    private static List<Visit> Versions(Visit visit, (int Late, int LateDays, int First, int Second, double Factor) act)
    {
        // One visit in five brings a count that comes in days later; one in five is amended, a third of those once more.
        var first = act.Late > 0 ? visit : visit with
        {
            Systems =
            [
                visit.Systems[0] with
                {
                    Readings =
                    [
                        .. visit.Systems[0].Readings,
                        HistoryBuilder.Tower(TestCodes.ColonyCount, Math.Round(2e4 * act.Factor), "[CFU]/mL") with { Source = ReadingSource.Lab, ResultAt = Moment.OfUtc(visit.Arrived.Utc.AddDays(act.LateDays)) },
                    ],
                },
            ],
        };
        if (act.First > 0)
        {
            return [first];
        }

        var amended = Amended(first, 2, act.LateDays, act.Factor);
        return act.Second > 0 ? [first, amended] : [first, amended, Amended(first, 3, act.LateDays + 2, 1 / act.Factor)];
    }

    private static Visit Amended(Visit visit, int version, int days, double factor) => visit with
    {
        Version = version,
        Amends = version - 1,
        AmendedBy = "PUM",
        Reason = "misread",
        AmendedAt = Moment.OfUtc(visit.Arrived.Utc.AddDays(days)),
        Systems =
        [
            visit.Systems[0] with
            {
                Probes = [visit.Systems[0].Probes[0] with { AsFound = Math.Round(visit.Systems[0].Probes[0].AsFound * factor) }],
                Readings = [.. visit.Systems[0].Readings.Select(reading => reading.Test == TestCodes.Inhibitor ? reading with { Value = Math.Round(reading.Value!.Value * factor) } : reading)],
            },
        ],
    };

    private static async Task<SqliteDatabase> StartAsync(RoundBuilder round)
    {
        var database = new SqliteDatabase();
        await database.StartAsync();
        database.Clock.SetUtcNow(new DateTimeOffset(round.AsOf().AddDays(40), TimeSpan.Zero));
        var document = round.Document() with
        {
            Customers = [new Customer { Code = "YAF", Name = "Yaffleford College" }],
            People = [new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician }, new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician }],
        };
        await using var json = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        Assert.Empty((await database.Get<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues);
        return database;
    }

    // Findings in every language, figures with their inputs, and what is kept for the round.
    private static async Task<string> StoredAsync(SqliteDatabase database) => string.Join('\n', (await database.Get<LogBookStore>().ReadAsync(
        database.Supervisor,
        async db => (await db.Findings.Select(row => row.English + row.Spanish + row.Portuguese).ToListAsync())
            .Concat(await db.Clues.Select(row => row.Clues + row.Seen).ToListAsync())
            .Concat((await db.Figures.ToListAsync()).Select(row => ResultRows.Content(row).ToString()))
            .ToList())).Order(StringComparer.Ordinal));
}
