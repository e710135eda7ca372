using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Testing.Readers;
using LogBook.Web.Account;
using LogBook.Web.Features.VisitForms;
using LogBook.Web.Tests.Readers;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Entry;

/// <summary>The draft that a form begins with.</summary>
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

    [Fact]
    public async Task Begun_OfADayBefore_IsNamedAndNotGoneOnWith_WhatHoldsNothingIsGone()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);
        var (viewer, desk) = await DeskAsync(pages);
        var drafts = pages.Services.GetRequiredService<DraftStore>();
        var site = (await desk.OpenAsync(viewer, "YAF-1"))!.Site;
        var empty = VisitDraft.Start(site, "RYA", pages.Firm.Clock);
        await drafts.SaveAsync(viewer, empty.Id, site.Code, empty.ToJson(), 0);
        var yesterday = VisitDraft.Start(site, "RYA", pages.Firm.Clock);
        yesterday.SetText("visit/notes", "noise in the fan");
        await drafts.SaveAsync(viewer, yesterday.Id, site.Code, yesterday.ToJson(), 0);
        Assert.Equal(yesterday.Id, (await desk.BegunAsync(viewer, "YAF-1"))!.Current);

        pages.Firm.Clock.Advance(TimeSpan.FromHours(18));
        var begun = await desk.BegunAsync(viewer, "yaf-1");

        Assert.Null(begun!.Current);
        Assert.Equal(yesterday.Id, Assert.Single(begun.Visits).Draft.Id);
        Assert.Null(await drafts.FindAsync(viewer, empty.Id));
        Assert.NotEqual(yesterday.Id, (await desk.OpenAsync(viewer, "YAF-1"))!.Draft.Id);
        Assert.Equal("noise in the fan", (await desk.OpenAsync(viewer, "YAF-1", yesterday.Id))!.Draft.Text("visit/notes"));
        Assert.Empty(begun.Without(yesterday.Id).Visits);
    }

    [Fact]
    public async Task Open_AnActionOfAVisitOlderThanTheLastOnes_StandsUntilItIsClosed()
    {
        var wanted = new VisitAction { Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a99"), Text = "renew the float valve", Owner = "RYA", Due = new DateOnly(2025, 6, 2), State = ActionState.Open };
        (int Customer, int Site, int System) site = default;
        var first = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350, id: Id);
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm =>
        {
            site = await firm.AddSiteAsync("YAF-1");
            await firm.AddVisitAsync(site, first with { Systems = [first.Systems[0] with { Actions = [wanted] }] });
            for (var visit = 1; visit <= RoundQuery.VisitsPerSite; visit++)
            {
                await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(visit), 1350));
            }

            return site.Customer;
        });
        var (viewer, desk) = await DeskAsync(pages);

        var sheet = (await desk.OpenAsync(viewer, "YAF-1"))!;

        Assert.DoesNotContain(sheet.Previous, visit => visit.Id == Id);
        Assert.Equal([("YAF-1", "CT-1", wanted)], sheet.Standing.Select(s => (s.Site, s.System, s.Action)));

        var closing = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(40), 1350);
        await pages.Firm.AddVisitAsync(site, closing with { Systems = [closing.Systems[0] with { Actions = [wanted with { State = ActionState.Done }] }] });
        Assert.Empty((await desk.OpenAsync(viewer, "YAF-1"))!.Standing);
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
