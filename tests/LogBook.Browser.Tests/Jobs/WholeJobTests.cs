using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using LogBook.Web.Features.Attention;
using LogBook.Web.Features.Round;
using LogBook.Web.Features.Visits;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using MimeKit;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The whole job in a real browser: round, visit, finding, mail, amendment, second mail.</summary>
public sealed class WholeJobTests
{
    private static readonly TimeSpan MailWithin = TimeSpan.FromSeconds(60);

    private static readonly string DipSlide = new ReadingKey(SamplePoints.Tower, TestCodes.DipSlide, null).In("CT-1");

    [Fact]
    [Trait("goal", "S3")]
    public async Task Job_RoundToSecondMail_IsPlayedThrough()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("whole-job");

        var technician = await browser.OpenAsync(host.Address);
        await technician.SignInAsync(JobHost.Technician);
        await Expect(technician.Locator("main h1")).ToHaveTextAsync(RoundPageTexts.Title.En);
        await browser.PictureAsync(technician, "round");
        await technician.Locator($"a[href='/visit/{JobHost.Site}']").ClickAsync();
        await FillVisitAsync(browser, technician);
        await CloseAsync(browser, technician);
        var visitId = technician.Url[^36..];

        var supervisor = await browser.OpenAsync(host.Address);
        await supervisor.SignInAsync(JobHost.Supervisor);
        await SeeFindingAsync(browser, supervisor);

        var first = await host.Inbox.NextAsync(mail => MailFigures.Plain(mail).Contains(SummaryTexts.Reference.In(Language.Spanish, visitId, 1), StringComparison.Ordinal), MailWithin);
        FirstMailIsRight(first);
        await ResultsAreRightAsync(host, Guid.Parse(visitId));
        await ShowAsync(browser, host, first, "mail");

        // Two days later the slide has been read.
        host.Clock.Start(new DateTime(2025, 4, 2, 8, 0, 0, DateTimeKind.Utc));
        await AmendAsync(browser, technician, visitId);

        await supervisor.GoAsync("/attention");
        await Expect(Finding(supervisor, FindingKinds.MicrobiologyHigh)).ToBeVisibleAsync();
        var second = await host.Inbox.NextAsync(mail => MailFigures.Plain(mail).Contains(SummaryTexts.Reference.In(Language.Spanish, visitId, 2), StringComparison.Ordinal), MailWithin);
        SecondMailIsRight(second);
        await ShowAsync(browser, host, second, "second-mail");
        Assert.Equal(2, host.Inbox.Messages.Count(mail => MailFigures.Plain(mail).Contains(visitId, StringComparison.Ordinal)));

        Assert.DoesNotContain(browser.Console, line => line.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(browser.Console, line => line.StartsWith("uncaught", StringComparison.Ordinal) || line.StartsWith("error", StringComparison.Ordinal));
    }

    private static async Task FillVisitAsync(TestBrowser browser, IPage page)
    {
        await ChooseAsync(page, TypedVisit.Of("running"), EntryTexts.Yes.En);
        await page.EnterAsync("visit/notes", "new shift pattern since the middle of March");
        await browser.PictureAsync(page, "arrive");

        await page.StepAsync(EntryTexts.Controller.En);
        await page.EnterAllAsync(TypedVisit.Controller);
        await ButtonAsync(page, StepTexts.AllAutomaticFound);
        await TypedVisit.WalkAsync(page);
        await browser.PictureAsync(page, "controller");

        await page.StepAsync(EntryTexts.Reference.En);
        await page.Field(TypedVisit.Of("probes", "C1", "instrument")).SelectOptionAsync("HM-1");
        await page.EnterAllAsync(TypedVisit.Reference);

        await page.StepAsync(EntryTexts.Water.En);
        await page.EnterAllAsync(TypedVisit.Water);
        await Expect(page.Locator(".lb-mark.lb-outside")).ToContainTextAsync(EntryTexts.AboveRange.En);
        await browser.PictureAsync(page, "water");

        await page.StepAsync(EntryTexts.Stock.En);
        await page.EnterAllAsync(TypedVisit.Stock);
        await browser.PictureAsync(page, "stock");

        await page.StepAsync(EntryTexts.Adjust.En);
        await page.GetByRole(AriaRole.Button, new() { Name = EventWords.OutputsTested.En, Exact = true }).ClickAsync();
        await ButtonAsync(page, StepTexts.AllAutomaticLeft);
        Assert.True(TypedVisit.Controller.Count + TypedVisit.Reference.Count + TypedVisit.Water.Count + TypedVisit.Stock.Count >= 25);
    }

