using Bunit;
using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using LogBook.Entry.Photos;
using Microsoft.AspNetCore.Components.Forms;

namespace LogBook.Web.Tests.Entry;

public sealed class PhotoFieldTests
{
    private static readonly string Row = DraftKey.Of(DraftKey.Systems, "CT-1", "observations");

    [Fact]
    public async Task Photo_Chosen_IsShownKeptInTheDraftAndNamedByTheVisit()
    {
        var desk = new Desk();
        await using var page = await TowerAsync(desk);

        page.Form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("a picture", "slime.jpg"));

        page.Form.WaitForAssertion(() => Assert.Equal("data:image/jpeg;base64,AAAA", page.Form.Find("img.lb-thumb").GetAttribute("src")));
        Assert.Equal("a picture", desk.Got);
        var photo = Assert.Single(VisitDraft.FromJson(page.Draft.ToJson()).ToVisit().Photos);
        Assert.Equal((desk.Id, "abc", "CT-1/observations/tower"), (photo.Id, photo.Sha256, photo.Of));
        Assert.NotNull(photo.TakenAt);
    }

    [Fact]
    public async Task Photo_TakenAway_IsGoneFromVisitAndDesk()
    {
        var desk = new Desk();
        await using var page = await TowerAsync(desk);
        page.Form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("a picture", "slime.jpg"));
        page.Form.WaitForAssertion(() => page.Form.Find("img.lb-thumb"));

        await page.Form.Find(".lb-photo button").ClickAsync();

        Assert.Empty(page.Draft.ToVisit().Photos);
        Assert.Equal(desk.Id, desk.Removed);
        Assert.NotNull(page.Form.Find(".lb-photo input[type=file]"));
    }

    [Fact]
    public async Task Photo_LookedFirst_IsPinnedLaterToWhatItShows()
    {
        var desk = new Desk();
        await using var page = new EntryPage(photos: desk);

        page.Form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("a picture", "dial.jpg"));
        page.Form.WaitForAssertion(() => page.Form.Find("img.lb-thumb"));
        Assert.Equal("CT-1", Assert.Single(page.Draft.ToVisit().Photos).Of);
        page.Type("The photo shows", "CT-1/meters/MU");

        Assert.Equal("CT-1/meters/MU", Assert.Single(VisitDraft.FromJson(page.Draft.ToJson()).ToVisit().Photos).Of);
        page.Go("Stock");
        Assert.NotNull(page.Form.Find("img.lb-thumb"));
    }

    [Fact]
    public async Task Photo_Refused_SaysWhyAndKeepsNothing()
    {
        await using var page = await TowerAsync(new Desk { Problem = PhotoTexts.NoPicture }, Language.Spanish);

        page.Form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("no picture", "notes.txt"));

        page.Form.WaitForAssertion(() => Assert.Contains(PhotoTexts.NoPicture.Es, page.Form.Find(".lb-photo .lb-problem").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.Draft.ToVisit().Photos);
    }

    [Fact]
    public async Task Photo_WhereTheSiteForbidsThemOrNobodyKeepsThem_IsNotOffered()
    {
        await using var forbidden = await TowerAsync(new Desk(), allowed: false);
        await using var without = await TowerAsync(null);

        Assert.Empty(forbidden.Form.FindAll(".lb-photo"));
        Assert.Empty(without.Form.FindAll(".lb-photo"));
    }

    private static async Task<EntryPage> TowerAsync(Desk? desk, Language language = Language.English, bool allowed = true)
    {
        var page = new EntryPage(language: language, photos: desk, site: EntryFirm.Site with { PhotosAllowed = allowed });
        await page.Form.FindAll(".lb-step").Single(step => step.TextContent.Contains(language == Language.Spanish ? LogBook.Entry.Texts.EntryTexts.Tower.Es : LogBook.Entry.Texts.EntryTexts.Tower.En, StringComparison.Ordinal)).ClickAsync();
        await page.Form.Find("#" + DraftKey.ElementId(Row)).ClickAsync();
        return page;
    }

    private sealed class Desk : IPhotoDesk
    {
        public Guid Id { get; } = Guid.CreateVersion7();

        public string? Got { get; private set; }

        public Guid? Removed { get; private set; }

        public Text? Problem { get; init; }

        public async Task<PhotoTaken> KeepAsync(Stream content)
        {
            using var reader = new StreamReader(content);
            Got = await reader.ReadToEndAsync();
            return Problem is null ? new PhotoTaken(Id, "abc", null) : new PhotoTaken(null, null, Problem);
        }

        public Task<string?> ThumbnailAsync(Guid id) => Task.FromResult<string?>(id == Id ? "data:image/jpeg;base64,AAAA" : null);

        public Task RemoveAsync(Guid id)
        {
            Removed = id;
            return Task.CompletedTask;
        }
    }
}
