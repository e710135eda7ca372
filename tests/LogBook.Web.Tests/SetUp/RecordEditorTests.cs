using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;

namespace LogBook.Web.Tests.SetUp;

/// <summary>What was typed stays until it is saved, whatever is wrong and whoever else saved meanwhile.</summary>
public sealed class RecordEditorTests
{
    [Theory]
    [InlineData(Language.English, "ninety", "“ninety” is not a number")]
    [InlineData(Language.Spanish, "noventa", "«noventa» no es un número")]
    [InlineData(Language.Portuguese, "noventa", "“noventa” não é um número")]
    [Trait("goal", "R8")]
    public async Task Number_ThatIsNone_StaysAsTypedWithFieldAndValueNamed(Language language, string typed, string said)
    {
        await using var pages = await SetUpPages.ForAsync(language: language);
        var form = pages.New(SetUpKind.Product);
        SetUpPages.Fill(form, ("code", "P-40"), ("name", "Inhibitor P-40"), ("kind", "inhibitor"), ("doseMgPerL", typed));

        SetUpPages.Save(form);

        Assert.Equal(typed, form.Find("#f-doseMgPerL").GetAttribute("value"));
        var message = Assert.Single(form.FindAll("#form-problems li")).TextContent;
        Assert.Contains(said, message, StringComparison.Ordinal);
        Assert.Contains(form.Find("label[for=f-doseMgPerL]").TextContent.Trim(), message, StringComparison.Ordinal);
        Assert.Equal("f-doseMgPerL", form.Find("#form-problems button").GetAttribute("data-focus"));
        Assert.Contains(said, form.Find("#f-doseMgPerL-note").TextContent, StringComparison.Ordinal);
        Assert.Empty(await pages.Store.ListAsync(pages.Viewer, SetUpKind.Product));
    }

    [Fact]
    [Trait("goal", "R8")]
    public async Task Number_ThatCouldBeTwo_IsAskedAndSavedAsAnswered()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.New(SetUpKind.Product);
        SetUpPages.Fill(form, ("code", "P-40"), ("name", "Inhibitor P-40"), ("kind", "inhibitor"), ("densityKgPerL", "1,150"));
        SetUpPages.Save(form);
        Assert.Single(form.FindAll("#form-problems li"));

        form.FindAll("#f-densityKgPerL-note button").Single(button => button.TextContent.StartsWith("1.15 ", StringComparison.Ordinal)).Click();
        SetUpPages.SaveWell(form);

