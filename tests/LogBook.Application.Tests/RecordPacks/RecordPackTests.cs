using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Demo;
using LogBook.Application.RecordPacks;
using LogBook.Application.Tests.Imports;
using LogBook.Application.Visits;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.RecordPacks;

[Trait("goal", "record-pack")]
public sealed class RecordPackTests(YearOfRecords year) : IClassFixture<YearOfRecords>
{
    private const string Site = YearOfRecords.Site;
    private static readonly DateOnly From = new(2026, 1, 1);
    private static readonly DateOnly To = new(2026, 12, 31);

    // Wendlequay is visited twice a week: a year of it is the hundred visits of the goal.
    [Fact]
    public async Task Make_TwelveMonthsOfAHundredVisits_OpensInAnOfficeAndTellsTheSameFigures()
    {
        var database = year.Database;
        var visits = year.Firm.Document.Visits.Where(visit => visit.Site == Site && DateOnly.FromDateTime(visit.Arrived.Wall) is var day && day >= From && day <= To).GroupBy(visit => visit.Id).Select(all => all.MaxBy(visit => visit.Version ?? 1)!).ToList();
        Assert.InRange(visits.Count, 100, 140);

        var pack = await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, To);
        var files = await PackFiles.MakeAsync(pack!, Language.English);
        var file = files.Made;
        var sheets = await Office.SheetsAsync(files.Workbook);
        var paper = await Office.TextAsync(files.Pdf);

        Assert.Equal($"{Site}_2026-01-01_2026-12-31.zip", file.Name);
        Assert.Equal(visits.Count, file.Visits);
        Assert.Equal(visits.Count, sheets["Visits"].Count - 1);

        // Every reading of the records stands in the workbook with its own number, at its visit, system and test, and in no other quantity.
        var expected = visits.SelectMany(visit => visit.Systems.SelectMany(system => system.Readings)).ToList();
        var head = sheets["Results"][0];
        var number = Array.IndexOf(head, "Number");
        Assert.Equal(expected.Count, sheets["Results"].Count - 1);
        Assert.Equal(file.Results, expected.Count);
        string Row(string visit, string system, string test, string unit, double? value) => $"{visit} {system} {test} {unit} {value?.ToString("0.#########", CultureInfo.InvariantCulture)}";
        string Cell(string[] row, string column) => row[Array.IndexOf(head, column)];
        Assert.Equal(
            visits.SelectMany(visit => visit.Systems.SelectMany(record => record.Readings.Select(reading => Row(
                visit.Id.ToString(), record.System, TestTexts.NameOf(reading.Test).In(Language.English), Shown.Unit(reading.Unit, Language.English),
                reading.NotTaken is null && reading.NotQuantifiable != true ? RangeJudgement.NumberOf(reading) : null)))).Order(StringComparer.Ordinal),
            sheets["Results"].Skip(1).Select(row => Row(
                Cell(row, "Visit"), Cell(row, "System"), Cell(row, "Test"), Cell(row, "Unit"), row[number].Length == 0 ? null : double.Parse(row[number], CultureInfo.InvariantCulture))).Order(StringComparer.Ordinal));

        // Clocks are those of the domain.
        var history = SystemHistory.From(pack!.Firm, Site, "CT-1", year.Firm.Document.Visits.Where(visit => visit.Arrived.Utc.Year == 2026));
        var rules = RuleRecords.Of(history, From, To);
        var (missed, met) = (Array.IndexOf(sheets["Clocks"][0], "Missed"), Array.IndexOf(sheets["Clocks"][0], "Met"));
        var clocks = sheets["Clocks"].Skip(1).Where(row => row[0] == "CT-1").ToList();
        Assert.NotEmpty(rules);
        Assert.Equal(rules.Sum(rule => rule.Count(RuleStanding.Missed)), clocks.Sum(row => int.Parse(row[missed], CultureInfo.InvariantCulture)));
        Assert.Equal(rules.Sum(rule => rule.Count(RuleStanding.Met)), clocks.Sum(row => int.Parse(row[met], CultureInfo.InvariantCulture)));
        Assert.True(rules.Sum(rule => rule.Count(RuleStanding.Met)) > 20);

