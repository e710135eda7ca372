using System.Text.Json;
using System.Text.Json.Nodes;
using ClosedXML.Excel;
using LogBook.Application.RecordPacks;
using LogBook.Application.Tests.Imports;
using LogBook.Application.Tests.Summaries;
using LogBook.Application.Visits;
using LogBook.Application.Workbooks;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>Hostile words in every text of visits and set-up at once, one visit for each of the corpus.</summary>
[Trait("goal", "S7")]
[Trait("goal", "record-pack")]
public sealed class RecordInjectionTests : IDisposable
{
    private readonly PhotoFolder _photos = new(Directory.CreateTempSubdirectory("logbook-photos").FullName);

    private static readonly string[] Corpus =
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1)", "=HYPERLINK(\"http://x.example\",\"y\")", "\t=1+1", "  =1+1", "a\0b", "\r\n=1+1", "<script>alert(1)</script>", "]]><c t=\"str\"><f>1+1</f></c>", "&lt;b&gt; & '", "'=1+1",
        "x\",\"=1+1", "_x003D_1+1", "\u202Etxt.exe\u2066 \u200F", "a\uD800b", "../../etc/x", new string('x', 10_000),
    ];

    [Fact]
    public async Task Make_HostileWordsEverywhere_StayTextInWorkbookAndPaper()
    {
        var setUp = await Documents.SetUpAsync();
        var arrived = RichVisit.Visit.Arrived.Utc;
        List<Visit> visits = [.. Corpus.Select((words, day) => Hostile(RichVisit.Visit, words) with { Id = Guid.CreateVersion7(), Site = "YAF-1", Arrived = Moment.OfUtc(arrived.AddDays(day)) })];
        var firm = new FirmSetUp(setUp);
        var site = firm.Sites["YAF-1"] with { Name = "=1+1", Address = "@SUM(A1)" };
        var pack = new RecordPack
        {
            FirmName = "+1+1",
            Site = site,
            CustomerName = "-1+1",
            From = new DateOnly(2025, 3, 1),
            To = new DateOnly(2025, 12, 31),
            JudgedOn = new DateOnly(2025, 12, 31),
            MadeAt = new DateTime(2026, 1, 2, 8, 0, 0, DateTimeKind.Utc),
            MadeBy = "=1+1",
            Zone = TimeZoneInfo.Utc,
            Firm = firm,
            Systems = [new PackSystem(SystemHistory.From(firm, "YAF-1", "CT-1", visits), [])],
            Visits = [.. visits.Select((visit, place) => new PackVisit(visit, [new PackVersion(1, RichVisit.Visit, arrived, Corpus[place], null, "00"), new PackVersion(2, visit, arrived, Corpus[place], Corpus[place], "00")], Corpus[place], arrived, null, null, null, arrived))],
            Promises = [],
            Photos = [.. Corpus.Select((words, place) => new PackPhoto(visits[place].Id, Guid.CreateVersion7(), words, null, words, PackPhotoState.Included) { StoredAs = "picture.jpg", Bytes = 3 })],
            Hold = new LegalHold("YAF-1", IsHeld: true, "=1+1", arrived, "@SUM(A1)", 1),
            TellsVersions = true,
        };

        await File.WriteAllBytesAsync(Path.Combine(_photos.Path, "picture.jpg"), [1, 2, 3]);
        var files = await PackFiles.MakeAsync(pack, Language.English, _photos);
        using var book = new XLWorkbook(new MemoryStream(files.Workbook));
        var cells = book.Worksheets.SelectMany(sheet => sheet.CellsUsed()).ToList();
        var sheets = await Office.SheetsAsync(files.Workbook);
        var shown = sheets.Values.SelectMany(rows => rows.SelectMany(row => row)).ToList();
        var paper = await Office.TextAsync(files.Pdf);

        Assert.DoesNotContain(cells, cell => cell.HasFormula);
        // The corpus computes to 2: no more twos are shown than were written.
        Assert.Equal(cells.Count(known => known.DataType == XLDataType.Number && known.GetDouble() == 2), shown.Count(cell => cell is "2"));
        foreach (var words in Corpus)
        {
            // Not a test of nothing: the words are there, as text, in many places, and an office shows them as they were written.
            var clean = SheetText.Clean(words);
            var told = shown.Count(cell => Same(cell, clean));
            Assert.True(told > 8, $"{words[..Math.Min(20, words.Length)]} is shown {told} times as it was written.");
        }

        Assert.Contains("=1+1", paper, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', paper);

        // A name leads to no other folder and begins no formula, whatever was written as field.
        Assert.Equal(Corpus.Length, files.Made.Photos);
        Assert.All(files.Files.Keys.Where(name => name.EndsWith(".jpg", StringComparison.Ordinal)), name => Assert.Matches("^photos/[0-9]{4}-[0-9]{2}-[0-9]{2}_[0-9a-f-]{36}/01_[A-Za-z0-9_-]{0,60}\\.jpg$", name));
    }

    public void Dispose() => Directory.Delete(_photos.Path, recursive: true);

    [Theory]
    [InlineData("Results: all [of] them / and more \\ than 31 letters*?", "Results  all  of  them   and mo")]
    [InlineData("'=1+1'", "=1+1")]
    public void Name_OfASheet_IsOneThatAWorkbookTakes(string text, string expected) => Assert.Equal(expected, SheetText.Name(text));

    [Fact]
    public void Clean_LongerThanACell_EndsWithAMark()
    {
        var cut = SheetText.Clean(new string('x', 40_000));

        Assert.Equal(32_767, cut.Length);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
    }

    // Line ends within a cell are told as one kind.
    private static bool Same(string one, string other) => one.ReplaceLineEndings("\n") == other.ReplaceLineEndings("\n");

    // Every text that takes words: codes of enumerations, times and identities do not.
    private static Visit Hostile(Visit visit, string words)
    {
        var json = JsonSerializer.SerializeToNode(visit, ExchangeJson.Default.Visit)!;
        for (var place = 0; place < Texts(json).Count; place++)
        {
            var copy = json.DeepClone();
            Texts(copy)[place].ReplaceWith(words);
            if (Reads(copy))
            {
                Texts(json)[place].ReplaceWith(words);
            }
        }

        var hostile = json.Deserialize(ExchangeJson.Default.Visit)!;
        return hostile with { Systems = [.. hostile.Systems.Select(record => record with { System = "CT-1" })] };
    }

    private static bool Reads(JsonNode json)
    {
        try
        {
            return json.Deserialize(ExchangeJson.Default.Visit) is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static List<JsonValue> Texts(JsonNode? node) => node switch
    {
        JsonObject members => [.. members.SelectMany(member => Texts(member.Value))],
        JsonArray items => [.. items.SelectMany(Texts)],
        JsonValue value when value.GetValueKind() == JsonValueKind.String => [value],
        _ => [],
    };
}
