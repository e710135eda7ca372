using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A slide that waits for its result is offered on the first view; the round comes by itself when it is old.</summary>
public sealed class ResultsTests
{
    private const string Value = "systems/CT-1/readings/tower|dip-slide||1/value";

    [Fact]
    public async Task PendingResult_IsOneTapAway_AndAnOldRoundComesByItself_NotWhileAFormIsOpen()
    {
        await using var host = await JobHost.StartAsync();
        Assert.True(Moment.TryParse("2025-03-29T08:05:00+00:00", out var taken));
        var visit = SampleFirm.Visit(JobHost.Site, "2025-03-29T08:05:00+00:00");
        var slide = new Reading { At = "tower", Test = "dip-slide", Unit = "[CFU]/mL", NotTaken = SystemVisit.ResultPending, TakenAt = taken, Incubation = new Incubation { Hours = 48 } };
        visit = visit with { Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings, slide] }] };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
        await using var tablet = await Tablet.StartAsync(host.Address, "results");
        await tablet.RegisterAsync();

        var row = tablet.Page.Locator(".stop").Filter(new() { HasText = "Dip slide" });
        await Expect(row.Locator(".mark.due")).ToHaveTextAsync("Incubation is over");
        await tablet.PictureAsync("results");
        await row.GetByRole(AriaRole.Link).ClickAsync();
        await Expect(tablet.Page.Locator(".lb-step").Filter(new() { HasText = EntryTexts.Samples.En })).ToHaveAttributeAsync("aria-current", "step");
        await Expect(tablet.Page.Locator("#timers-over")).ToContainTextAsync("Read it now");
        await tablet.Page.EnterAsync(Value, "1000");
        await tablet.PictureAsync("result");

        // The round is made old while the form is open: it is left alone, until the form is.
        var asked = new List<string>();
        tablet.Page.Request += (_, request) =>
        {
            if (request.Url.EndsWith("/round/stops", StringComparison.Ordinal))
            {
                lock (asked)
                {
                    asked.Add(request.Url);
                }
            }
        };
        await tablet.AskAsync<object?>("store.js", """
            async (store) => {
              const keys = await import("/capture/keys.js");
              const row = await store.get("round", "today:RYA");
              const round = JSON.parse(await keys.openForDevice(row.sealed));
              await store.put("round", { ...row, sealed: await keys.sealForDevice(JSON.stringify({ ...round, at: "2025-03-31T02:00:00Z" })) });
              dispatchEvent(new Event("online"));
              await fetch("/api/v1/round");
            }
            """);
        Assert.Empty(asked);
        await tablet.Page.RunAndWaitForRequestAsync(tablet.GoHomeAsync, request => request.Url.EndsWith("/round/stops", StringComparison.Ordinal));
        await tablet.UntilAsync("""
            async () => {
              const { today } = await import("/capture/round.js");
              return (await today("RYA")).at > "2025-03-31T08:00";
            }
            """);
        await tablet.Page.Locator(".stop").Filter(new() { HasText = "of R. Yaffle" }).GetByRole(AriaRole.Link, new() { Name = "Go on" }).ClickAsync();
        await tablet.Page.StepAsync(EntryTexts.Samples.En);
        await Expect(tablet.Page.Field(Value)).ToHaveValueAsync("1000");
    }
}