        // The paper tells each visit and never a verdict.
        Assert.All(visits, visit => Assert.Contains(Shown.Day(history.DayOf(visit.Arrived.Utc), Language.English), paper, StringComparison.Ordinal));
        Assert.DoesNotContain("complian", paper + string.Concat(sheets.Values.SelectMany(rows => rows.SelectMany(row => row))), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("\"met\", \"missed\" or \"unknown\"", string.Join(' ', paper.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Make_TwelveMonthsOfAHundredVisits_HoldsEveryPictureByVisitAndField()
    {
        var database = year.Database;
        var pack = await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, To);
        var files = await PackFiles.MakeAsync(pack!, Language.English, database.Get<PhotoFolder>());
        var sheet = (await Office.SheetsAsync(files.Workbook))["Photos"];
        string Cell(string[] row, string column) => row[Array.IndexOf(sheet[0], column)];

        Assert.True(year.Photos.Count >= 100);
        Assert.Equal((year.Photos.Count * 2, 0), (files.Made.Photos, files.Made.MissingPhotos));
        Assert.Equal(year.Photos.SelectMany(visit => visit.Value.Select(photo => $"{visit.Key} {photo.Id} {photo.Of}")).Order(StringComparer.Ordinal), sheet.Skip(1).Select(row => $"{Cell(row, "Visit")} {Cell(row, "Photo")} {Cell(row, "What")}").Order(StringComparer.Ordinal));
        foreach (var row in sheet.Skip(1))
        {
            var kept = await database.Get<PhotoStore>().FindAsync(database.Supervisor, Guid.Parse(Cell(row, "Photo")), small: false);
            Assert.Equal(kept, files.Files[Cell(row, "File")]);
            Assert.Matches($"^photos/2026-..-.._{Cell(row, "Visit")}/0[12]_{Cell(row, "What").Replace('/', '-')}\\.jpg$", Cell(row, "File"));
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(kept!)), Cell(row, "SHA-256 of the file"));
        }
    }

