using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Rescue;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Testing;
using LogBook.Web.Components.Parts;
using LogBook.Web.Features.Rescue;
using LogBook.Web.Features.VisitForms;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Rescue;

/// <summary>What a rescue file brings comes in once, by the one way in; drafts stay in the name of who entered them.</summary>
public sealed class RescueDeskTests : IAsyncLifetime
{
    private LogBookWebApp App { get; } = new();

    private Viewer _supervisor = default!;
    private Viewer _technician = default!;
    private IServiceScope _scope = default!;

    private RescueDesk Desk => App.Services.GetRequiredService<RescueDesk>();

    private RescuedDraftStore Drafts => App.Services.GetRequiredService<RescuedDraftStore>();

    private LogBookStore Store => App.Services.GetRequiredService<LogBookStore>();

    public async Task InitializeAsync()
    {
        await App.AddFirmAsync();
        await using var setUp = SampleFirm.SetUp();
        Assert.DoesNotContain((await App.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), setUp)).Issues, issue => issue.Blocks);
        _supervisor = new(await App.AddUserAsync("i.wendle@quernwath.example", PersonRole.Supervisor, person: "IWE"), "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, null, Language.English);
        _technician = new(await App.AddUserAsync("r.yaffle@quernwath.example", PersonRole.Technician, person: "RYA"), "r.yaffle@quernwath.example", "RYA", PersonRole.Technician, null, Language.English);
        _scope = App.Services.CreateScope();
    }

    public async Task DisposeAsync()
    {
        _scope.Dispose();
        await App.DisposeAsync();
    }

    [Fact]
    public async Task Visit_ComesInOnce_WithItsReceipt_AndItsConflictIsNamed()
    {
        var visit = SampleFirm.Visit();
        var file = RescueFiles.Of([RescueFiles.Visit(visit)]);

        var refused = await Desk.TakeVisitAsync(_technician, file, file.Visits[0]);
        var first = await Desk.TakeVisitAsync(_supervisor, file, file.Visits[0]);
        var again = await Desk.TakeVisitAsync(_supervisor, file, file.Visits[0]);
        var other = await Desk.TakeVisitAsync(_supervisor, file, RescueFiles.Visit(visit with { Systems = SampleFirm.Visit(inhibitor: 60).Systems }));

        Assert.Equal(RescueTexts.NotAllowed, refused.Says);
        Assert.Equal((StateKind.Done, RescueTexts.VisitTaken), (first.Kind, first.Says));
        Assert.Contains(file.Visits[0].Sha256!, Assert.Single(first.Details), StringComparison.Ordinal);
        Assert.Equal((StateKind.Done, RescueTexts.VisitBefore), (again.Kind, again.Says));
        Assert.Equal((StateKind.Act, RescueTexts.VisitConflict), (other.Kind, other.Says));
        Assert.Equal(1, await Store.ReadAsync(_supervisor, db => db.Visits.CountAsync()));
    }

    [Fact]
    public async Task Visit_ThatIsRefused_SaysWhatIsToBeCorrected()
    {
        var file = RescueFiles.Of([RescueFiles.Visit(SampleFirm.Visit() with { Technician = "NOBODY" })]);

        var result = await Desk.TakeVisitAsync(_supervisor, file, file.Visits[0]);

        Assert.Equal(RescueTexts.VisitRefused, result.Says);
        Assert.Contains(result.Details, detail => detail.Contains("NOBODY", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Draft_BecomesTheSupervisors_InTheNameOfWhoEnteredIt_WithItsPhotosAndLastKeys()
    {
        var (draft, photo) = await DraftAsync();
        var file = RescueFiles.Of(drafts: [RescueFiles.Draft(draft, """[{"key":"visit/notes","text":"noise in the fan, second blade","unit":null}]""")],
            photos: [new(photo, draft.Id, RescueFiles.Hash(RescueFiles.Picture), RescueFiles.Picture)]);

        var first = await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0]);
        var again = await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0]);

        Assert.Equal((RescueTexts.DraftTaken, RescueTexts.DraftBefore), (first.Says, again.Says));
        Assert.Empty(first.Details);
        var desk = _scope.ServiceProvider.GetRequiredService<VisitDesk>();
        var sheet = await desk.OpenRescuedAsync(_supervisor, draft.Id);
        Assert.Equal(("RYA", "noise in the fan, second blade"), (sheet!.Draft.Technician, sheet.Draft.Text("visit/notes")));
        Assert.NotNull(await App.Services.GetRequiredService<DraftPhotos>().ThumbnailAsync(_supervisor, photo));

        // A visit of the supervisor's own at this site does not go on with it, and nobody else has it.
        var begun = await desk.BegunAsync(_supervisor, draft.Site);
        Assert.Null(begun!.Current);
        Assert.Empty(begun.Visits);
        Assert.Null(await desk.OpenRescuedAsync(_technician, draft.Id));
        var entry = Assert.Single(await Drafts.ListAsync(_supervisor));
        Assert.Equal(("RYA", "Barge tablet", true), (entry.From.Technician, entry.From.Tablet, entry.IsMine));
        Assert.Empty(await Drafts.ListAsync(_technician));
    }

    [Fact]
    public async Task Draft_IsThrownAwayWithAReasonOnly_AndItsTextStaysInTheTrail()
    {
        var (draft, photo) = await DraftAsync();
        var file = RescueFiles.Of(drafts: [RescueFiles.Draft(draft)], photos: [new(photo, draft.Id, RescueFiles.Hash(RescueFiles.Picture), RescueFiles.Picture)]);
        await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0]);

        Assert.False(await Drafts.DiscardAsync(_supervisor, draft.Id, " "));
        Assert.False(await Drafts.DiscardAsync(_technician, draft.Id, "not mine"));
        Assert.True(await Drafts.DiscardAsync(_supervisor, draft.Id, "written at the wrong site"));

        Assert.Empty(await Drafts.ListAsync(_supervisor));
        Assert.Null(await App.Services.GetRequiredService<DraftPhotos>().ThumbnailAsync(_supervisor, photo));
        var trail = await Store.ReadAsync(_supervisor, db => db.AuditTrail.SingleAsync(row => row.What == AuditActs.Discarded && row.Key == draft.Id.ToString("D")));
        Assert.Equal("written at the wrong site", trail.Why);
        Assert.Contains("noise in the fan", trail.Old, StringComparison.Ordinal);
        Assert.Equal(RescueTexts.DraftTaken, (await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0])).Says);
    }

    [Fact]
    public async Task Draft_WhoseVisitIsHere_IsNotNeeded_AndAnAmendmentNeedsItsVisit()
    {
        var (draft, _) = await DraftAsync();
        var visit = SampleFirm.Visit() with { Id = draft.Id };
        var site = (await _scope.ServiceProvider.GetRequiredService<VisitDesk>().OpenAsync(_supervisor, "YAF-1"))!.Site;
        var file = RescueFiles.Of([RescueFiles.Visit(visit)], [RescueFiles.Draft(draft), RescueFiles.Draft(VisitDraft.Amend(visit, site))]);

        Assert.Equal(RescueTexts.NothingToAmend, (await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[1])).Says);
        await Desk.TakeVisitAsync(_supervisor, file, file.Visits[0]);

        Assert.Equal(RescueTexts.DraftNotNeeded, (await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0])).Says);
        var amendment = await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[1]);
        Assert.Equal((RescueTexts.DraftTaken, $"/visits/{visit.Id:D}/amend"), (amendment.Says, amendment.Link));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"form":1,"id":"0198b000-0000-7000-8000-00000000000a","site":"YAF-1","technician":"RYA","timeZone":"Europe/London"}""")]
    [InlineData("""{"form":1,"id":"0198b000-0000-7000-8000-00000000000b","site":"YAF-1","technician":"RYA","timeZone":"Europe/London","cautionsSeen":[],"fields":{}}""")]
    public async Task Draft_ThatIsNoneOrNotItself_IsSaidSo(string text)
    {
        var file = RescueFiles.Of(drafts: [new() { Id = Guid.Parse("0198b000-0000-7000-8000-00000000000a"), Site = "YAF-1", Text = text }]);

        Assert.Equal(RescueTexts.DraftUnreadable, (await Desk.TakeDraftAsync(_supervisor, file, file.Drafts[0])).Says);
        Assert.Empty(await Drafts.ListAsync(_supervisor));
    }

    [Fact]
    public async Task SealedDraft_OfWhoHasLeft_IsOpenedByTheKeptKey_WithAReasonInTheTrail()
    {
        var (draft, _) = await DraftAsync();
        var (kept, id, second) = RescueFiles.Sealed(draft, """[{"key":"visit/notes","text":"noise in the fan, typed last","unit":null}]""");
        var file = RescueFiles.Of(drafts: [kept]);

        Assert.Equal(RescueTexts.NoKey, (await Desk.OpenDraftAsync(_supervisor, file, kept, "has left")).Says);
        var protector = App.Services.GetRequiredService<IDataProtectionProvider>().CreateProtector("LogBook.TabletKeys");
        Assert.True(await App.Services.GetRequiredService<TabletKeyStore>().KeepAsync(_technician, id, "Barge tablet", protector.Protect(Convert.ToBase64String(second)), null));
        await Store.WriteAsync(Viewer.System("test"), db => db.Users.Where(user => user.Id == _technician.UserId).ExecuteUpdateAsync(set => set.SetProperty(user => user.DisabledAt, new DateTime(2025, 3, 1, 0, 0, 0, DateTimeKind.Utc))));

        Assert.Equal(RescueTexts.StillSealed, (await Desk.TakeDraftAsync(_supervisor, file, kept)).Says);
        Assert.Equal(RescueTexts.ReasonNeeded, (await Desk.OpenDraftAsync(_supervisor, file, kept, " ")).Says);
        Assert.Equal(RescueTexts.NoKey, (await Desk.OpenDraftAsync(_technician, file, kept, "mine")).Says);
        Assert.Empty(await TrailAsync());
        var result = await Desk.OpenDraftAsync(_supervisor, file, kept, "has left the firm");

        Assert.Equal(RescueTexts.DraftTaken, result.Says);
        var sheet = await _scope.ServiceProvider.GetRequiredService<VisitDesk>().OpenRescuedAsync(_supervisor, draft.Id);
        Assert.Equal(("RYA", "noise in the fan, typed last"), (sheet!.Draft.Technician, sheet.Draft.Text("visit/notes")));
        Assert.Equal("r.yaffle@quernwath.example", Assert.Single(await Drafts.ListAsync(_supervisor)).From.Account);
        var entry = Assert.Single(await TrailAsync());
        Assert.Equal(("has left the firm", "Barge tablet", "i.wendle@quernwath.example"), (entry.Why, entry.New, entry.Who));

        Task<List<AuditRow>> TrailAsync() => Store.ReadAsync(_supervisor, db => db.AuditTrail.Where(row => row.Key == id && row.What == "tablet key used for a rescue file").ToListAsync());
    }

    private async Task<(VisitDraft Draft, Guid Photo)> DraftAsync()
    {
        var site = (await _scope.ServiceProvider.GetRequiredService<VisitDesk>().OpenAsync(_technician, "YAF-1"))!.Site;
        var draft = VisitDraft.Start(site, "RYA", TimeProvider.System);
        draft.SetText("visit/notes", "noise in the fan");
        var photo = Guid.NewGuid();
        draft.SetText(DraftKey.Under(draft.AddRow("visit/photos"), "photo"), photo.ToString("D"));
        return (draft, photo);
    }
}