    private static async Task CloseAsync(TestBrowser browser, IPage page)
    {
        await page.StepAsync(EntryTexts.Close.En);
        await page.Locator("#close-visit").ClickAsync();
        await Expect(page.GetByText(EntryTexts.CloseFirst.En)).ToBeVisibleAsync();
        await browser.PictureAsync(page, "close-gate");

        await page.GetByRole(AriaRole.Button, new() { Name = EntryTexts.Add.In(Language.English, StepTexts.Action.En), Exact = true }).First.ClickAsync();
        var action = page.GetByLabel(StepTexts.ActionFor.En.Replace("{0}", string.Empty, StringComparison.Ordinal)).First;
        await action.FillAsync("Test pH again within a week");
        await action.BlurAsync();
        await TypedVisit.SayWhoAndWhenAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.SignAs.In(Language.English, "R. Yaffle"), Exact = true }).ClickAsync();
        await page.EnterAsync("visit/signatures/Customer/absentReason", "nobody in the office");
        await Expect(page.GetByText(EntryTexts.NothingOpen.En)).ToBeVisibleAsync();
        await browser.PictureAsync(page, "close");
        await page.Locator("#close-visit").ClickAsync();
        await page.WaitForURLAsync("**/visits/*");
        await Expect(page.Locator("#figures")).ToBeVisibleAsync();
        await browser.PictureAsync(page, "visit");
    }

    private static async Task SeeFindingAsync(TestBrowser browser, IPage page)
    {
        await Expect(page.Locator("main h1")).ToHaveTextAsync(AttentionTexts.Title.En);
        var finding = Finding(page, FindingKinds.RangeOut);
        await Expect(finding).ToContainTextAsync("PLU-1");
        await Expect(finding).ToContainTextAsync(AttentionTexts.AgeToday.En);

        // pH 9.3 with a standard uncertainty of 0.1, so ± 0.2 at k = 2 (JCGM 100:2008, 6.2); limits of the programme.
        await Expect(finding).ToContainTextAsync("pH 9.3 (pH 9.1 to 9.5); limit pH 7.5 to 9");
        await browser.PictureAsync(page, "attention");
        await finding.GetByRole(AriaRole.Link).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = AttentionTexts.Evidence.En, Exact = true })).ToBeVisibleAsync();
        await Expect(page.Locator("main table").First).ToContainTextAsync("pH 9.1 to 9.5");
        await browser.PictureAsync(page, "finding");
    }

    private static void FirstMailIsRight(MimeMessage mail)
    {
        Assert.Equal("maintenance@pludworth.example", mail.To.Mailboxes.Single().Address);
        Assert.StartsWith("Resumen de la visita: Pludworth Mouldings", mail.Subject, StringComparison.Ordinal);

        // Cycles are the ratio of a constituent that stays in the water, tower over make-up
        // (UFC 3-240-13FN, 25 May 2005, cycles of concentration: 800/300 = 2.67).
        var cyclesByChloride = 103.5 / 23;
        Assert.Equal(4.5, cyclesByChloride, 10);

        // Conductivity: 1232/300 = 4.107 as read. It under-reads concentrated water; C (1 - 0.025 (C - 1)) is what is read at C cycles,
        // from waters computed with PHREEQC, so 0.025 C² - 1.025 C + 4.107 = 0, of which the smaller root is meant: 4.5005.
        var read = 1232.0 / 300;
        var cyclesByConductivity = (1.025 - Math.Sqrt((1.025 * 1.025) - (4 * 0.025 * read))) / (2 * 0.025);
        Assert.Equal(4.5005, cyclesByConductivity, 4);
        MailFigures.Equal(mail, FigureCodes.CyclesByChloride, null, cyclesByChloride);
        MailFigures.Equal(mail, FigureCodes.CyclesByConductivity, null, cyclesByConductivity);

        // Make-up between the two readings of the dial.
        const double MakeUp = 3_180_000 - 2_520_000;
        MailFigures.Equal(mail, FigureCodes.MakeUp, null, MakeUp);

        // What leaves as liquid is W = MU/C, the rest evaporates: MU = E + B + D and C = MU/(B + D)
        // (UFC 3-240-13FN; GEMI water planner, cooling tower example: E = 114,048, B = 23,760, D = 14,256, MU = 152,064, C = 4).
        Assert.Equal(4, 152_064.0 / (23_760 + 14_256), 6);
        var lost = MakeUp / cyclesByChloride;
        MailFigures.Equal(mail, FigureCodes.Evaporation, null, MakeUp - lost);

        // Controlled bleed: 535 - 390 hours at 985 L/h, timed on 3 February.
        MailFigures.Equal(mail, FigureCodes.Bleed, null, (535 - 390) * 985.0);

        // Product: 100 mg/L in the water lost (use = dose x MU / cycles), at 1.12 kg/L. So few levels in cm count as a gauge, so that a
        // window tells only over two intervals; both had the same water.
        var expected = 100 * 2 * lost / 1e6 / 1.12;

        // The drum was found at 31.5 cm on 3 February and today; 26 L were filled in after the first, 25 L after the last.
        const double used = 26;
        MailFigures.Equal(mail, FigureCodes.ProductExpected, "Inhibitor P-40", expected);
        MailFigures.Equal(mail, FigureCodes.ProductUsed, "Inhibitor P-40", used);
        MailFigures.Equal(mail, FigureCodes.UsedOverExpected, "Inhibitor P-40", used / expected);

        // Probe error as found, in % of the reference.
        MailFigures.Equal(mail, FigureCodes.ProbeError, "C1", 100 * ((1200.0 / 1232) - 1));

        foreach (var part in new[] { MailFigures.Plain(mail), MailFigures.Html(mail) })
        {
            Assert.Contains("pH\u00a09,3", part, StringComparison.Ordinal);
            Assert.Contains(SummaryTexts.Above.Es, part, StringComparison.Ordinal);
            Assert.Contains("25\u00a0L", part, StringComparison.Ordinal);
            Assert.DoesNotContain("UFC/mL", part, StringComparison.Ordinal);
        }
    }

    // The mail rounds to the last digit of the uncertainty; the same numbers as they are kept, to 0.05 %.
    private static async Task ResultsAreRightAsync(JobHost host, Guid visitId)
    {
        var visit = await host.App.Services.GetRequiredService<VisitQuery>().OfAsync(Viewer.System("test"), visitId);
        double Kept(string code, string about = "") => visit!.Figures.Single(f => f.Figure.Code == code && f.Figure.About == about).Figure.Estimate!.Value;
        void Near(double byHand, double kept) => Assert.InRange(kept / byHand, 0.9995, 1.0005);

        Near(103.5 / 23, Kept(FigureCodes.CyclesByChloride));
        Near(4.5005, Kept(FigureCodes.CyclesByConductivity));
        Near(660_000, Kept(FigureCodes.MakeUp));
        Near(660_000 / 4.5, Kept(FigureCodes.LiquidLoss));
        Near(100 * 2 * 660_000 / 4.5 / 1e6 / 1.12, Kept(FigureCodes.ProductExpected, "D-INH"));
        Near(26, Kept(FigureCodes.ProductUsed, "D-INH"));
        Near(-100 * 32.0 / 1232, Kept(FigureCodes.ProbeError, "C1"));
    }

    private static async Task AmendAsync(TestBrowser browser, IPage page, string visitId)
    {
        await page.GoAsync($"/visits/{visitId}");
        await page.Locator($"a[href='/visits/{visitId}/amend']").ClickAsync();
        await page.StepAsync(EntryTexts.Samples.En);
        await page.EnterAsync(DraftKey.Under(DipSlide, "value"), "20000");
        await page.Locator("section", new() { Has = page.Field(DraftKey.Under(DipSlide, "value")) }).Locator("summary").ClickAsync();
        await page.Field(DraftKey.Under(DipSlide, "takenAt")).FillAsync("2025-03-31T09:20");
        await page.Field(DraftKey.Under(DipSlide, "resultAt")).FillAsync("2025-04-02T08:30");
        await page.Field(DraftKey.Under(DipSlide, "resultAt")).BlurAsync();
        await browser.PictureAsync(page, "dip-slide");
        await page.StepAsync(EntryTexts.Close.En);
        await page.EnterAsync(TypedVisit.Of("ranges", SamplePoints.Tower + "/" + TestCodes.DipSlide, "reason"), "another slide is in the incubator");
        await page.EnterAsync("visit/amendReason", "dip slide read after 48 hours");
        await page.Locator("#close-visit").ClickAsync();
        await page.WaitForURLAsync($"**/visits/{visitId}");
        await Expect(page.Locator("main")).ToContainTextAsync(VisitsTexts.Version.In(Language.English, 2));
        await Expect(page.Locator("section[aria-labelledby=versions] table")).ToContainTextAsync("20,000 CFU/mL");
        await browser.PictureAsync(page, "version-2");
    }

    private static void SecondMailIsRight(MimeMessage mail)
    {
        Assert.Contains("(versión 2)", mail.Subject, StringComparison.Ordinal);
        foreach (var part in new[] { MailFigures.Plain(mail), MailFigures.Html(mail) })
        {
            Assert.Contains("20\u00a0000\u00a0UFC/mL", part, StringComparison.Ordinal);
            Assert.Contains("dip slide read after 48 hours", part, StringComparison.Ordinal);
            Assert.Contains("pH\u00a09,3", part, StringComparison.Ordinal);
        }
    }

    private static ILocator Finding(IPage page, string kind) => page.Locator("li.finding", new() { HasText = FindingTexts.NameOf(kind).En });

    private static async Task ChooseAsync(IPage page, string key, string words)
    {
        var button = page.Locator($"fieldset:has(#{DraftKey.ElementId(key)}-name) button", new() { HasText = words });
        await button.ClickAsync();
        await Expect(button).ToHaveAttributeAsync("aria-pressed", "true");
    }

    private static async Task ButtonAsync(IPage page, Text words)
    {
        var button = page.GetByRole(AriaRole.Button, new() { Name = words.En, Exact = true });
        await button.ClickAsync();
        await Expect(button).ToHaveCountAsync(0);
    }

    private static async Task ShowAsync(TestBrowser browser, JobHost host, MimeMessage mail, string name)
    {
        var reader = await browser.OpenAsync(host.Address);
        await reader.SetContentAsync(mail.HtmlBody!);
        await browser.PictureAsync(reader, name);
        await reader.Context.CloseAsync();
    }
}
