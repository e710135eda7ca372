using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Sites;
using LogBook.Entry.Drafts;
using LogBook.Testing.Readers;
using LogBook.Web.Account;
using LogBook.Web.Features.VisitForms;
using LogBook.Web.Tests.Readers;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Entry;

/// <summary>The draft that the form of an amendment begins with.</summary>
public sealed class VisitDeskTests
{
    private static readonly Guid Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a11");

    [Fact]
    public async Task Amend_BegunOnAVersionThatWasReplaced_GivesTheOldTextsBackAndSaysSo()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);
        var (viewer, desk) = await DeskAsync(pages);
        var fresh = await desk.AmendAsync(viewer, Id);
        Assert.False(fresh!.IsOutdated);
        var begun = VisitDraft.Amend(fresh.Draft.Amended! with { Version = 7 }, fresh.Site);
        begun.SetText("visit/notes", "read from the dial by hand");
        var drafts = pages.Services.GetRequiredService<DraftStore>();
        var saved = Assert.IsType<SaveOutcome.Saved>(await drafts.SaveAsync(viewer, Id, "YAF-1", begun.ToJson(), 0));

        var sheet = await desk.AmendAsync(viewer, Id);

        Assert.True(sheet!.IsOutdated);
        Assert.Equal(("read from the dial by hand", saved.Version), (sheet.Draft.Text("visit/notes"), sheet.DraftVersion));
    }

    [Fact]
    public async Task Amend_DraftThatCannotBeRead_IsNotOverwritten()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);
        var (viewer, desk) = await DeskAsync(pages);
        var drafts = pages.Services.GetRequiredService<DraftStore>();
        await drafts.SaveAsync(viewer, Id, "YAF-1", """{"form":99}""", 0);

        var sheet = await desk.AmendAsync(viewer, Id);

        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await drafts.SaveAsync(viewer, Id, "YAF-1", sheet!.Draft.ToJson(), sheet.DraftVersion));
        Assert.Equal("""{"form":99}""", (await drafts.FindAsync(viewer, Id))!.Document);
    }

    private static async Task<(Viewer Viewer, VisitDesk Desk)> DeskAsync(ReadPages pages) =>
        (await pages.Services.GetRequiredService<ViewerProvider>().GetAsync(), ActivatorUtilities.CreateInstance<VisitDesk>(pages.Services, ActivatorUtilities.CreateInstance<RoundQuery>(pages.Services)));

    private static async Task<int?> OneVisitAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350, id: Id));
        return site.Customer;
    }
}
