using AngleSharp.Dom;
using Bunit;
using LogBook.Application.Sites;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.Thresholds;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.SetUp;

public sealed class ThresholdPageTests
{
    private const string Pulses = "thresholds:pulsesPercent";

    private static SettingStore Settings(SetUpPages pages) => pages.App.Services.GetRequiredService<SettingStore>();

    private static async Task<double> InForceAsync(SetUpPages pages) => (await pages.Store.FirmAsync(pages.Viewer)).Engine.Thresholds.PulsesPercent.Value;

    private static string Plain(IElement element) => element.TextContent.Replace('\u00a0', ' ').Trim();

    [Fact]
    public async Task Save_ThenUndo_IsInForceThenNot()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, null));
        Assert.Equal("3 %", Plain(form.Find("#in-force")));

        SetUpPages.Fill(form, ("value", "4.5"), ("why", "old registers"));
        SetUpPages.SaveWell(form);
        form.WaitForAssertion(() => Assert.Equal("4.5 %", Plain(form.Find("#in-force"))));
        Assert.Equal(4.5, await InForceAsync(pages));

        form.Find("#threshold-undo").Click();
        form.WaitForAssertion(() => Assert.Equal("3 %", Plain(form.Find("#in-force"))));
        Assert.Equal(3, await InForceAsync(pages));
        Assert.Equal(["undone", "old registers"], form.FindAll("td[data-label=Reason]").Select(cell => cell.TextContent));
    }

    [Theory]
    [InlineData(Language.English, "90", "because", "f-value", "Difference between dial and total: 90 % was found; expected is a number of 0.5 to 50 %.")]
    [InlineData(Language.Spanish, "90", "porque", "f-value", "Diferencia entre contador y total: se encontró 90 %; se espera un número de 0,5 a 50 %.")]
    [InlineData(Language.Portuguese, "", "porque", "f-value", "Valor próprio: falta; esperado 0,5 a 50 %.")]
    [InlineData(Language.English, "4", "", "f-why", "A reason is needed.")]
    [InlineData(Language.English, "about four", "because", "f-value", "Own value (%): “about four” is not a number; expected are digits, as 2.5.")]
    public async Task Save_WhatCannotBe_StaysTypedAndSaysWhatIsExpected(Language language, string value, string why, string place, string message)
    {
        await using var pages = await SetUpPages.ForAsync(language: language);
        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, null));

        SetUpPages.Fill(form, ("value", value), ("why", why));
        SetUpPages.Save(form);

        form.WaitForAssertion(() => Assert.NotNull(form.Find("#form-problems button")));
        var issue = form.Find("#form-problems button");
        Assert.Equal((place, message), (issue.GetAttribute("data-focus"), Plain(issue)));
        Assert.Equal(value, form.Find("#f-value").GetAttribute("value"));
        Assert.Equal(3, await InForceAsync(pages));
    }

    [Fact]
    public async Task Undo_WithSomethingTyped_KeepsItInTheForm()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, null));
        SetUpPages.Fill(form, ("value", "4.5"), ("why", "old registers"));
        SetUpPages.SaveWell(form);
        form.WaitForAssertion(() => Assert.Equal("4.5 %", Plain(form.Find("#in-force"))));

        SetUpPages.Fill(form, ("value", "5.5"), ("why", "worse than thought"));
        form.Find("#threshold-undo").Click();
        form.WaitForAssertion(() => Assert.Equal("3 %", Plain(form.Find("#in-force"))));

        Assert.Equal("5.5", form.Find("#f-value").GetAttribute("value"));
        SetUpPages.SaveWell(form);
        form.WaitForAssertion(() => Assert.Equal("5.5 %", Plain(form.Find("#in-force"))));
        Assert.Equal(5.5, await InForceAsync(pages));
    }

    [Fact]
    public async Task Reset_AsksForAReasonFirst()
    {
        await using var pages = await SetUpPages.ForAsync();
        await Settings(pages).SaveAsync(pages.Viewer, new OwnSetting(Pulses, null, null, 6, "old registers"), 0);
        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, null));

        form.Find("#reset").Click();
        form.Find(".confirm").Submit();
        form.WaitForAssertion(() => Assert.Equal("Reason: missing. Say in a few words why.", Plain(form.Find("#threshold-problem"))));
        Assert.Equal(6, await InForceAsync(pages));

        form.Find("#reset-why").Change("renewed");
        form.Find(".confirm").Submit();
        form.WaitForAssertion(() => Assert.Equal("3 % is in force again.", Plain(form.Find("#threshold-done"))));
        Assert.Equal(3, await InForceAsync(pages));
    }

    [Fact]
    public async Task Save_SomebodyElseWasFaster_ShowsBoth()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, null));
        await Settings(pages).SaveAsync(pages.Viewer, new OwnSetting(Pulses, null, null, 6, "old registers"), 0);

        SetUpPages.Fill(form, ("value", "4"), ("why", "other"));
        SetUpPages.Save(form);

        form.WaitForAssertion(() => Assert.Equal(["6", "old registers"], form.FindAll("#form-meanwhile td[data-label='Stands now']").Select(cell => cell.TextContent)));
        Assert.Equal(6, await InForceAsync(pages));
    }

    [Fact]
    public async Task List_ShowsEverySettingWithItsBasisAndFiltersOwnOnes()
    {
        await using var pages = await SetUpPages.ForAsync();
        await Settings(pages).SaveAsync(pages.Viewer, new OwnSetting(Pulses, null, null, 6, "old registers"), 0);

        var all = pages.Open<ThresholdsPage>(ThresholdLinks.List());
        Assert.Equal(Domain.Assessments.EngineSettingCatalogue.All.Count, all.FindAll("tbody tr").Count);
        Assert.All(all.FindAll("tbody tr"), row => Assert.NotEmpty(row.QuerySelector("td[data-label='Basis of the default']")!.TextContent));

        var own = pages.Open<ThresholdsPage>(ThresholdLinks.List() + "?own=yes");
        var row = Assert.Single(own.FindAll("tbody tr"));
        Assert.Equal(("3 %", "6 %"), (Plain(row.QuerySelector("td[data-label='Default']")!), Plain(row.QuerySelector("td[data-label='Own value']")!)));
    }

    [Fact]
    public async Task SystemOfItsOwn_TakesTheFirmsValueUntilItHasOne()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Site { Code = "YAF-1", Customer = "YAF", Name = "Main", TimeZone = "Europe/London" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new WaterSystem { Site = "YAF-1", Code = "CT-1", Name = "Tower", Kind = SystemKind.OpenRecirculating }, 0);
        await Settings(pages).SaveAsync(pages.Viewer, new OwnSetting(Pulses, null, null, 6, "old registers"), 0);

        var form = pages.Open<ThresholdPage>(ThresholdLinks.One(Pulses, "YAF-1/CT-1"));
        Assert.Equal("6 %", Plain(form.Find("#in-force")));
        SetUpPages.Fill(form, ("value", "8"), ("why", "older still"));
        SetUpPages.SaveWell(form);

        var engine = (await pages.Store.FirmAsync(pages.Viewer)).Engine;
        Assert.Equal((6.0, 8.0), (engine.Thresholds.PulsesPercent.Value, engine.For("YAF-1", "CT-1").Thresholds.PulsesPercent.Value));
        var list = pages.Open<ThresholdsPage>(ThresholdLinks.List("YAF-1/CT-1"));
        Assert.Contains(list.FindAll("#holds-for option").Select(option => option.TextContent), text => text == "YAF-1 / CT-1 (1 own)");
        Assert.DoesNotContain(list.FindAll("tbody tr th").Select(Plain), text => text.StartsWith("Meter or lot off", StringComparison.Ordinal));
    }
}
