using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Drafts;
using Xunit.Abstractions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The tablet dies again and again while a visit is entered: nothing that was entered a second before may be missing.</summary>
public sealed class KillTests(ITestOutputHelper output)
{
    private const double LatestMs = 1500;
    private const int EntriesEach = 6;

    private static readonly TimeSpan KeptWithin = TimeSpan.FromSeconds(1);

    private static int Kills => int.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_KILLS"), CultureInfo.InvariantCulture, out var given) ? given : 10;

    [Fact]
    [Trait("goal", "R4")]
    public async Task Draft_TabletDies_LosesNothingOlderThanASecond()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "kills");
        await tablet.RegisterAsync();
        link.Cut();
        var random = new Random(20250331);
        var entry = new RandomEntry(random);
        var (ages, kinds, lasted) = (new List<TimeSpan>(), new SortedSet<string>(StringComparer.Ordinal), Stopwatch.StartNew());
        for (var kill = 0; kill < Kills; kill++)
        {
            await tablet.OpenVisitAsync(JobHost.Site);
            for (var i = 0; i < EntriesEach; i++)
            {
                await entry.EnterAsync(tablet.Page);
            }

            // Any moment around the second counts; the last field was never left.
            await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * LatestMs));
            var died = Stopwatch.GetTimestamp();
            await tablet.DieAsync();

            await tablet.SwitchOnAsync();
            await tablet.OpenVisitAsync(JobHost.Site);
            var draft = await DraftAsync(tablet);
            foreach (var (key, (kind, text, unit, at)) in entry.Entries.ToList())
            {
                var age = Stopwatch.GetElapsedTime(at, died);
                if (age > KeptWithin)
                {
                    Assert.Equal((kill, key, text, unit), (kill, key, draft.Text(key), unit is null ? null : draft.Field(key)?.Unit));
                    kinds.Add(kind);
                    ages.Add(age);
                }
                else
                {
                    entry.Take(key, draft);
                }
            }
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Kills} kills in {lasted.Elapsed.TotalSeconds:0} s; {ages.Count} values of {kinds.Count} kinds of field checked, the youngest {ages.DefaultIfEmpty().Min().TotalSeconds:0.000} s old: 0 lost."));
        Assert.True(ages.Count >= Kills, $"Only {ages.Count} values were old enough to be checked.");
        Assert.Equal(entry.Kinds.Order(StringComparer.Ordinal), kinds);
    }

    private static async Task<VisitDraft> DraftAsync(Tablet tablet) => VisitDraft.FromJson(await tablet.AskAsync<string>(
        "desk.js", "async (desk) => desk.draft((await desk.drafts()).find((row) => !row.closed).id)"));
}
