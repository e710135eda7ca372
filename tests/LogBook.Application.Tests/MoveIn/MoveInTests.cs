using System.Text;
using LogBook.Application.Imports;
using LogBook.Application.MoveIn;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.MoveIn;

[Trait("goal", "move-in")]
public sealed class MoveInTests
{
    [Fact]
    public async Task MessyThreeYears_MoveIn_EveryReadingWhereItBelongs_AndEachDoubtfulCellAsked()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var desk = database.Get<MoveInDesk>();
        var file = new MessyWorkbook();
        var (sheets, refusal) = MoveInReader.Read("log.xlsx", file.Bytes, Language.English);
        Assert.Null(refusal);
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        Task<MoveInResult?> WorkOutAsync(MoveInMapping mapping) => desk.WorkOutAsync(database.Supervisor, "log.xlsx", sheets, mapping, answers);

        // The place of the second sheet and the gallon nobody can guess; all other columns of it are understood.
        var mapping = new MoveInMapping { Technician = "RYA" };
        var first = await WorkOutAsync(mapping);
        Assert.Equal(["Mould tower 2024"], first!.SheetsWithoutPlace);
        var gallons = Assert.Single(first.Columns, column => column.Missing is not null);
        Assert.Equal(("Make-up meter (gal)", "say in which unit"), (gallons.Heading, gallons.Missing));
        Assert.Equal(["[gal_us]", "[gal_br]"], gallons.UnitsNamed);
        Assert.False(first.MayMove);

        mapping = mapping with
        {
            Sites = new Dictionary<string, string>(StringComparer.Ordinal) { ["Mould tower 2024"] = "PLU-1" },
            Columns = new Dictionary<string, ColumnMeaning>(StringComparer.Ordinal) { [gallons.Key] = gallons.Meaning with { Unit = "[gal_us]" } },
        };
        var asked = new HashSet<string>(StringComparer.Ordinal);
        var result = await WorkOutAsync(mapping);
        for (var round = 0; round < 10 && result!.Questions.Count > 0; round++)
        {
            asked.UnionWith(result.Questions.Select(question => $"{question.Sheet} {question.Address}"));
            foreach (var question in result.Questions)
            {
                answers[question.Id] = question.Choices.Select(choice => choice.Key).First(key => key is "group" or "dmy" or "convert" or "take");
            }

            result = await WorkOutAsync(mapping);
        }

        Assert.Equal(file.Doubtful.Order(StringComparer.Ordinal), asked.Order(StringComparer.Ordinal));
        Assert.True(result!.MayMove);
        Assert.Equal(48, result.Visits.Count);
        Assert.Equal(3, result.Skipped.Count(skip => skip.Why == "a row of totals"));
        Assert.Contains(result.Skipped, skip => skip.Why.StartsWith("the same as row", StringComparison.Ordinal));
        Assert.Contains(result.Skipped, skip => skip.Why.Contains("closed for Easter", StringComparison.Ordinal));
        Assert.Contains(result.Skipped, skip => skip is { Sheet: "Contacts", Row: 0 });

        var outcome = await desk.MoveAsync(database.Supervisor, result);

        Assert.Empty(outcome.Issues);
        Assert.Equal((48, 0), (outcome.Visits, outcome.AlreadyKnown));
        var stored = (await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!.Visits;
        Assert.Equal(file.Truth.Order(), Told(stored).Order());
        Assert.Contains(stored, visit => visit.Notes == "=fan belt changed");
        Assert.Equal(stored.Select(visit => visit.Arrived.Utc).Order(), result.Visits.Select(made => made.Visit.Arrived.Utc));

        // The same file again, and once more from its bytes: nothing is added.
        var again = await desk.MoveAsync(database.Supervisor, (await WorkOutAsync(mapping))!);
        Assert.Equal((0, 48), (again.Visits, again.AlreadyKnown));
    }

    [Fact]
    public async Task Csv_WithSemicolonsAndCommas_IsReadByTheSameWay()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var csv = "\uFEFFFecha;Sitio;Técnico;pH, torre;Conductividad, torre (µS/cm)\n14/03/2024;YAF-1;RYA;8,1;1300\n03/04/2024;yaffleford college;RYA;8,2;1310\n"u8.ToArray();

