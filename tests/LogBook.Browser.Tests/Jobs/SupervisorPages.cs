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

    /// <summary>A visit that leaves the bleed forced on: it fills the lists.</summary>
    public static async Task<Visit> ReceiveVisitAsync(JobHost host)
    {
        var visit = SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00", bleedSwitch: SwitchPosition.ForcedOn);
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
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
        return
        [
            ("attention", "/attention"), ("finding", finding!), ("second look", "/attention/second-look"), ("review", "/review"),
            ("plan", "/round/plan"), ("leave", "/round/leave"), ("patch", "/round/patch?from=RYA"), ("pack list", "/round/pack?person=RYA"),
            ("sites", "/sites"), ("site", $"/sites/{JobHost.Site}"), ("take-over pack", $"/sites/{JobHost.Site}/take-over"),
            ("site history", System), ("compare", $"/history/compare?systems={JobHost.Site}/CT-1,YAF-1/CT-1"), ("settings", System + "/settings"),
            ("re-entry sheet", System + "/re-entry"), ("dose plan", System + "/dose-plan"), ("probe record", System + "/probe"), ("meter record", System + "/meters"), ("pump output", System + "/pumps"),
            ("visits", "/visits"), ("visit", $"/visits/{visit.Id}"), ("summary", $"/visits/{visit.Id}/summary"), ("mail", "/mail"),
            ("clocks", "/clocks"), ("site clocks", $"/sites/{JobHost.Site}/clocks"), ("rule templates", "/setup/rules/templates"),
            ("shelf", "/shelf"), ("reorder list", "/shelf/order"), ("make-up watch", "/shelf/make-up"),
            ("quick phrases", "/setup/phrases"), ("access tokens", "/tokens"), ("record pack", $"/sites/{JobHost.Site}/records"), ("keeping", "/records/keeping"), ("move-in", "/setup/move-in"), ("rescue file", "/rescue"),
        ];
    }

    /// <summary>Goes to a page and waits until all of it stands.</summary>
    public static async Task GoToAsync(this IPage page, string name, string path)
    {
        await page.GoAsync(path);
        await Expect(page.Locator("main .loading:visible")).ToHaveCountAsync(0);
        if (name == "site history")
        {
            await page.ChartIsDrawnAsync();
        }
    }
}
