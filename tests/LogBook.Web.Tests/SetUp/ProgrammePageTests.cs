using Bunit;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;

namespace LogBook.Web.Tests.SetUp;

/// <summary>Programmes succeed each other; what was judged by stays.</summary>
public sealed class ProgrammePageTests
{
    private static readonly DateOnly First = new(2025, 1, 6);

    [Fact]
    public async Task Copy_WithItsOwnDay_LeavesTheFirstAsItWas()
    {
        await using var pages = await WithSystemAsync();
        var form = pages.Open<ProgrammePage>(SetUpLinks.NewProgramme("YAF-1", "CT-1", First));
        Assert.Equal("1350", form.Find("#f-setPointUsPerCm").GetAttribute("value"));
        Assert.Equal("", form.Find("#f-from").GetAttribute("value"));

        SetUpPages.Fill(form, ("from", "2025-06-02"), ("setPointUsPerCm", "1400"));
        SetUpPages.SaveWell(form);

        var programmes = (await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!.Programmes.OrderBy(p => p.From).ToList();
        Assert.Equal([(First, 1350), (new DateOnly(2025, 6, 2), 1400)], programmes.Select(p => (p.From, p.SetPointUsPerCm)));
        Assert.Equal(1485, programmes[1].Ranges[0].High);
    }

    [Fact]
    public async Task Copy_OnADayThatIsTaken_IsRefused()
    {
        await using var pages = await WithSystemAsync();
        var form = pages.Open<ProgrammePage>(SetUpLinks.NewProgramme("YAF-1", "CT-1", First));

        SetUpPages.Fill(form, ("from", "2025-01-06"));
        SetUpPages.Save(form);

        Assert.Equal("f-from", form.Find("#form-problems button").GetAttribute("data-focus"));
        Assert.Single((await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!.Programmes);
    }

    [Fact]
    public async Task Past_IsNotChangedWithoutAWord()
    {
        await using var pages = await WithSystemAsync();
        var form = pages.Open<ProgrammePage>(SetUpLinks.Programme("YAF-1", "CT-1", First));
        Assert.Single(form.FindAll("#past-warning"));

        SetUpPages.Fill(form, ("setPointUsPerCm", "1360"));
        SetUpPages.Save(form);
        Assert.Contains(SetUpTexts.PastSureNeeded.En, form.Find("#form-problems").TextContent, StringComparison.Ordinal);
        Assert.Equal(1350, (await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!.Programmes[0].SetPointUsPerCm);

        form.Find("#past-sure").Change(true);
        SetUpPages.SaveWell(form);

        Assert.Equal(1360, (await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!.Programmes[0].SetPointUsPerCm);
    }

    [Fact]
    public async Task Feed_AsksWhatItsModeNeeds_AndNamesWhatIsMissing()
    {
        await using var pages = await WithSystemAsync();
        var form = pages.Open<ProgrammePage>(SetUpLinks.NewProgramme("YAF-1", "CT-1"));
        SetUpPages.Fill(form, ("from", "2025-06-02"));
        SetUpPages.Add(form, "feeds");
        SetUpPages.Fill(form, ("feeds0-drum", "D-INH"), ("feeds0-mode", "fixed-share"), ("feeds0-sharePercent", "120"));
        Assert.Empty(form.FindAll("#f-feeds0-everyL"));

        SetUpPages.Save(form);

        Assert.Equal(["f-feeds0-cycleMin", "f-feeds0-sharePercent"], form.FindAll("#form-problems button").Select(button => button.GetAttribute("data-focus")).Where(place => place != "f-feeds0-output"));
        Assert.Equal("120", form.Find("#f-feeds0-sharePercent").GetAttribute("value"));
    }

    [Fact]
    public async Task SystemForm_DoesNotTouchProgrammes()
    {
        await using var pages = await WithSystemAsync();
        var form = pages.Record(Application.Data.SetUpKind.System, "CT-1", "YAF-1");

        SetUpPages.Fill(form, ("name", "Tower on the roof"));
        SetUpPages.SaveWell(form);

        var system = (await pages.Store.FirmAsync(pages.Viewer)).System("YAF-1", "CT-1")!;
        Assert.Equal(("Tower on the roof", 1350), (system.Name, system.Programmes[0].SetPointUsPerCm));
    }

    private static async Task<SetUpPages> WithSystemAsync()
    {
        var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford", TimeZone = "Europe/London" }, 0);
        await pages.Store.SaveAsync(pages.Viewer, new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor }, 0);
        var saved = await pages.Store.SaveAsync(
            pages.Viewer,
            new WaterSystem
            {
                Site = "YAF-1",
                Code = "CT-1",
                Name = "Cooling tower 1",
                Kind = SystemKind.OpenRecirculating,
                Outputs = [new Output { Code = "inhibitor", Drives = OutputDrives.Feed }],
                Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 200, HeightCm = 88 }],
                Pumps = [new Pump { Code = "P-INH", Drum = "D-INH", Output = "inhibitor" }],
                Programmes = [new Programme { From = First, SetPointUsPerCm = 1350, Ranges = [new TestRange { At = "tower", Test = "conductivity", Low = 1215, High = 1485, Unit = "uS/cm" }] }],
            },
            0);
        Assert.IsType<Application.Data.SaveOutcome.Saved>(saved);
        return pages;
    }
}