        Assert.Equal(1.15, (await pages.Store.FirmAsync(pages.Viewer)).Products["P-40"].DensityKgPerL);
    }

    [Fact]
    public async Task Issues_OfTheFormat_StandAtTheirFields_AllAtOnce()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        var form = pages.New(SetUpKind.Site);
        SetUpPages.Fill(form, ("code", "YAF-1"), ("customer", "YAF"), ("timeZone", "Europe/Yaffleford"), ("visitEveryDays", "0"));

        SetUpPages.Save(form);

        Assert.Equal(["f-name", "f-timeZone", "f-visitEveryDays"], form.FindAll("#form-problems button").Select(button => button.GetAttribute("data-focus")));
        Assert.Contains("Visit every: “0” was found, expected is a number above 0.", form.Find("#form-problems").TextContent, StringComparison.Ordinal);
        Assert.Contains("Time zone: “Europe/Yaffleford” was found", form.Find("#f-timeZone-note").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Issues_WithinAList_NameTheRow_AndLeadIntoIt()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.New(SetUpKind.Customer);
        SetUpPages.Add(form, "contacts");
        SetUpPages.Add(form, "contacts");
        SetUpPages.Fill(form, ("code", "YAF"), ("name", "Yaffleford College"), ("contacts0-name", "Estates office"), ("contacts0-email", "estates@yaffleford.example"), ("contacts1-name", "Laboratory"));

        SetUpPages.Save(form);

        Assert.Equal("f-contacts1-email", Assert.Single(form.FindAll("#form-problems button")).GetAttribute("data-focus"));
        Assert.Equal("Contact Laboratory: E-mail address: missing.", form.Find("#form-problems button").TextContent);
    }

    [Fact]
    public async Task Code_OnceSaved_CannotBeChanged()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);

        var form = pages.Record(SetUpKind.Customer, "yaf");

        Assert.True(form.Find("#f-code").HasAttribute("readonly"));
        Assert.Equal("YAF", form.Find("#f-code").GetAttribute("value"));
    }

    [Fact]
    public async Task Code_ThatIsTaken_IsRefusedAndOverwritesNothing()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        var form = pages.New(SetUpKind.Customer);
        SetUpPages.Fill(form, ("code", "yaf"), ("name", "Another"));

        SetUpPages.Save(form);

        Assert.Equal("f-code", form.Find("#form-problems button").GetAttribute("data-focus"));
        Assert.Equal("Yaffleford College", (await pages.Store.FirmAsync(pages.Viewer)).Customers["YAF"].Name);
    }

    [Fact]
    [Trait("goal", "R6")]
    public async Task ChangedMeanwhile_GoOn_PutsMineUponTheirs()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "P-40", Name = "Inhibitor", Kind = ProductKind.Inhibitor, DoseMgPerL = 90 }, 0);
        var form = pages.Record(SetUpKind.Product, "P-40");
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DoseMgPerL = 90 }, 1);
        SetUpPages.Fill(form, ("doseMgPerL", "85"));

        SetUpPages.Save(form);

        Assert.Equal(["Name on the labelInhibitor P-40Inhibitor", "Usual level in the system, as product90 mg/L85 mg/L"], form.FindAll("#form-meanwhile tbody tr").Select(row => row.TextContent));
        Assert.Equal("85", form.Find("#f-doseMgPerL").GetAttribute("value"));
        Assert.Equal(90, (await pages.Store.FirmAsync(pages.Viewer)).Products["P-40"].DoseMgPerL);

        form.Find("#go-on").Click();
        SetUpPages.SaveWell(form);

        var saved = (await pages.Store.FirmAsync(pages.Viewer)).Products["P-40"];
        Assert.Equal(("Inhibitor P-40", 85), (saved.Name, saved.DoseMgPerL));
    }

    [Fact]
    [Trait("goal", "R6")]
    public async Task ChangedMeanwhile_TakeOver_ShowsWhatStands()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "P-40", Name = "Inhibitor", Kind = ProductKind.Inhibitor }, 0);
        var form = pages.Record(SetUpKind.Product, "P-40");
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor }, 1);
        SetUpPages.Fill(form, ("name", "Mine"));
        SetUpPages.Save(form);

        form.Find("#take-over").Click();

        Assert.Equal("Inhibitor P-40", form.Find("#f-name").GetAttribute("value"));
        Assert.Empty(form.FindAll("#form-meanwhile"));
        Assert.Equal("Inhibitor P-40", (await pages.Store.FirmAsync(pages.Viewer)).Products["P-40"].Name);
    }

    [Fact]
    public async Task Retire_NeedsReasonAndYes_ThenRestoreBringsItBack()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        var form = pages.Record(SetUpKind.Customer, "YAF");
        form.Find("#retire").Click();
        form.Find(".confirm").Submit();
        Assert.Contains(SetUpTexts.ReasonNeeded.En, form.Markup, StringComparison.Ordinal);
        form.Find("#retire-why").Change("contract ended");
        form.Find(".confirm").Submit();
        Assert.Contains(SetUpTexts.SureNeeded.En, form.Markup.Replace("&quot;", "\"", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.NotEmpty((await pages.Store.FirmAsync(pages.Viewer)).Customers);

        form.Find("#retire-sure").Change(true);
        form.Find(".confirm").Submit();
        form.WaitForState(() => form.FindAll("#retired-note").Count == 1);

        Assert.Contains("contract ended", form.Find("#retired-note").TextContent, StringComparison.Ordinal);
        Assert.Empty((await pages.Store.FirmAsync(pages.Viewer)).Customers);

        form.Find("#retire").Click();
        form.Find("#retire-why").Change("new contract");
        form.Find("#retire-sure").Change(true);
        form.Find(".confirm").Submit();
        form.WaitForState(() => form.FindAll("#retired-note").Count == 0);

        Assert.Single((await pages.Store.FirmAsync(pages.Viewer)).Customers);
    }

    [Fact]
    public async Task Volume_InGallons_IsKeptAsEnteredBesideTheLitres()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford", TimeZone = "Europe/London" }, 0);
        var form = pages.New(SetUpKind.System);
        SetUpPages.Fill(form, ("site", "YAF-1"), ("code", "CT-1"), ("name", "Tower"), ("kind", "open-recirculating"), ("volumeL", "1000"), ("recirculationLPerMin", "100"));
        form.Find("#f-volumeL ~ select").Change("[gal_us]");
        form.Find("#f-recirculationLPerMin ~ select").Change("[gal_us]/min");
        SetUpPages.SaveWell(form);

        // 1 US gallon is 231 cubic inches, 3.785411784 L (NIST Handbook 44, appendix C).
        var system = (await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!;
        Assert.Equal(3785.411784, system.VolumeL!.Value, 9);
        Assert.Equal(378.5411784, system.RecirculationLPerMin!.Value, 9);
        var again = pages.Record(SetUpKind.System, "CT-1", "YAF-1");
        Assert.Equal("1000", again.Find("#f-volumeL").GetAttribute("value"));
        Assert.Equal("[gal_us]", again.Find("#f-volumeL ~ select option[selected]").GetAttribute("value"));
    }

    [Fact]
    public async Task RecordOnlySystem_AsksOnlyWhatApplies()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.New(SetUpKind.System);
        Assert.NotEmpty(form.FindAll("#f-drums"));

        SetUpPages.Fill(form, ("kind", "boiler"));

        Assert.Empty(form.FindAll("#f-drums, #f-pumps, #f-outputs, #f-probes, #f-bleedValveLPerH"));
        Assert.NotEmpty(form.FindAll("#f-meters"));
    }

    [Fact]
    [Trait("goal", "S8")]
    public async Task Product_DosedAboveItsLabel_IsCautioned()
    {
        await using var pages = await SetUpPages.ForAsync();
        var form = pages.New(SetUpKind.Product);

        SetUpPages.Fill(form, ("name", "Biocide N-15"), ("kind", "biocide"), ("doseMgPerL", "120"), ("labelMaxMgPerL", "100"));

        Assert.Contains(form.FindAll(".caution"), caution => caution.TextContent.Contains("Biocide N-15: 120\u00a0mg/L is above the label limit of 100\u00a0mg/L. Stop. The label is the limit.", StringComparison.Ordinal));
    }

    [Fact]
    [Trait("goal", "S8")]
    public async Task System_WithAcidAndOxidiserOnTheSite_IsCautioned()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford", TimeZone = "Europe/London" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "ACID", Name = "Acid", Kind = ProductKind.Acid }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "OX", Name = "Oxidiser", Kind = ProductKind.Biocide, Oxidising = true }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new WaterSystem { Site = "YAF-1", Code = "CT-2", Name = "Other tower", Kind = SystemKind.OpenRecirculating, Drums = [new Drum { Code = "D-AC", Product = "ACID", Shape = DrumShape.ByWeight, TareKg = 5, CapacityL = 100 }] }, 0);
        var form = pages.New(SetUpKind.System);
        SetUpPages.Fill(form, ("site", "YAF-1"), ("code", "CT-1"));
        SetUpPages.Add(form, "drums");
        Assert.Empty(form.FindAll(".caution"));

        SetUpPages.Fill(form, ("drums0-product", "OX"));

        Assert.Contains("Never together", form.Find(".caution").TextContent, StringComparison.Ordinal);
    }
}
