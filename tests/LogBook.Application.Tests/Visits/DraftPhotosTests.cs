using LogBook.Application.Data;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;
using SkiaSharp;

namespace LogBook.Application.Tests.Visits;

[Trait("goal", "S6")]
public sealed class DraftPhotosTests : IAsyncLifetime
{
    private readonly DatabaseFixture<SqliteDatabase> _own = new();
    private SqliteDatabase Database => _own.Database;

    private DraftPhotos _photos = default!;
    private Viewer _writer = default!;

    public async Task InitializeAsync()
    {
        await _own.InitializeAsync();
        var folder = new PhotoFolder(Path.Combine(Database.Folder, "photos"));
        _photos = new DraftPhotos(folder, new PhotoStore(Database.Get<LogBookStore>(), folder, Database.Clock), Database.Clock);
        _writer = Database.Technician with { UserId = 7 };
    }

    [Fact]
    public async Task HandOver_VisitReceived_MovesThePictureToIt()
    {
        var kept = await KeepAsync(Picture());
        Assert.Equal(PhotoOutcome.Stored, kept.Outcome);
        Assert.NotNull(SKBitmap.Decode(await _photos.ThumbnailAsync(_writer, kept.Id)));
        var visit = SampleFirm.Visit() with { Photos = [new Photo { Id = kept.Id, Of = "CT-1/observations/tower", Sha256 = kept.Sha256 }] };
        Assert.IsType<IntakeOutcome.Stored>(await Database.Get<VisitIntake>().ReceiveAsync(_writer, visit, IntakeSource.Page));

        Assert.Equal(0, await _photos.HandOverAsync(_writer, visit));

        var row = await Database.Get<LogBookStore>().ReadAsync(Database.Supervisor, db => db.Photos.SingleAsync());
        Assert.NotNull(row.StoredAt);
        Assert.True(File.Exists(Path.Combine(Database.Folder, "photos", row.FileName!)));
        Assert.Null(await _photos.ThumbnailAsync(_writer, kept.Id));
    }

    [Fact]
    public async Task HandOver_VisitNotReceived_KeepsThePicture()
    {
        var kept = await KeepAsync(Picture());
        var visit = SampleFirm.Visit() with { Photos = [new Photo { Id = kept.Id, Of = "CT-1/observations/tower", Sha256 = kept.Sha256 }] };

        Assert.Equal(1, await _photos.HandOverAsync(_writer, visit));

        Assert.NotNull(await _photos.ThumbnailAsync(_writer, kept.Id));
    }

    [Fact]
    public async Task HandOverLeft_AfterAFailedHandOver_BringsThePictureToItsVisit()
    {
        var kept = await KeepAsync(Picture());
        var begun = await KeepAsync(Picture());
        var visit = SampleFirm.Visit() with { Photos = [new Photo { Id = kept.Id, Of = "CT-1/observations/tower", Sha256 = kept.Sha256 }] };
        Assert.Equal(0, await _photos.HandOverLeftAsync(Viewer.System("photos")));
        Assert.IsType<IntakeOutcome.Stored>(await Database.Get<VisitIntake>().ReceiveAsync(_writer, visit, IntakeSource.Page));

        Assert.Equal(1, await _photos.HandOverLeftAsync(Viewer.System("photos")));

        Assert.NotNull((await Database.Get<LogBookStore>().ReadAsync(Database.Supervisor, db => db.Photos.SingleAsync())).StoredAt);
        Assert.Null(await _photos.ThumbnailAsync(_writer, kept.Id));

        // What belongs to a visit that is still being written stays with its draft.
        Assert.NotNull(await _photos.ThumbnailAsync(_writer, begun.Id));
        Assert.Equal(0, await _photos.HandOverLeftAsync(Viewer.System("photos")));
    }

    [Fact]
    public async Task Discard_TakesThePicturesOfTheDraftAlong_NotThoseOfAReceivedVisitOrAnotherDraft()
    {
        var user = new LogBookUser { UserName = "r.yaffle@quernwath.example", Email = "r.yaffle@quernwath.example", PersonCode = "RYA" };
        await Database.Get<LogBookStore>().WriteAsync(Viewer.System("test"), db =>
        {
            db.Users.Add(user);
            return db.SaveChangesAsync();
        });
        _writer = _writer with { UserId = user.Id };
        var (own, received, another) = (await KeepAsync(Picture()), await KeepAsync(Picture()), await KeepAsync(Picture()));
        var visit = SampleFirm.Visit() with { Photos = [new Photo { Id = received.Id, Of = "CT-1/observations/tower", Sha256 = received.Sha256 }] };
        Assert.IsType<IntakeOutcome.Stored>(await Database.Get<VisitIntake>().ReceiveAsync(_writer, visit, IntakeSource.Page));
        var drafts = new DraftStore(Database.Get<LogBookStore>(), _photos, Database.Clock);
        await drafts.SaveAsync(_writer, visit.Id, "YAF-1", $"""[ "{own.Id}", "{received.Id}" ]""", 0);

        Assert.True(await drafts.DiscardAsync(_writer, visit.Id, "begun at the wrong site"));

        Assert.Null(await _photos.ThumbnailAsync(_writer, own.Id));
        Assert.NotNull(await _photos.ThumbnailAsync(_writer, received.Id));
        Assert.NotNull(await _photos.ThumbnailAsync(_writer, another.Id));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Picture_OfAnotherAccount_IsNotSeen()
    {
        var kept = await KeepAsync(Picture());
        var other = _writer with { UserId = 8 };

        Assert.Null(await _photos.ThumbnailAsync(other, kept.Id));
        _photos.Remove(other, kept.Id);
        Assert.NotNull(await _photos.ThumbnailAsync(_writer, kept.Id));
        Assert.Equal(PhotoOutcome.NotFound, (await _photos.KeepAsync(_writer with { Role = Domain.Sites.PersonRole.Customer }, new MemoryStream(Picture()))).Outcome);

        _photos.Remove(_writer, kept.Id);
        Assert.Null(await _photos.ThumbnailAsync(_writer, kept.Id));
    }

    [Fact]
    public async Task Keep_WhatIsNoPicture_IsRefused()
    {
        Assert.Equal(PhotoOutcome.NotAPicture, (await KeepAsync("no picture at all"u8.ToArray())).Outcome);
        Assert.Equal(PhotoOutcome.TooLarge, (await KeepAsync(new byte[PhotoStore.MostBytes + 1])).Outcome);
    }

    public Task DisposeAsync() => _own.DisposeAsync();

    private async Task<(PhotoOutcome Outcome, Guid Id, string Sha256)> KeepAsync(byte[] picture)
    {
        using var content = new MemoryStream(picture);
        return await _photos.KeepAsync(_writer, content);
    }

    private static byte[] Picture()
    {
        using var bitmap = new SKBitmap(320, 200);
        bitmap.Erase(SKColors.SeaGreen);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 90);
        return data.ToArray();
    }
}
