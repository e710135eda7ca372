using LogBook.Application.Visits;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using Microsoft.Extensions.DependencyInjection;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>An action that a visit asked for long ago is on the tablet without that visit.</summary>
public sealed class StandingActionsTests
{
    private static readonly VisitAction Wanted = new()
    {
        Id = Guid.Parse("0198b000-0000-7000-8000-0000000000a1"), Text = "renew the float valve", Owner = "RYA", Due = new DateOnly(2024, 7, 1), State = ActionState.Open,
    };

    [Fact]
    public async Task Action_OlderThanTheVisitsOfTheRound_StandsInTheFormWithoutSignal()
    {
        await using var host = await JobHost.StartAsync();
        for (var week = 0; week <= RoundQuery.VisitsPerSite; week++)
        {
            await ReceiveAsync(host, week);
        }

        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "standing-actions");
        await tablet.RegisterAsync();
        link.Cut();
        Assert.DoesNotContain(Wanted.Text, await tablet.AskAsync<string>("round.js", "(round) => import('/capture/people.js').then((people) => round.sheet(people.at(), 'PLU-1'))"), StringComparison.Ordinal);

        await tablet.OpenVisitAsync(JobHost.Site);

        await Expect(tablet.Page.Locator(".lb-since")).ToContainTextAsync(Wanted.Text);
        await tablet.PictureAsync("stands");
    }

    // The first one asks for it; those after it are all that a round holds of a site.
    private static async Task ReceiveAsync(JobHost host, int week)
    {
        var visit = new Visit
        {
            Id = Guid.Parse($"0198b000-0000-7000-8000-0000000001{week:00}"),
            Site = JobHost.Site,
            Technician = "RYA",
            Kind = VisitKind.Audit,
            Arrived = Moment.Of(new DateTimeOffset(2024, 6, 3, 9, 5, 0, TimeSpan.Zero).AddDays(7 * week)),
            Left = Moment.Of(new DateTimeOffset(2024, 6, 3, 9, 35, 0, TimeSpan.Zero).AddDays(7 * week)),
            Systems = [new VisitedSystem { System = "CT-1", Running = true, Actions = week == 0 ? [Wanted] : [] }],
        };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
    }
}
