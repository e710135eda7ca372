using Bunit;
using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.SetUp;

/// <summary>A firm that has nothing but an administrator begins to work.</summary>
public sealed class FirstFirmTests
{
    private const string Visit =
        """
        {"id": "0198a000-0000-7000-8000-0000000000f1", "site": "YAF-1", "technician": "RYA", "arrived": "2025-03-03T09:05:00+00:00", "left": "2025-03-03T10:00:00+00:00",
         "systems": [{"system": "CT-1", "running": true,
           "readings": [{"at": "tower", "test": "conductivity", "value": 1361, "unit": "uS/cm"}],
           "meters": [{"meter": "MU", "dial": 1200}],
           "drums": [{"drum": "D-INH", "level": 40, "unit": "cm"}]}]}
        """;

    [Fact]
    [Trait("goal", "U5")]
    public async Task Setup_FromNothing_ByFormsAlone_TakesAVisitIn()
    {
        await using var pages = await SetUpPages.ForAsync();

        var customer = pages.New(SetUpKind.Customer);
        SetUpPages.Add(customer, "contacts");
        SetUpPages.Fill(customer, ("code", "YAF"), ("name", "Yaffleford College"), ("contacts0-name", "Estates office"), ("contacts0-email", "estates@yaffleford.example"), ("contacts0-language", "es"));
        customer.Find("#f-contacts0-getsSummaries").Change(true);
        SetUpPages.SaveWell(customer);

        var person = pages.New(SetUpKind.Person);
        SetUpPages.Fill(person, ("code", "RYA"), ("name", "R. Yaffle"), ("role", "technician"));
        SetUpPages.SaveWell(person);

        var site = pages.New(SetUpKind.Site);
        SetUpPages.Fill(site, ("code", "YAF-1"), ("customer", "YAF"), ("name", "Yaffleford College"), ("timeZone", "Europe/London"), ("visitEveryDays", "7"), ("assignedTo", "RYA"), ("photosAllowed", "no"), ("summaryWithinHours", "24"));
        SetUpPages.SaveWell(site);

        var product = pages.New(SetUpKind.Product);
        SetUpPages.Fill(product, ("code", "P-40"), ("name", "Inhibitor P-40"), ("kind", "inhibitor"), ("densityKgPerL", "1,1"), ("doseMgPerL", "90"));
        SetUpPages.SaveWell(product);

        AddSystem(pages);
        AddProgramme(pages);

        var outcome = await pages.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(pages.Viewer, Visit, IntakeSource.Page);

        var stored = Assert.IsType<IntakeOutcome.Stored>(outcome);
        Assert.Equal(Guid.Parse("0198a000-0000-7000-8000-0000000000f1"), stored.VisitId);
        var firm = await pages.Store.FirmAsync(pages.Viewer);
        Assert.Equal(("estates@yaffleford.example", true), (firm.Customers["YAF"].Contacts[0].Email, firm.Customers["YAF"].Contacts[0].GetsSummaries));
        Assert.Equal(1.1, firm.Products["P-40"].DensityKgPerL);
        Assert.Equal((7, false, "RYA"), (firm.Sites["YAF-1"].VisitEveryDays, firm.Sites["YAF-1"].PhotosAllowed, firm.Sites["YAF-1"].AssignedTo));
        var system = firm.System("YAF-1", "CT-1")!;
        Assert.Equal(4500, system.VolumeL);
        Assert.Equal(DrumShape.VerticalCylinder, system.Drums[0].Shape);
        Assert.Equal((1000, 24.1), (system.Programmes[0].Feeds[0].EveryL, system.Programmes[0].Feeds[0].RunSeconds));
        Assert.Equal((1215, 1485, "uS/cm"), (system.Programmes[0].Ranges[0].Low, system.Programmes[0].Ranges[0].High, system.Programmes[0].Ranges[0].Unit));
    }