        var (sheets, _) = MoveInReader.Read("registro.csv", csv, Language.Spanish);
        var result = await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor, "registro.csv", sheets, new MoveInMapping(), new Dictionary<string, string>());

        Assert.Empty(result!.Questions);
        Assert.True(result.MayMove);
        Assert.Equal([new DateOnly(2024, 3, 14), new DateOnly(2024, 4, 3)], result.Visits.Select(made => DateOnly.FromDateTime(made.Visit.Arrived.Wall)));
        Assert.Equal([8.1, 8.2], result.Visits.Select(made => made.Visit.Systems[0].Readings.Single(reading => reading.Test == "pH").Value!.Value));
    }

    [Theory]
    [InlineData("2024-03-14,YAF-1,RYA,abc", "D2", "“abc” is not a number; expected are digits, as 2.5 or <0.1.")]
    [InlineData("yesterday,YAF-1,RYA,8.1", "A3", "“yesterday” is not a day; expected is one as 2025-03-04 or 4 March 2025.")]
    [InlineData("2024-03-14,Nowhere,RYA,8.1", "B2", "“Nowhere”: which site is it?")]
    [InlineData("2024-03-14,YAF-1,Nobody,8.1", "C2", "“Nobody”: who is it?")]
    [InlineData("2024-03-14,YAF-1,RYA,15", "D2", null)]
    public async Task Fault_IsNamedByItsCell_WithWhatIsExpected_AndNothingMovesIn(string row, string address, string? says)
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var csv = address == "A3" ? "Date,Site,Technician,Tower pH\n2024-03-01,YAF-1,RYA,8.0\n" + row : "Date,Site,Technician,Tower pH\n" + row;
        var (sheets, _) = MoveInReader.Read("log.csv", Encoding.UTF8.GetBytes(csv), Language.English);
        var desk = database.Get<MoveInDesk>();

        var result = await desk.WorkOutAsync(database.Supervisor, "log.csv", sheets, new MoveInMapping(), new Dictionary<string, string>());
        var outcome = await desk.MoveAsync(database.Supervisor, result!);

        var question = Assert.Single(result!.Questions);
        Assert.Equal(("log", address), (question.Sheet, question.Address));
        Assert.True(says is null || says == question.Says, question.Says);
        Assert.False(outcome.Written);
        Assert.Empty((await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!.Visits);
    }

    [Fact]
    public async Task LeftOutValue_StandsInTheNotes()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var (sheets, _) = MoveInReader.Read("log.csv", "Date,Site,Technician,Tower pH,Tower chloride (mg/L)\n2024-03-14,YAF-1,RYA,meter broken,100"u8.ToArray(), Language.English);

        var result = await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor, "log.csv", sheets, new MoveInMapping(), new Dictionary<string, string> { ["word|log|D2"] = "leave" });

        var visit = Assert.Single(result!.Visits).Visit;
        Assert.Equal("Tower pH: meter broken", visit.Notes);
        Assert.Equal("chloride", Assert.Single(visit.Systems[0].Readings).Test);
    }

    [Fact]
    public async Task Template_FilledIn_IsUnderstoodWithoutAQuestion()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var firm = await database.Get<LogBook.Application.Sites.SetUpStore>().FirmAsync(database.Supervisor);
        foreach (var language in Enum.GetValues<Language>())
        {
            using var book = new ClosedXML.Excel.XLWorkbook(new MemoryStream(MoveInTemplate.Make(firm, language)));
            var sheet = book.Worksheet(1);
            sheet.Cell(4, 1).SetValue(new DateTime(2024, 3, 14));
            sheet.Cell(4, 5).SetValue("RYA");
            sheet.Cell(4, 6).SetValue(1300d);
            sheet.Cell(4, 14).SetValue(300d);
            using var filled = new MemoryStream();
            book.SaveAs(filled);

            var (sheets, _) = MoveInReader.Read("t.xlsx", filled.ToArray(), language);
            var result = await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor with { Language = language }, "t.xlsx", sheets, new MoveInMapping(), new Dictionary<string, string>());

            Assert.Equal([], result!.Columns.Where(column => column.Missing is not null).Select(column => $"{column.Heading}: {column.Missing}"));
            Assert.Equal([], result.Questions);
            Assert.Equal([("tower", 1300d), ("make-up", 300d)], Assert.Single(result.Visits).Visit.Systems[0].Readings.Select(reading => (reading.At, reading.Value!.Value)));
        }
    }

    [Fact]
    public async Task Mapping_KeptOnce_ReadsTheNextFileAlone()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var store = database.Get<MappingStore>();
        var mapping = new MoveInMapping
        {
            Name = "Old log", Technician = "RYA", Sites = new Dictionary<string, string> { [""] = "YAF-1" },
            Columns = new Dictionary<string, ColumnMeaning> { ["wasser 7"] = new() { Kind = ColumnKind.Test, Code = "chloride", At = "tower", Unit = "mg/L" }, ["tag"] = new() { Kind = ColumnKind.Day } },
        };

        Assert.IsType<LogBook.Application.Data.SaveOutcome.Saved>(await store.SaveAsync(database.Supervisor, mapping));
        Assert.IsType<LogBook.Application.Data.SaveOutcome.NotAllowed>(await store.SaveAsync(database.Technician, mapping));
        var (sheets, _) = MoveInReader.Read("x.csv", "Tag,Wasser 7\n2024-03-14,100"u8.ToArray(), Language.English);
        var kept = MappingStore.Best(await store.ListAsync(database.Supervisor), sheets);
        var result = await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor, "x.csv", sheets, kept!, new Dictionary<string, string>());

        // The columns are kept, the site behind the last file's sheet is not: another file is another site's until somebody says so.
        Assert.Equal(("Old log", 0), (kept!.Name, kept.Sites.Count));
        Assert.Equal(["x"], result!.SheetsWithoutPlace);
        Assert.True((await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor, "x.csv", sheets, kept with { Sites = mapping.Sites }, new Dictionary<string, string>()))!.MayMove);
        Assert.Empty(await store.ListAsync(database.Technician));
        Assert.Null(await database.Get<MoveInDesk>().WorkOutAsync(database.Technician, "x.csv", sheets, kept, new Dictionary<string, string>()));
    }

    [Theory]
    [InlineData("3/4/2025", "2025-04-03", "2025-03-04")]
    [InlineData("25/4/2025", "2025-04-25", null)]
    [InlineData("4/25/2025", null, "2025-04-25")]
    [InlineData("5/5/25", "2025-05-05", null)]
    [InlineData("3.4.2025", "2025-04-03", null)]
    [InlineData("2025-04-03", "2025-04-03", null)]
    [InlineData("Mon 3 Apr 2025", "2025-04-03", null)]
    [InlineData("3 de abril de 2025", "2025-04-03", null)]
    [InlineData("3 março 2025", "2025-03-03", null)]
    [InlineData("31/2/2025", null, null)]
    [InlineData("8,1", null, null)]
    [InlineData("Total", null, null)]
    public void Day_AsWritten_HasOneMeaningTwoOrNone(string text, string? dayFirst, string? monthFirst)
    {
        var read = DayReading.Parse(new MoveInCell(text));

        Assert.Equal((dayFirst, monthFirst), (read.DayFirst?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), read.MonthFirst?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData("not a workbook", "CSV")]
    [InlineData("PK\u0003\u0004broken", "cannot be read")]
    public void Read_OddFile_IsRefusedInWordsOrReadAsText(string content, string expected)
    {
        var (sheets, refusal) = MoveInReader.Read("x.xlsx", Encoding.UTF8.GetBytes(content), Language.English);

        Assert.True(expected == "CSV" ? sheets.Count == 1 && refusal is null : refusal!.Contains(expected, StringComparison.Ordinal) && sheets.Count == 0);
    }

    [Fact]
    public async Task EmptyCells_OfSiteAndTechnician_AreAskedEachByItself()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();

        var result = await WorkOutAsync(database, "Date,Site,Technician,Tower pH\n2024-03-14,,RYA,8.1\n2024-04-14,,RYA,8.1\n2024-05-14,YAF-1,,8.1\n2024-06-14,YAF-1,,8.1");

        Assert.Equal(["B2", "B3", "C4", "C5"], result.Questions.Select(question => question.Address));
        Assert.Equal(4, result.Questions.Select(question => question.Id).Distinct().Count());
        Assert.False(result.MayMove);
    }

    [Fact]
    public async Task Name_OfTwoSites_IsAsked_AndTheCodeStillTells()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var firm = await database.Get<LogBook.Application.Sites.SetUpStore>().FirmAsync(database.Supervisor);
        var name = firm.Sites["YAF-1"].Name;
        var two = new Domain.History.FirmSetUp(firm.Document with { Sites = [.. firm.Document.Sites.Select(site => site with { Name = name })] });
        var (sheets, _) = MoveInReader.Read("log.csv", Encoding.UTF8.GetBytes($"Date,Site,Technician,Tower pH\n2024-03-14,{name},RYA,8.1\n2024-04-14,YAF-1,RYA,8.1"), Language.English);

        var result = MoveInWork.Of(new MoveInSource("log.csv", sheets, new MoveInMapping(), new Dictionary<string, string>(), two, Language.English));

        Assert.Equal("B2", Assert.Single(result.Questions).Address);
        Assert.Equal("YAF-1", Assert.Single(result.Visits).Visit.Site);
    }

    [Fact]
    public async Task SecondImport_WithAnotherTechnicianSaidForTheFile_AddsNothing()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var desk = database.Get<MoveInDesk>();
        const string Csv = "Date,Site,Tower pH\n2024-03-14,YAF-1,8.1";
        var people = (await database.Get<LogBook.Application.Sites.SetUpStore>().FirmAsync(database.Supervisor)).People.Keys.Where(code => code != "RYA").ToList();

        var first = await desk.MoveAsync(database.Supervisor, await WorkOutAsync(database, Csv, new MoveInMapping { Technician = "RYA" }));
        var second = await desk.MoveAsync(database.Supervisor, await WorkOutAsync(database, Csv, new MoveInMapping { Technician = people[0] }));

        Assert.Equal((1, 0), (first.Visits, second.Visits));
        Assert.Equal("RYA", Assert.Single((await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!.Visits).Technician);
    }

    [Fact]
    public async Task VisitThatDiffersFromWhatIsStored_IsNamedByItsCell_AndTheOthersCanMoveIn()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var desk = database.Get<MoveInDesk>();
        await desk.MoveAsync(database.Supervisor, await WorkOutAsync(database, "Date,Site,Technician,Tower pH\n2024-03-14,YAF-1,RYA,8.1"));

        var result = await WorkOutAsync(database, "Date,Site,Technician,Tower pH\n2024-03-14,YAF-1,RYA,8.4\n2024-04-14,YAF-1,RYA,8.2\n2024-05-14,YAF-1,RYA,8.3");
        var refused = await desk.MoveAsync(database.Supervisor, result);
        Assert.False(refused.Written);
        Assert.Equal("log D2", Assert.Single(refused.Issues).Path);
        Assert.True(MoveInDesk.AreAllStored(refused.Issues));
        Assert.Single((await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!.Visits);

        var moved = await desk.MoveAsync(database.Supervisor, result, keepStored: true);

        Assert.Equal((true, 2), (moved.Written, moved.Visits));
        var stored = (await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!.Visits.OrderBy(visit => visit.Arrived.Utc);
        Assert.Equal([8.1, 8.2, 8.3], stored.Select(visit => visit.Systems[0].Readings[0].Value!.Value));
    }

    [Theory]
    [InlineData("Time", "2:30 PM", null)]
    [InlineData("Time", "after lunch", "“after lunch” is not a time of the day; expected is one as 14:30 or 2:30 PM.")]
    public async Task Time_IsUnderstoodOrAsked(string heading, string cell, string? says)
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();

        var result = await WorkOutAsync(database, $"Date,{heading},Site,Technician,Tower pH\n2024-03-14,{cell},YAF-1,RYA,8.1");

        Assert.Equal(says, result.Questions.SingleOrDefault()?.Says);
        Assert.Equal(says is null ? [new TimeSpan(14, 30, 0)] : Array.Empty<TimeSpan>(), result.Visits.Select(made => made.Visit.Arrived.Wall.TimeOfDay));
    }

    [Theory]
    [InlineData(ColumnKind.DrumAdded, "L", "12 kg")]
    [InlineData(ColumnKind.DrumLevel, "cm", "<5")]
    [InlineData(ColumnKind.Dial, "m3", ">100")]
    public async Task DrumOrMeter_WithAnotherMeasureOrASign_IsAsked(ColumnKind kind, string unit, string cell)
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        var system = (await database.Get<LogBook.Application.Sites.SetUpStore>().FirmAsync(database.Supervisor)).SystemsOf("YAF-1").First();
        var meaning = new ColumnMeaning { Kind = kind, Code = kind == ColumnKind.Dial ? system.Meters[0].Code : system.Drums[0].Code, Unit = unit };
        var mapping = new MoveInMapping { Columns = new Dictionary<string, ColumnMeaning> { ["what"] = meaning } };

        var result = await WorkOutAsync(database, $"Date,Site,Technician,What\n2024-03-14,YAF-1,RYA,{cell}", mapping);

        var question = Assert.Single(result.Questions);
        Assert.Equal(("D2", true), (question.Address, question.IsFault));
        Assert.StartsWith("measure|", question.Id, StringComparison.Ordinal);
    }

    // Calcium as Ca is another number than calcium as CaCO3, and bromine another than halogen as Cl2.
    [Theory]
    [InlineData("Calcium hardness", TestCodes.Calcium)]
    [InlineData("Calcium as CaCO3", TestCodes.Calcium)]
    [InlineData("Calcium as Ca", null)]
    [InlineData("Free halogen", TestCodes.FreeHalogen)]
    [InlineData("Free halogen as Br2", null)]
    public void Heading_WithAnotherBasis_IsNoGuess(string heading, string? test) => Assert.Equal(test, HeadingGuess.Of(heading, [], _ => null).Code);

    [Fact]
    public void PercentCell_IsReadAsItIsShown()
    {
        using var file = new MemoryStream();
        using (var book = new ClosedXML.Excel.XLWorkbook())
        {
            var sheet = book.AddWorksheet("Level");
            sheet.Cell(1, 1).Value = 0.85;
            sheet.Cell(1, 1).Style.NumberFormat.Format = "0 %";
            sheet.Cell(1, 2).Value = 0.85;
            book.SaveAs(file);
        }

        var (sheets, problem) = MoveInReader.Read("level.xlsx", file.ToArray(), Language.English);

        Assert.Null(problem);
        Assert.Equal(("85 %", (double?)0.85), (sheets[0].At(0, 0).Text, sheets[0].At(0, 1).Number));
    }

    [Fact]
    public async Task Row_WithNotesOnly_IsAVisitWithNotes()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();

        var result = await WorkOutAsync(database, "Date,Site,Technician,Notes\n2024-03-14,YAF-1,RYA,the pump house was locked");

        Assert.Equal("the pump house was locked", Assert.Single(result.Visits).Visit.Notes);
    }

    private static async Task<MoveInResult> WorkOutAsync(SqliteDatabase database, string csv, MoveInMapping? mapping = null)
    {
        var (sheets, _) = MoveInReader.Read("log.csv", Encoding.UTF8.GetBytes(csv), Language.English);
        return (await database.Get<MoveInDesk>().WorkOutAsync(database.Supervisor, "log.csv", sheets, mapping ?? new MoveInMapping(), new Dictionary<string, string>()))!;
    }

    private static IEnumerable<(DateOnly Day, string Site, string What, double? Number, string Sign)> Told(IEnumerable<Domain.Visits.Visit> visits)
    {
        foreach (var visit in visits)
        {
            var day = DateOnly.FromDateTime(visit.Arrived.Wall);
            foreach (var record in visit.Systems)
            {
                foreach (var reading in record.Readings)
                {
                    yield return (day, visit.Site, $"{reading.At} {reading.Test} {reading.Unit}", reading.Value, reading.Qualifier ?? reading.NotTaken ?? "");
                }

                foreach (var drum in record.Drums)
                {
                    yield return (day, visit.Site, $"drum {drum.Drum} {drum.Unit}", drum.Level, "");
                }

                foreach (var meter in record.Meters)
                {
                    yield return (day, visit.Site, $"meter {meter.Meter}", meter.Dial, "");
                }
            }
        }
    }
}
