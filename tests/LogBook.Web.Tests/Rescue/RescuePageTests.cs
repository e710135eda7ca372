using Bunit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Rescue;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Entry.Drafts;
using LogBook.Testing;
using LogBook.Web.Features.Rescue;
using LogBook.Web.Tests.SetUp;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Rescue;

/// <summary>The page of rescue files: shows first, takes then.</summary>
public sealed class RescuePageTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public async Task File_IsShownFirst_TakenThen_AndItsDraftIsThrownAwayAfterAsking()
    {
        await using var pages = await FirmAsync(PersonRole.Supervisor);
        var draft = VisitDraft.FromJson("""{"form":1,"id":"0198b000-0000-7000-8000-00000000000a","site":"YAF-1","technician":"RYA","timeZone":"Europe/London","cautionsSeen":[],"fields":{}}""");
        var visit = RescueFiles.Visit(SampleFirm.Visit());
        var page = pages.Open<RescuePage>("/rescue");
        Upload(page, RescueFiles.Bytes(RescueFiles.Of([visit], [RescueFiles.Draft(draft), RescueFiles.Sealed(draft).Draft])));
        page.WaitForElement("#rescue-content", Patience);

        Assert.Contains("Visits: 1, drafts: 2, photos: 0", page.Find("#rescue-holds").TextContent, StringComparison.Ordinal);
        Assert.Contains("Barge tablet", page.Find("#rescue-content").TextContent, StringComparison.Ordinal);
        Assert.Contains(RescueTexts.SealedForGood.En, page.Find("#rescue-drafts").TextContent, StringComparison.Ordinal);
        Assert.Equal((0, 0), await HeldAsync(pages));

        page.Find("#rescue-take").Click();
        page.WaitForElement("#rescue-said", Patience);
        Assert.Contains(visit.Sha256!, page.Find("#rescue-visits").TextContent, StringComparison.Ordinal);
        Assert.Contains("entered by RYA", page.Find("#rescue-pending").TextContent, StringComparison.Ordinal);
        Assert.Equal((1, 1), await HeldAsync(pages));

        page.Find("#rescue-pending button").Click();
        page.Find("#rescue-pending form").Submit();
        page.WaitForElement("#rescue-problem", Patience);
        Assert.Equal((1, 1), await HeldAsync(pages));
        page.Find("#discard-why").Change("entered twice");
        page.Find("#rescue-pending form").Submit();
        page.WaitForAssertion(() => Assert.Contains(RescueTexts.PendingNone.En, page.Find("#rescue-pending").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal((1, 0), await HeldAsync(pages));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task File_CutOffOrStrange_IsSaidSo_AndNothingIsTaken(bool isCutOff)
    {
        await using var pages = await FirmAsync(PersonRole.Supervisor, Language.Spanish);
        var page = pages.Open<RescuePage>("/rescue");
        var bytes = RescueFiles.Bytes(RescueFiles.Of([RescueFiles.Visit(SampleFirm.Visit())]));

        Upload(page, isCutOff ? bytes[..^20] : "Fecha;Sitio"u8.ToArray());
        page.WaitForElement("#rescue-problem", Patience);

        Assert.Equal((isCutOff ? RescueFileTexts.Damaged : RescueFileTexts.Strange).Es, page.Find("#rescue-problem").TextContent);
        Assert.Empty(page.FindAll("#rescue-content, #rescue-take"));
        Assert.Equal((0, 0), await HeldAsync(pages));
    }

    private static void Upload(IRenderedComponent<RescuePage> page, byte[] content) =>
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(content, "logbook-rescue.json"));

    private static Task<(int Visits, int Drafts)> HeldAsync(SetUpPages pages) => pages.App.Services.GetRequiredService<LogBookStore>().ReadAsync(
        Viewer.System("test"), async db => (await db.Visits.CountAsync(), await db.Drafts.CountAsync()));

    private static async Task<SetUpPages> FirmAsync(PersonRole role, Language language = Language.English)
    {
        var pages = await SetUpPages.ForAsync(role, language);
        await using var setUp = SampleFirm.SetUp();
        await pages.App.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), setUp);
        return pages;
    }
}
