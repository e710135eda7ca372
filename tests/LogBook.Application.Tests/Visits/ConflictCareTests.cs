using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Visits;

public sealed class ConflictCareTests : IAsyncLifetime
{
    private readonly DatabaseFixture<SqliteDatabase> _own = new();
    private readonly Visit _visit = SampleFirm.Visit();

    private SqliteDatabase Database => _own.Database;

    private ConflictCare Care => Database.Get<ConflictCare>();

    private Visit Other => _visit with
    {
        Systems = [_visit.Systems[0] with { Readings = [.. _visit.Systems[0].Readings.Select(r => r.Test == "inhibitor" ? r with { Value = 59 } : r)] }],
    };

    public async Task InitializeAsync()
    {
        await _own.InitializeAsync();
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(_visit));
        Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(Other));
    }

    [Fact]
    public async Task Find_TwoContents_StandSideBySide()
    {
        var conflict = Assert.Single(await Care.ListAsync(Database.Supervisor));

        var difference = Assert.Single(conflict.Differences);
        Assert.Equal(("95\u00a0mg/L", "59\u00a0mg/L"), (difference.Before!.En, difference.After!.En));
        Assert.Equal(1, await Care.CountAsync(Database.Supervisor));
        Assert.Equal(VisitDocument.Canonical(_visit), VisitDocument.Canonical(conflict.Standing));
    }

    [Fact]
    public async Task Settle_Keep_LeavesTheVisitAndTheRefusedContent()
    {
        var conflict = Assert.Single(await Care.ListAsync(Database.Supervisor));

        Assert.IsType<SaveOutcome.Saved>(await Care.SettleAsync(Database.Supervisor, conflict.Id, ConflictChoice.KeepStanding, VisitDocument.Sha256(_visit), "typed twice"));

        Assert.Empty(await Care.ListAsync(Database.Supervisor));
        Assert.Equal(VisitDocument.Canonical(_visit), VisitDocument.Canonical(await StandingAsync()));
        var (row, audit) = await Database.Get<LogBookStore>().ReadAsync(Database.Supervisor, async db =>
            (await db.Conflicts.SingleAsync(), await db.AuditTrail.SingleAsync(a => a.What == AuditActs.Settled)));
        Assert.Equal((VisitDocument.Canonical(Other), "I. Wendle"), (row.Document, row.SettledBy));
        Assert.Contains("typed twice", audit.Why, StringComparison.Ordinal);

        // The same content again is known and settled: it opens nothing anew.
        Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(Other));
        Assert.Empty(await Care.ListAsync(Database.Supervisor));
    }

    [Fact]
    public async Task Settle_Take_MakesTheOtherTheNextVersion()
    {
        var conflict = Assert.Single(await Care.ListAsync(Database.Supervisor));

        Assert.IsType<SaveOutcome.Saved>(await Care.SettleAsync(Database.Supervisor, conflict.Id, ConflictChoice.TakeOther, VisitDocument.Sha256(_visit), "the second was read again"));

        var standing = await StandingAsync();
        Assert.Equal((2, 1, "IWE", "the second was read again"), (standing.Version!.Value, standing.Amends!.Value, standing.AmendedBy, standing.Reason));
        Assert.Equal(59, standing.Systems[0].Readings.Single(r => r.Test == "inhibitor").Value);
        Assert.Equal(2, await Database.Get<LogBookStore>().ReadAsync(Database.Supervisor, db => db.VisitVersions.CountAsync()));
        Assert.Empty(await Care.ListAsync(Database.Supervisor));
        Assert.Empty((await Database.Get<Verifier>().VerifyAsync(Database.Supervisor)).Faults);
    }

    [Theory]
    [InlineData(ConflictChoice.TakeOther, true)]
    [InlineData(ConflictChoice.KeepStanding, false)]
    public async Task Photos_OfTheOtherContent_AreKeptAndComeWithIt(ConflictChoice choice, bool isShown)
    {
        var photo = new Photo { Id = Guid.CreateVersion7(), Of = "CT-1/observations/tower" };
        var other = Other with { Photos = [photo], Notes = "with a picture" };
        Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(other));
        var folder = new PhotoFolder(Path.Combine(Database.Folder, "photos"));
        var photos = new PhotoStore(Database.Get<LogBookStore>(), folder, Database.Clock);
        using var picture = new MemoryStream(Picture());

        Assert.Equal(PhotoOutcome.Stored, await photos.KeepAsync(Database.Technician, photo.Id, picture));

        // It is there to decide by, and not on the page of the visit, whose text does not name it.
        var conflict = (await Care.ListAsync(Database.Supervisor)).Single(c => c.Other.Notes == "with a picture");
        Assert.Contains(photo.Id, conflict.Pictures);
        Assert.Empty((await Database.Get<VisitQuery>().OfAsync(Database.Supervisor, _visit.Id))!.Photos);
        Assert.Null(await photos.FindAsync(await Database.OfCustomerAsync("YAF"), photo.Id, small: false));

        Assert.IsType<SaveOutcome.Saved>(await Care.SettleAsync(Database.Supervisor, conflict.Id, choice, VisitDocument.Sha256(_visit), "looked at the picture"));

        Assert.Equal(isShown ? [(photo.Id, photo.Of, true)] : [], (await Database.Get<VisitQuery>().OfAsync(Database.Supervisor, _visit.Id))!.Photos);
        Assert.Equal(isShown, await photos.FindAsync(await Database.OfCustomerAsync("YAF"), photo.Id, small: true) is not null);
        var standing = await new VisitStandingQuery(Database.Get<LogBookStore>()).FindAsync(Database.Technician, _visit.Id);
        Assert.Equal(choice.ToString(), standing!.Settled[VisitDocument.Sha256(other)]);
    }

    [Fact]
    public async Task Settle_VisitChangedMeanwhile_IsDecidedAnew()
    {
        var conflict = Assert.Single(await Care.ListAsync(Database.Supervisor));
        Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Amended(_visit, 101)));

        var outcome = await Care.SettleAsync(Database.Supervisor, conflict.Id, ConflictChoice.TakeOther, VisitDocument.Sha256(_visit), "late");

        Assert.Equal(2, Assert.IsType<SaveOutcome.ChangedMeanwhile>(outcome).Version);
        var difference = Assert.Single(Assert.Single(await Care.ListAsync(Database.Supervisor)).Differences);
        Assert.Equal(("101\u00a0mg/L", "59\u00a0mg/L"), (difference.Before!.En, difference.After!.En));
    }

    [Fact]
    public async Task Settle_WithoutReasonOrRight_ChangesNothing()
    {
        var conflict = Assert.Single(await Care.ListAsync(Database.Supervisor));

        Assert.IsType<SaveOutcome.Invalid>(await Care.SettleAsync(Database.Supervisor, conflict.Id, ConflictChoice.KeepStanding, VisitDocument.Sha256(_visit), " "));
        Assert.IsType<SaveOutcome.NotAllowed>(await Care.SettleAsync(Database.Technician, conflict.Id, ConflictChoice.KeepStanding, VisitDocument.Sha256(_visit), "why"));
        Assert.Empty(await Care.ListAsync(Database.Technician));
        Assert.Single(await Care.ListAsync(Database.Supervisor));
    }

    public Task DisposeAsync() => _own.DisposeAsync();

    private static byte[] Picture()
    {
        using var bitmap = new SkiaSharp.SKBitmap(64, 48);
        bitmap.Erase(SkiaSharp.SKColors.SeaGreen);
        using var data = bitmap.Encode(SkiaSharp.SKEncodedImageFormat.Jpeg, 90);
        return data.ToArray();
    }

    private Task<IntakeOutcome> ReceiveAsync(Visit visit) => Database.Get<VisitIntake>().ReceiveAsync(Database.Technician, visit, IntakeSource.Tablet);

    private async Task<Visit> StandingAsync() => (await Database.Get<VisitReader>().FindAsync(Database.Supervisor, _visit.Id))!.Visit;
}
