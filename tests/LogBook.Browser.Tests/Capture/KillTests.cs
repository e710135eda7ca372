using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The tablet dies again and again while a visit is entered: no value that was typed a second before may be missing.</summary>
public sealed class KillTests
{
    private const double LatestMs = 1500;

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
        var typed = new Dictionary<string, (string Text, long At)>();
        var checkedValues = 0;
        for (var kill = 0; kill < Kills; kill++)
        {
            await tablet.OpenVisitAsync(JobHost.Site);
            await tablet.Page.StepAsync(EntryTexts.Water.En);
            foreach (var (key, _) in TypedVisit.Water.OrderBy(_ => random.Next()).Take(4))
            {
                var text = (random.Next(10, 999) / 10.0).ToString("0.0", CultureInfo.InvariantCulture);
                var box = tablet.Page.Field(key);
                await box.ClickAsync();
                await box.FillAsync(string.Empty);
                await box.PressSequentiallyAsync(text);
                typed[key] = (text, Stopwatch.GetTimestamp());
            }

            // Any moment around the second counts; the last box was never left.
            await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * LatestMs));
            var died = Stopwatch.GetTimestamp();
            await tablet.DieAsync();

            await tablet.SwitchOnAsync();
            await tablet.OpenVisitAsync(JobHost.Site);
            var draft = await DraftAsync(tablet);
            foreach (var (key, (text, at)) in typed.ToList())
            {
                if (Stopwatch.GetElapsedTime(at, died) > KeptWithin)
                {
                    Assert.Equal((kill, key, text), (kill, key, draft.Text(key)));
                    checkedValues++;
                }
                else
                {
                    // Too young to be promised: what is there counts from now on.
                    typed[key] = (draft.Text(key), 0);
                }
            }
        }

        Assert.True(checkedValues >= Kills, $"Only {checkedValues} values were old enough to be checked.");
    }

    private static async Task<VisitDraft> DraftAsync(Tablet tablet) => VisitDraft.FromJson(await tablet.AskAsync<string>(
        "desk.js", "async (desk) => desk.draft((await desk.drafts()).find((row) => !row.closed).id)"));
}