    [Fact]
    [Trait("goal", "U5")]
    public async Task Overview_EmptyFirm_SaysWhatComesFirst_AndNoMoreOnceAllIsThere()
    {
        await using var pages = await SetUpPages.ForAsync();
        var empty = pages.Open<SetUpPage>(SetUpLinks.Overview);

        Assert.Equal(6, empty.FindAll(".steps-list li").Count);
        Assert.Contains(SetUpTexts.Next.En, empty.Find(".steps-list li").TextContent, StringComparison.Ordinal);
        Assert.Equal(SetUpLinks.New(SetUpKind.Customer), empty.Find(".steps-list a").GetAttribute("href"));

        var customer = pages.New(SetUpKind.Customer);
        SetUpPages.Fill(customer, ("code", "YAF"), ("name", "Yaffleford College"));
        SetUpPages.SaveWell(customer);
        var begun = pages.Open<SetUpPage>(SetUpLinks.Overview);

        Assert.Contains(SetUpTexts.Done.En, begun.FindAll(".steps-list li")[0].TextContent, StringComparison.Ordinal);
        Assert.Contains(SetUpTexts.Next.En, begun.FindAll(".steps-list li")[1].TextContent, StringComparison.Ordinal);
    }

    private static void AddSystem(SetUpPages pages)
    {
        var system = pages.New(SetUpKind.System);
        SetUpPages.Fill(system, ("site", "YAF-1"), ("code", "CT-1"), ("name", "Cooling tower 1"), ("kind", "open-recirculating"), ("volumeL", "4500"), ("bleedValveLPerH", "1200"));
        SetUpPages.Add(system, "meters");
        SetUpPages.Fill(system, ("meters0-code", "MU"), ("meters0-measures", "make-up"), ("meters0-unit", "m3"), ("meters0-digits", "6"));
        SetUpPages.Add(system, "probes");
        SetUpPages.Fill(system, ("probes0-code", "C1"), ("probes0-of", "conductivity"));
        SetUpPages.Add(system, "outputs");
        SetUpPages.Fill(system, ("outputs0-code", "bleed"), ("outputs0-drives", "bleed"));
        SetUpPages.Add(system, "outputs");
        SetUpPages.Fill(system, ("outputs1-code", "inhibitor"), ("outputs1-drives", "feed"));
        SetUpPages.Add(system, "drums");
        SetUpPages.Fill(system, ("drums0-code", "D-INH"), ("drums0-product", "P-40"), ("drums0-shape", "vertical-cylinder"), ("drums0-capacityL", "200"), ("drums0-heightCm", "88"));
        SetUpPages.Add(system, "pumps");
        Assert.Contains(system.FindAll("#f-pumps0-drum option"), option => option.GetAttribute("value") == "D-INH");
        SetUpPages.Fill(system, ("pumps0-code", "P-INH"), ("pumps0-drum", "D-INH"), ("pumps0-output", "inhibitor"), ("pumps0-ratedLPerH", "4"));
        SetUpPages.SaveWell(system);
    }

    private static void AddProgramme(SetUpPages pages)
    {
        var programme = pages.Open<ProgrammePage>(SetUpLinks.NewProgramme("YAF-1", "CT-1"));
        SetUpPages.Fill(programme, ("from", "2025-01-06"), ("targetCycles", "4,5"), ("setPointUsPerCm", "1350"), ("differentialUsPerCm", "40"));
        SetUpPages.Add(programme, "ranges");
        SetUpPages.Fill(programme, ("ranges0-test", "conductivity"), ("ranges0-low", "1215"), ("ranges0-high", "1485"));
        SetUpPages.Add(programme, "feeds");
        SetUpPages.Fill(programme, ("feeds0-drum", "D-INH"), ("feeds0-mode", "by-make-up-volume"), ("feeds0-everyL", "1000"), ("feeds0-runSeconds", "24.1"));
        SetUpPages.SaveWell(programme);
    }
}