    [Fact]
    public async Task Make_Checksums_AreThoseOfAllFiles()
    {
        var database = year.Database;

        var files = (await PackFiles.MakeAsync((await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, new DateOnly(2026, 1, 31)))!, Language.Spanish, database.Get<PhotoFolder>())).Files;
        var lines = Encoding.ASCII.GetString(files[RecordPackMaker.Checksums]).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.True(lines.Length > 2);
        Assert.Equal(files.Keys.Where(name => name != RecordPackMaker.Checksums).Order(StringComparer.Ordinal), lines.Select(line => line[66..]).Order(StringComparer.Ordinal));
        Assert.All(lines, line => Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(files[line[66..]])), line[..64]));
    }

    [Fact]
    public async Task Notice_WrittenDown_StandsInTheWorkbookAndOnPaper()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var visit = SampleFirm.Visit();
        Assert.IsType<IntakeOutcome.Stored>(await database.Get<VisitIntake>().ReceiveAsync(database.Technician, visit, IntakeSource.Tablet));
        var at = visit.Arrived.Utc.AddDays(1);
        var told = new Notification(visit.Id, Domain.Programmes.TestCodes.Legionella, "OXT-LEG", at, "I. Wendle", "Oxterhelm health office", "by telephone, reference OX-114");
        Assert.IsType<Application.Data.SaveOutcome.Saved>(await database.Get<Application.Clocks.NoticeStore>().RecordAsync(database.Supervisor, "YAF-1", visit.Systems[0].System, told));

        var day = DateOnly.FromDateTime(visit.Arrived.Wall);
        var files = await PackFiles.MakeAsync((await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, "YAF-1", day, day.AddDays(3)))!, Language.English);
        var row = Assert.Single((await Office.SheetsAsync(files.Workbook))["Authorities told"].Skip(1));

        Assert.Contains("Oxterhelm health office", row);
        Assert.Contains("by telephone, reference OX-114", row);
        Assert.Contains("Oxterhelm health office", await Office.TextAsync(files.Pdf), StringComparison.Ordinal);
    }

    // The same clocks as those that remind: on every other Monday, what is overdue by one is missed and not done by the other.
    [Fact]
    public void RuleRecords_OnManyDays_AgreeWithTheRunningClocks()
    {
        var firm = new FirmSetUp(year.Firm.Document);
        var (overdue, looked) = (0, 0);
        foreach (var system in year.Firm.Document.Systems)
        {
            var all = SystemHistory.From(firm, system.Site, system.Code, year.Firm.Document.Visits);
            var first = all.DayOf(all.Visits[0].At);
            for (var day = first.AddDays(20); day <= DemoFirm.LastDay; day = day.AddDays(14))
            {
                var history = all.AsKnownAt(day.ToDateTime(new TimeOnly(23, 0), DateTimeKind.Utc));
                var running = Duties.Of(history, history.Visits.Reverse(), day).Where(duty => duty.Kind is DutyKind.Interval or DutyKind.AfterEvent or DutyKind.Retest && duty.IsOverdueOn(day)).Select(duty => (duty.Rule.Code, duty.Kind, duty.Since)).Order().ToList();
                var recorded = RuleRecords.Of(history, first, day).SelectMany(rule => rule.Spells.Where(spell => spell is { Standing: RuleStanding.Missed, DoneOn: null })
                    .GroupBy(spell => spell.Kind).Select(kind => kind.MaxBy(spell => spell.Since)!).Select(spell => (rule.Code, spell.Kind, spell.Since))).Order().ToList();

                Assert.True(running.SequenceEqual(recorded), $"{system.Site} {day:yyyy-MM-dd}: clocks {string.Join(' ', running)}, records {string.Join(' ', recorded)}");
                overdue += running.Count;
                looked++;
            }
        }

        Assert.True(looked > 300);
        Assert.True(overdue > 5, $"Only {overdue} overdue clocks were compared.");
    }

    [Fact]
    public async Task Read_StatementsDoNotGrowWithVisits()
    {
        var database = year.Database;
        await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, From);

        database.Statements.Reset();
        await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, From.AddDays(3));
        var few = database.Statements.Count;
        database.Statements.Reset();
        await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, Site, From, To);

        Assert.Equal(few, database.Statements.Count);
    }

    [Fact]
    public async Task Amendment_IsToldValueByValue_ToTheFirmOnly()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var first = SampleFirm.Visit();
        await Documents.ImportAsync(database, await Documents.SetUpAsync() with { Visits = [first, SampleFirm.Amended(first, 59)] });
        await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, SampleFirm.Visit("PLU-1", "2025-03-05T09:00:00+00:00"), IntakeSource.Page);
        var reader = database.Get<RecordPackReader>();
        var (from, to) = (new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31));

        var pack = await reader.ReadAsync(database.Supervisor, "YAF-1", from, to);
        var customer = await database.OfCustomerAsync("YAF");
        var own = await reader.ReadAsync(customer, "YAF-1", from, to);
        var table = RecordTables.Of(pack!, Language.English).Single(part => part.Title == RecordTexts.Amendments);

        var row = Assert.Single(table.Rows, entry => Equals(entry.Cells[6], "95 mg/L".Replace(' ', '\u00a0')) || Equals(entry.Cells[6], "95"));
        Assert.Equal("misread", row.Cells[4]);
        Assert.False(own!.TellsVersions);
        Assert.All(RecordTables.Of(own, Language.English).Single(part => part.Title == RecordTexts.Amendments).Rows, entry => Assert.Equal("", entry.Cells[6]));
        Assert.Null(await reader.ReadAsync(customer, "PLU-1", from, to));
        Assert.Null(await reader.PreviewAsync(customer, "PLU-1", from, to));
        Assert.Null(await reader.ReadAsync(database.Technician, "YAF-1", from, to));
        Assert.Null(await reader.ReadAsync(await database.OfCustomerAsync("YAF", PersonRole.SiteStaff), "YAF-1", from, to));
    }

    [Fact]
    public async Task Preview_CountsWhatThePackHolds()
    {
        var database = year.Database;
        var reader = database.Get<RecordPackReader>();

        var preview = await reader.PreviewAsync(database.Supervisor, Site, From, To);
        var file = (await PackFiles.MakeAsync((await reader.ReadAsync(database.Supervisor, Site, From, To))!, Language.Portuguese)).Made;

        Assert.Equal((preview!.Visits, preview.Readings, preview.Photos), (file.Visits, file.Results, file.Photos + file.MissingPhotos));
        Assert.Equal((year.Photos.Count * 2, Directory.GetFiles(database.Get<PhotoFolder>().Path).Sum(path => new FileInfo(path).Length)), (preview.Pictures, preview.PictureBytes));
        Assert.Equal(preview.LastEntry!.Value.AddYears(Retention.Years), preview.Keeping!.Until);
    }
}
