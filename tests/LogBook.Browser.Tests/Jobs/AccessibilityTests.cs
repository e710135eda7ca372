using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>Axe finds nothing on the main pages at the size of a tablet.</summary>
public sealed class AccessibilityTests
{
    private static readonly EntryStepName[] Steps =
    [
        new("arrive", EntryTexts.Arrive.En), new("controller", EntryTexts.Controller.En), new("reference", EntryTexts.Reference.En), new("water", EntryTexts.Water.En),
        new("stock", EntryTexts.Stock.En), new("tower", EntryTexts.Tower.En), new("samples", EntryTexts.Samples.En), new("adjust", EntryTexts.Adjust.En), new("close", EntryTexts.Close.En),
    ];

    [Fact]
    [Trait("goal", "U3")]
    public async Task Axe_MainPages_FindsNothing()
    {
        await using var host = await JobHost.StartAsync();
        var visit = SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00");
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, visit, IntakeSource.Page));
        await using var browser = await TestBrowser.StartAsync("axe");
        var found = new List<string>();

        var page = await browser.OpenAsync(host.Address);
        await page.GotoAsync("/account/sign-in");
        await LookAsync(page, "sign-in", found);
        await page.SignInAsync(JobHost.Technician);
        await LookAsync(page, "round", found);
        await page.GoAsync("/visit/" + JobHost.Site);
        foreach (var step in Steps)
        {
            await page.StepAsync(step.Shown);
            await LookAsync(page, "visit form, " + step.Name, found);
        }

        var supervisor = await browser.OpenAsync(host.Address);
        await supervisor.SignInAsync(JobHost.Supervisor);
        foreach (var (name, path) in new[]
        {
            ("attention", "/attention"), ("sites", "/sites"), ("site", $"/sites/{JobHost.Site}"), ("site history", $"/sites/{JobHost.Site}/systems/CT-1"),
            ("visits", "/visits"), ("visit", $"/visits/{visit.Id}"), ("summary", $"/visits/{visit.Id}/summary"), ("mail", "/mail"),
        })
        {
            await supervisor.GoAsync(path);
            await Expect(supervisor.Locator("main .loading:visible")).ToHaveCountAsync(0);
            await browser.PictureAsync(supervisor, name);
            await LookAsync(supervisor, name, found);
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    private static async Task LookAsync(IPage page, string name, List<string> found)
    {
        var result = await page.RunAxe(new AxeRunOptions());
        Assert.NotEmpty(result.Passes);
        found.AddRange(result.Violations.SelectMany(violation => violation.Nodes.Select(node => $"{name}: {violation.Id} ({violation.Impact}) at {node.Target} {node.Html}")));
    }

    private sealed record EntryStepName(string Name, string Shown);
}
