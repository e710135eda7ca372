using System.IO.Compression;
using Bunit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing;
using LogBook.Web.Features;
using LogBook.Web.Features.RecordPacks;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.MoveIn;
using LogBook.Web.Tests.SetUp;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.RecordPacks;

public sealed class RecordsPageTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static async Task<SetUpPages> StartAsync(Language language = Language.English)
    {
        var pages = await SetUpPages.ForAsync(PersonRole.Supervisor, language);
        await using var json = SampleFirm.SetUp();
        Assert.Empty((await pages.App.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues);
        return pages;
    }

    [Fact]
    [Trait("goal", "record-pack")]
    public async Task Make_Period_GivesAFileToTheOneWhoAsked()
    {
        await using var pages = await StartAsync();
        await pages.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(pages.Viewer, SampleFirm.Visit(), IntakeSource.Page);
        var page = pages.Open<RecordsPage>(ReadingLinks.Records("YAF-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31)), ("Code", "YAF-1"));
        Assert.Equal("1", page.Find("#records-visits").TextContent);

        page.Find("#records-make").Click();
        page.WaitForElement("#records-file", Patience);

        var ticket = Guid.Parse(page.Find("#records-file").GetAttribute("href")!.Split('/')[^1]);
        var desk = pages.App.Services.GetRequiredService<RecordDesk>();
        await using (var content = desk.Take(pages.Viewer, "YAF-1", ticket)!.Value.Content)
        using (var zip = new ZipArchive(content))
        {
            Assert.Equal(["YAF-1_2025-03-01_2025-03-31.pdf", "YAF-1_2025-03-01_2025-03-31.xlsx", "SHA256SUMS.txt"], zip.Entries.Select(entry => entry.FullName));
        }

        Assert.Null(desk.Take(pages.Viewer with { UserId = 4711 }, "YAF-1", ticket));
        Assert.Null(desk.Take(pages.Viewer, "PLU-1", ticket));
    }

    [Fact]
    public async Task Period_TheWrongWayRound_IsSaid_AndTheButtonRests()
    {
        await using var pages = await StartAsync(Language.Spanish);

        var page = pages.Open<RecordsPage>(ReadingLinks.Records("YAF-1", new DateOnly(2025, 4, 1), new DateOnly(2025, 3, 31)), ("Code", "YAF-1"));

        Assert.Contains("último día es anterior", page.Find("#records-period").TextContent, StringComparison.Ordinal);
        Assert.True(page.Find("#records-make").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Hold_LaidWithAReason_IsTold()
    {
        await using var pages = await StartAsync();
        var page = pages.Open<RecordsPage>(ReadingLinks.Records("YAF-1"), ("Code", "YAF-1"));
        Assert.Contains("No legal hold", page.Find("#records-hold").TextContent, StringComparison.Ordinal);

        page.Find("#hold-ask").Click();
        page.Find(".confirm").Submit();
        page.WaitForAssertion(() => Assert.NotNull(page.Find("#records-problem")), Patience);
        page.Find("#hold-why").Change("letter of 3 March");
        page.Find(".confirm").Submit();

        page.WaitForAssertion(() => Assert.Contains("letter of 3 March", page.Find("#records-hold").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    [Trait("goal", "move-in")]
    public async Task MoveIn_FileWithADoubt_AsksThenMoves()
    {
        await using var pages = await StartAsync();
        var page = pages.Open<MoveInPage>(SetUpLinks.MoveIn);

        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("Date,Site,Technician,Tower pH\n3/4/2024,YAF-1,RYA,8.1\n3/5/2024,YAF-1,RYA,8.2", "log.csv"));
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("#move-open li").Count), Patience);
        Assert.True(page.Find("#move-in").HasAttribute("disabled"));
        Assert.Contains("log", page.Find("#move-open li").TextContent, StringComparison.Ordinal);
        Assert.Contains("cell A2", page.Find("#move-open li").TextContent, StringComparison.Ordinal);

        // The month first, for both of the column.
        page.FindAll("#move-open li")[0].QuerySelectorAll("button")[3].Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#move-open li")), Patience);
        Assert.Contains("4 Mar 2024", page.Find("#move-counts").TextContent, StringComparison.Ordinal);
        page.Find("#move-in").Click();

        page.WaitForAssertion(() => Assert.Contains("2 visits came in, 0 were here before.", page.Find("#move-said").TextContent, StringComparison.Ordinal), Patience);
        var stored = (await pages.App.Services.GetRequiredService<ExchangeExport>().ExportAsync(pages.Viewer))!.Visits;
        Assert.Equal([new DateOnly(2024, 3, 4), new DateOnly(2024, 3, 5)], stored.Select(visit => DateOnly.FromDateTime(visit.Arrived.Wall)).Order());
    }

    [Fact]
    public async Task MoveIn_UnreadableFile_IsSaidAndNothingHappens()
    {
        await using var pages = await StartAsync(Language.Portuguese);
        var page = pages.Open<MoveInPage>(SetUpLinks.MoveIn);

        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("PK\u0003\u0004broken", "log.xlsx"));

        page.WaitForAssertion(() => Assert.Contains("não pode ser lido", page.Find("#move-problem").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(page.FindAll("#move-in"));
    }
}
