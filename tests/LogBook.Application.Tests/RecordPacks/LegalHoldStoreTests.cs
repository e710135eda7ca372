using LogBook.Application.Data;
using LogBook.Application.RecordPacks;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.RecordPacks;

public sealed class LegalHoldStoreTests
{
    [Fact]
    public async Task Set_LaidAndLifted_KeepsWhoWhenAndWhyInTheAudit()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var holds = database.Get<LegalHoldStore>();

        Assert.Equal(new SaveOutcome.Saved(1), await holds.SetAsync(database.Supervisor, "yaf-1", held: true, "letter of 3 March", 0));
        var laid = await holds.OfAsync(database.Supervisor, "YAF-1");
        Assert.Equal(new SaveOutcome.Saved(2), await holds.SetAsync(database.Supervisor, "YAF-1", held: false, "case closed", 1));
        var lifted = await holds.OfAsync(database.Supervisor, "YAF-1");
        var trail = await database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.AuditTrail.Where(row => row.Entity == "LegalHold").OrderBy(row => row.Id).ToListAsync());

        Assert.Equal((true, "I. Wendle", "letter of 3 March", "YAF-1"), (laid!.IsHeld, laid.Who, laid.Why, laid.Site));
        Assert.Equal(database.Clock.GetUtcNow().UtcDateTime, laid.At);
        Assert.False(lifted!.IsHeld);
        Assert.Equal(["letter of 3 March", "case closed"], trail.Select(row => row.Why));
        Assert.Equal(trail[0].New, trail[1].Old);
    }

    [Fact]
    public async Task Set_ByThoseWhoMayNot_WithoutReasonOrFromAnOldVersion_IsRefused()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var holds = database.Get<LegalHoldStore>();
        await holds.SetAsync(database.Supervisor, "YAF-1", held: true, "letter", 0);

        Assert.IsType<SaveOutcome.NotAllowed>(await holds.SetAsync(database.Technician, "YAF-1", held: false, "x", 1));
        Assert.IsType<SaveOutcome.Invalid>(await holds.SetAsync(database.Supervisor, "YAF-1", held: false, " ", 1));
        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await holds.SetAsync(database.Supervisor, "YAF-1", held: false, "x", 0));
        Assert.IsType<SaveOutcome.NotFound>(await holds.SetAsync(database.Supervisor, "NOWHERE", held: true, "x", 0));
        Assert.Null(await holds.OfAsync(await database.OfCustomerAsync("YAF"), "YAF-1"));
        Assert.True((await holds.OfAsync(database.Supervisor, "YAF-1"))!.IsHeld);
    }

    // The set-up is exported and read as before: a hold is no part of the exchange format.
    [Fact]
    public async Task Hold_IsNoPartOfTheSetUp_AndKeepsTheRecords()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        await database.Get<LegalHoldStore>().SetAsync(database.Supervisor, "YAF-1", held: true, "letter", 0);
        await database.Get<LogBook.Application.Visits.VisitIntake>().ReceiveAsync(database.Supervisor, LogBook.Testing.SampleFirm.Visit(), LogBook.Application.Visits.IntakeSource.Page);

        var preview = await database.Get<RecordPackReader>().PreviewAsync(database.Supervisor, "YAF-1", null, null);
        var pack = await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, "YAF-1", preview!.From, preview.To);
        var paper = await Office.TextAsync((await PackFiles.MakeAsync(pack!, Domain.Languages.Language.English)).Pdf);

        Assert.Null(preview.Keeping!.Until);
        Assert.Contains("until the legal hold is lifted", paper, StringComparison.Ordinal);
        Assert.Contains("by I. Wendle: letter", paper, StringComparison.Ordinal);
        Assert.Empty((await database.Get<LogBook.Application.Audit.Verifier>().VerifyAsync(database.Supervisor)).Faults);
    }
}
