using System.Security.Cryptography;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.RecordPacks;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>A picture that is not in the pack is listed with the reason, never left out.</summary>
[Trait("goal", "record-pack")]
public sealed class RecordPhotoTests : IAsyncLifetime
{
    private static readonly DateOnly From = new(2025, 3, 1);
    private static readonly DateOnly To = new(2025, 3, 31);

    private readonly DatabaseFixture<SqliteDatabase> _own = new();

    private SqliteDatabase Database => _own.Database;

    private PhotoFolder Folder => Database.Get<PhotoFolder>();

    public Task InitializeAsync() => _own.InitializeAsync();

    [Fact]
    public async Task Make_PicturesOfAllStates_TakesWhatIsThereAndSaysWhyTheOthersAreNot()
    {
        var (kept, awaited, lost, damaged, takenOut, ofOther) = (PhotoOf("CT-1/controller"), PhotoOf("awaited"), PhotoOf("lost"), PhotoOf("damaged"), PhotoOf("taken out"), PhotoOf("other text"));
        var visit = SampleFirm.Visit() with { Photos = [kept, awaited, lost, damaged, takenOut] };
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));
        Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(visit with { Notes = "other", Photos = [ofOther] }));
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Amended(visit, 59) with { Photos = [kept, awaited, lost, damaged] }));
        var voided = SampleFirm.Visit(arrived: "2025-03-05T09:05:00+00:00") with { Photos = [PhotoOf("of a void visit")] };
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(voided));
        Assert.IsType<SaveOutcome.Saved>(await Database.Get<VisitCare>().VoidAsync(Database.Supervisor, voided.Id, "wrong site"));
        await KeepAsync(kept, lost, damaged, takenOut, ofOther, voided.Photos[0]);
        File.Delete(await PathOfAsync(lost));
        await File.AppendAllTextAsync(await PathOfAsync(damaged), "x");

        var files = await MakeAsync(Database.Supervisor);
        var told = (await Office.SheetsAsync(files.Workbook))["Photos"].Skip(1).ToDictionary(row => row[1], row => row[2]);
        var paper = string.Join(' ', (await Office.TextAsync(files.Pdf)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(
            new Dictionary<string, string>
            {
                ["CT-1/controller"] = "in the pack",
                ["awaited"] = "missing: it has not come in",
                ["lost"] = "missing: it came in, and its file is not there any more",
                ["damaged"] = "missing: its file was changed after it was kept",
                ["taken out"] = "in the pack; only an earlier version of the visit names it",
                ["other text"] = "withheld: only a text of the visit that never came to stand names it",
                ["of a void visit"] = "withheld: the visit was declared void",
            },
            told);
        Assert.Equal((2, 5), (files.Made.Photos, files.Made.MissingPhotos));
        Assert.Equal(["01_CT-1-controller.jpg", "05_taken-out.jpg"], PicturesIn(files));
        Assert.Contains("2 in the folder \"photos\", 5 not in the pack", paper, StringComparison.Ordinal);

        // The customer is told the visits as they stand.
        var own = await MakeAsync(await Database.OfCustomerAsync("YAF"));
        Assert.Equal(["01_CT-1-controller.jpg"], PicturesIn(own));
        Assert.Equal(["CT-1/controller", "awaited", "lost", "damaged"], (await Office.SheetsAsync(own.Workbook))["Photos"].Skip(1).Select(row => row[1]));
    }

    // The size is the same, the picture is another: only the hash that was kept tells.
    [Fact]
    public async Task Make_PictureReplacedByOneOfTheSameSize_IsNotTakenAlong()
    {
        var photo = PhotoOf("CT-1/controller");
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Visit() with { Photos = [photo] }));
        await KeepAsync(photo);
        Assert.Equal((1, 0), ((await MakeAsync(Database.Supervisor)).Made.Photos, (await MakeAsync(Database.Supervisor)).Made.MissingPhotos));
        await ReplaceAsync(photo);

        var files = await MakeAsync(Database.Supervisor);

        Assert.Equal((0, 1), (files.Made.Photos, files.Made.MissingPhotos));
        Assert.Equal("missing: its file was changed after it was kept", (await Office.SheetsAsync(files.Workbook))["Photos"][1][2]);
        Assert.Empty(PicturesIn(files));
    }

    [Fact]
    public async Task Verify_Pictures_TellsTheReplacedTheLostAndTheHashThatWasChangedWithItsFile()
    {
        var (whole, replaced, lost, forged) = (PhotoOf("whole"), PhotoOf("replaced"), PhotoOf("lost"), PhotoOf("forged"));
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Visit() with { Photos = [whole, replaced, lost, forged, PhotoOf("awaited")] }));
        await KeepAsync(whole, replaced, lost, forged);
        var before = await Database.Get<Verifier>().VerifyAsync(Database.Supervisor, Folder);
        Assert.Equal(4, before.Pictures);
        Assert.DoesNotContain(before.Faults, fault => fault.StartsWith("photo", StringComparison.Ordinal));

        await ReplaceAsync(replaced);
        File.Delete(await PathOfAsync(lost));
        await ReplaceAsync(forged);
        var hash = Convert.ToHexStringLower(SHA256.HashData(await File.ReadAllBytesAsync(await PathOfAsync(forged))));
        await Database.SqlAsync($"""UPDATE "Photos" SET "FileSha256" = '{hash}' WHERE "Of" = 'forged'""");
        var found = await Database.Get<Verifier>().VerifyAsync(Database.Supervisor, Folder);

        Assert.Equal(
            [
                $"photo {replaced.Id:D}: its file is not what its hash says",
                $"photo {lost.Id:D}: its file is not there any more",
                $"photo {forged.Id:D}: the audit trail does not know this hash",
                $"photo {forged.Id:D}: the hash that the audit trail knows is missing",
            ],
            found.Faults.Where(fault => fault.StartsWith("photo", StringComparison.Ordinal)));
        Assert.Null((await Database.Get<Verifier>().VerifyAsync(Database.Supervisor)).Pictures);
    }

    [Fact]
    public async Task Make_SiteThatAllowsNoPhotos_NamesItAsTheReason()
    {
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Visit() with { Photos = [PhotoOf("CT-1/controller")] }));
        var pack = await Database.Get<RecordPackReader>().ReadAsync(Database.Supervisor, "YAF-1", From, To);
        Assert.Equal(PackPhotoState.Awaited, Assert.Single(pack!.Photos).State);

        Assert.IsType<SaveOutcome.Saved>(await Database.Get<SetUpStore>().SaveAsync(Database.Supervisor, pack.Site with { PhotosAllowed = false }, 1));
        pack = await Database.Get<RecordPackReader>().ReadAsync(Database.Supervisor, "YAF-1", From, To);

        Assert.Equal(PackPhotoState.NotAllowed, Assert.Single(pack!.Photos).State);
    }

    // Each picture is written to its file only when the one before it has gone out: a maker that read them all first would not find it.
    [Fact]
    public async Task Make_ManyPictures_AreReadOneAfterTheOther()
    {
        const int Pictures = 20;
        var content = new byte[256 * 1024];
        new Random(1).NextBytes(content);
        var visit = SampleFirm.Visit() with { Photos = [.. Enumerable.Range(0, Pictures).Select(place => PhotoOf($"place {place}"))] };
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));
        var pack = (await Database.Get<RecordPackReader>().ReadAsync(Database.Supervisor, "YAF-1", From, To))!;
        pack = pack with { Photos = [.. pack.Photos.Select((photo, place) => photo with { State = PackPhotoState.Included, StoredAs = $"{place}.jpg", Bytes = content.Length })] };
        Directory.CreateDirectory(Folder.Path);
        var there = 0;
        void Put() => File.WriteAllBytes(Path.Combine(Folder.Path, $"{there++}.jpg"), content);
        Put();
        await using var gone = new PassingStream(bytes =>
        {
            if (there < Pictures && bytes >= (long)there * content.Length)
            {
                Put();
            }
        });

        var made = await new RecordPackMaker(Folder).WriteAsync(pack, Language.English, gone);

        Assert.Equal((Pictures, 0), (made.Photos, made.MissingPhotos));
    }

    [Fact]
    public async Task WriteFile_Stopped_LeavesNoFile()
    {
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Visit()));
        var pack = (await Database.Get<RecordPackReader>().ReadAsync(Database.Supervisor, "YAF-1", From, To))!;
        var target = new DirectoryInfo(Path.Combine(Database.Folder, "packs"));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => new RecordPackMaker(Folder).WriteFileAsync(pack, Language.English, target, new CancellationToken(canceled: true)));
        Assert.Empty(target.GetFiles());
        await new RecordPackMaker(Folder).WriteFileAsync(pack, Language.English, target);

        Assert.Equal("YAF-1_2025-03-01_2025-03-31.zip", Assert.Single(target.GetFiles()).Name);
    }

    public Task DisposeAsync() => _own.DisposeAsync();

    private static Photo PhotoOf(string of) => new() { Id = Guid.CreateVersion7(), Of = of };

    private static IEnumerable<string> PicturesIn(PackFiles files) => files.Files.Keys.Where(name => name.StartsWith("photos/", StringComparison.Ordinal)).Select(name => Path.GetFileName(name)).Order(StringComparer.Ordinal);

    private Task<IntakeOutcome> ReceiveAsync(Visit visit) => Database.Get<VisitIntake>().ReceiveAsync(Database.Supervisor, visit, IntakeSource.Page);

    private async Task KeepAsync(params Photo[] photos)
    {
        foreach (var (photo, place) in photos.Select((photo, place) => (photo, place)))
        {
            using var picture = new MemoryStream(SamplePicture.Jpeg(64, 48, place));
            Assert.Equal(PhotoOutcome.Stored, await Database.Get<PhotoStore>().KeepAsync(Database.Supervisor, photo.Id, picture));
        }
    }

    private async Task ReplaceAsync(Photo photo)
    {
        var path = await PathOfAsync(photo);
        var bytes = await File.ReadAllBytesAsync(path);
        bytes[^3] ^= 1;
        await File.WriteAllBytesAsync(path, bytes);
    }

    private async Task<string> PathOfAsync(Photo photo) => Path.Combine(
        Folder.Path, (await Database.Get<LogBookStore>().ReadAsync(Database.Supervisor, db => db.Photos.Where(row => row.PhotoId == photo.Id).Select(row => row.FileName).SingleAsync()))!);

    private async Task<PackFiles> MakeAsync(Viewer viewer) => await PackFiles.MakeAsync((await Database.Get<RecordPackReader>().ReadAsync(viewer, "YAF-1", From, To))!, Language.English, Folder);
}
