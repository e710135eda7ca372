using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Visits;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>Every page of the supervisor's desk, by name and address, over a firm with a visit and a finding that cannot wait.</summary>
public static class SupervisorPages
{
    private const string System = $"/sites/{JobHost.Site}/systems/CT-1";

    private const string AnswerOfFinding = "finding, how";
    private const string AnswerOfComparison = "compare, how";

    /// <summary>A visit that leaves the bleed forced on and came once more with another result: it fills the lists.</summary>
    public static async Task<Visit> ReceiveVisitAsync(JobHost host)
    {
        var visit = SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00", bleedSwitch: SwitchPosition.ForcedOn);
        var intake = host.App.Services.GetRequiredService<VisitIntake>();
        Assert.IsType<IntakeOutcome.Stored>(await intake.ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
        var other = SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00", inhibitor: 59, bleedSwitch: SwitchPosition.ForcedOn) with { Id = visit.Id };
        Assert.IsType<IntakeOutcome.Conflict>(await intake.ReceiveAsync(host.TechnicianViewer, other, IntakeSource.Page));
        return visit;
    }

    /// <summary>The pages; what stands only in a list is taken from it.</summary>
    /// <param name="page">A page of a supervisor who is signed in.</param>
    /// <param name="visit">A visit that was received.</param>
    public static async Task<IReadOnlyList<(string Name, string Path)>> OfAsync(IPage page, Visit visit)
    {
        await page.GoAsync("/attention");
        await Expect(page.Locator("main a[href*='/attention/finding']").First).ToBeVisibleAsync();
        var finding = await page.Locator("main a[href*='/attention/finding']").First.GetAttributeAsync("href");
        await page.GoAsync("/visits/conflicts");
        var conflict = await page.Locator("main a[href*='/visits/conflicts/']").First.GetAttributeAsync("href");
        var compare = $"/history/compare?systems={JobHost.Site}/CT-1,YAF-1/CT-1";
        return
        [
            ("round", "/"), ("attention", "/attention"), ("finding", finding!), (AnswerOfFinding, finding!), ("second look", "/attention/second-look"), ("review", "/review"),
            ("plan", "/round/plan"), ("leave", "/round/leave"), ("patch", "/round/patch?from=RYA"), ("pack list", "/round/pack?person=RYA"),
            ("sites", "/sites"), ("site", $"/sites/{JobHost.Site}"), ("take-over pack", $"/sites/{JobHost.Site}/take-over"),
            ("site history", System), ("sheet", System + "/sheet"), ("compare", compare), (AnswerOfComparison, compare), ("settings", System + "/settings"),
            ("re-entry sheet", System + "/re-entry"), ("dose plan", System + "/dose-plan"), ("probe record", System + "/probe"), ("meter record", System + "/meters"), ("pump output", System + "/pumps"),
            ("visits", "/visits"), ("visit", $"/visits/{visit.Id}"), ("summary", $"/visits/{visit.Id}/summary"), ("mail", "/mail"), ("conflicts", "/visits/conflicts"), ("conflict", conflict!), ("search", "/search?q=yaf"), ("account", "/account"),
            ("clocks", "/clocks"), ("site clocks", $"/sites/{JobHost.Site}/clocks"), ("rule templates", "/setup/rules/templates"),
            ("shelf", "/shelf"), ("reorder list", "/shelf/order"), ("make-up watch", "/shelf/make-up"),
            ("quick phrases", "/setup/phrases"), ("access tokens", "/tokens"), ("record pack", $"/sites/{JobHost.Site}/records"), ("keeping", "/records/keeping"), ("move-in", "/setup/move-in"), ("rescue file", "/rescue"),
        ];
    }

    /// <summary>Goes to a page and waits until all of it stands.</summary>
    public static async Task GoToAsync(this IPage page, string name, string path)
    {
        // The account's pages are plain ones: they post forms and hold no line to the server.
        if (path.StartsWith("/account", StringComparison.Ordinal))
        {
            await page.GotoAsync(path);
            await Expect(page.Locator("main h1")).ToBeVisibleAsync();
            return;
        }

        await page.GoAsync(path);
        await Expect(page.Locator("main .loading:visible")).ToHaveCountAsync(0);
        switch (name)
        {
            case "site history":
                await page.ChartIsDrawnAsync();
                break;
            case AnswerOfFinding:
                await OpenAsync(page, "main details.figure-view summary", "main .figure-explained");
                break;
            case AnswerOfComparison:
                await OpenAsync(page, "main .compared button", "main .explained-row .figure-explained");
                break;
        }
    }

    // Without the pointer's focus: who goes by keyboard still begins at the top.
    private static async Task OpenAsync(IPage page, string opener, string answer)
    {
        await page.Locator(opener).First.EvaluateAsync("one => one.click()");
        await Expect(page.Locator(answer).First).ToBeVisibleAsync();
    }
}
