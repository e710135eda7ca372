using System.Globalization;

namespace LogBook.Papers.Tests;

public sealed class PaperTests
{
    private static readonly PaperFrame Frame = new()
    {
        Title = "Título",
        HeaderLeft = "Left of head",
        HeaderRight = "Right of head",
        FooterLeft = "Foot",
        PageOf = "Página {0} de {1}",
        Language = "es",
        MadeAt = new DateTime(2026, 3, 1, 9, 30, 0, DateTimeKind.Utc),
    };

    [Fact]
    public async Task Text_OfThreeLanguages_ReadsBackAsWritten()
    {
        const string said = "Señal ¿qué? ação à mão, ñandú, põe; µS/cm m³/d 10⁻⁴ CO₂ −12,5 ≤ ≥ ± → “x” – ☐ ☑";
        using var paper = new Paper(Frame);

        paper.Paragraph(said).Paragraph("e\u0301 is one letter");
        var pages = await PdfText.PagesAsync(paper.ToBytes());

        Assert.Contains(said, pages[0], StringComparison.Ordinal);
        Assert.Contains("é is one letter", pages[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Frame_OnEveryPage_HasHeadFootAndNumber()
    {
        using var paper = new Paper(Frame);

        var pages = await PdfText.PagesAsync(paper.Paragraph("one").PageBreak().Paragraph("two").PageBreak().Paragraph("three").ToBytes());

        Assert.Equal(3, pages.Length);
        for (var page = 0; page < pages.Length; page++)
        {
            Assert.Contains("Left of head", pages[page], StringComparison.Ordinal);
            Assert.Contains("Right of head", pages[page], StringComparison.Ordinal);
            Assert.Contains("Foot", pages[page], StringComparison.Ordinal);
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"Página {page + 1} de 3"), pages[page], StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Table_OverPages_KeepsEveryRowOnceAndRepeatsItsHead()
    {
        using var paper = new Paper(Frame);
        var rows = Enumerable.Range(1, 150).Select(row => PaperRow.Of(Name(row), row.ToString(CultureInfo.InvariantCulture)));

        var pages = await PdfText.PagesAsync(paper.Table([new("Reading", 3), new("Value", 1, PaperAlign.Right)], rows).ToBytes());
        var all = string.Concat(pages);

        Assert.True(pages.Length > 2);
        Assert.All(pages, page => Assert.Contains("Reading", page, StringComparison.Ordinal));
        Assert.All(Enumerable.Range(1, 150), row => Assert.Equal(2, all.Split(Name(row)).Length));
    }

    [Fact]
    public async Task Row_HigherThanAPage_IsContinuedWithoutLoss()
    {
        using var paper = new Paper(Frame);
        var words = Enumerable.Range(1, 3000).Select(word => "w" + word.ToString(CultureInfo.InvariantCulture) + ".").ToArray();

        var pages = await PdfText.PagesAsync(paper.Table([new("A"), new("B")], [PaperRow.Of("left", string.Join(' ', words))]).Paragraph("after").ToBytes());
        var all = string.Concat(pages);

        Assert.True(pages.Length > 3);
        Assert.All(words, word => Assert.Contains(word, all, StringComparison.Ordinal));
        Assert.Contains("after", pages[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Group_AtTheEndOfAPage_GoesWithItsFirstRow()
    {
        using var paper = new Paper(Frame);
        var rows = new List<PaperRow>();
        for (var row = 1; row <= 200; row++)
        {
            rows.Add(PaperRow.Group("group-" + Name(row)));
            rows.Add(PaperRow.WithNote("note-" + Name(row), "cell-" + Name(row)));
        }

        var pages = await PdfText.PagesAsync(paper.Table([new("A"), new("B")], rows).ToBytes());

        Assert.All(Enumerable.Range(1, 200), row => Assert.Contains(pages, page =>
            page.Contains("group-" + Name(row), StringComparison.Ordinal) && page.Contains("cell-" + Name(row), StringComparison.Ordinal) && page.Contains("note-" + Name(row), StringComparison.Ordinal)));
    }

    [Fact]
    public async Task TickBoxesAndSignature_AreDrawn()
    {
        using var paper = new Paper(Frame);

        var pages = await PdfText.PagesAsync(paper.TickBox("open").TickBox("done", ticked: true).SignatureLine("Signature", "Name", "Date")
            .Table([new("Do"), new("What", 3)], [PaperRow.Of(new PaperCell("", Tick: false), "first"), PaperRow.Of(new PaperCell("x", Tick: true), "second")]).ToBytes());

        Assert.Matches(@"☐\s+open", pages[0]);
        Assert.Matches(@"☑\s+done", pages[0]);
        Assert.Matches(@"☐\s+first", pages[0]);
        Assert.Matches(@"☑\s+x\s+second", pages[0]);
        Assert.Matches(@"Signature\s+Name\s+Date", pages[0]);
    }

    // Text from strangers: nothing may break the layout, the file or the reading direction.
    [Fact]
    public async Task OddText_IsDrawnAsFarAsTheFontGoes()
    {
        using var paper = new Paper(Frame with { HeaderLeft = new string('h', 4000) });
        var odd = "a\0b\tc\u202Ed\u202C e\uD800f \U0001F600 " + new string('x', 10_000) + " end";

        var pages = await PdfText.PagesAsync(paper.Heading(odd[..40]).Note(odd).KeyValues([(odd, odd)]).Table([new(odd), new("B")], [PaperRow.Of(odd, null)], "nothing").ToBytes());
        var all = string.Concat(pages);

        Assert.Contains("ab cd e□f □", all, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', all);
        Assert.True(pages.Length < 20);
    }

    [Fact]
    public async Task Fonts_AreEmbedded()
    {
        using var paper = new Paper(Frame);

        var fonts = await PdfText.FontsAsync(paper.Paragraph("plain").Paragraph("bold", bold: true).ToBytes());
        var lines = fonts.Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];

        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.Matches(@"LogBook Papers.*yes yes yes", line));
    }

    [Fact]
    public void SameInput_GivesSameBytes_OtherInputDoesNot()
    {
        byte[] Make(string text)
        {
            using var paper = new Paper(Frame);
            return paper.Heading("Heading", 1).Paragraph(text, bold: true).Table([new("A")], [PaperRow.Of(text)]).ToBytes();
        }

        Assert.Equal(Make("one"), Make("one"));
        Assert.NotEqual(Make("one"), Make("two"));
    }

    [Fact]
    public async Task Landscape_AndLetter_TurnTheSheet()
    {
        using var paper = new Paper(Frame with { Size = PaperSize.Letter, Landscape = true });

        var bytes = paper.Paragraph("x").ToBytes();

        Assert.Contains("/MediaBox[0 0 792 612]", System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        Assert.Single(await PdfText.PagesAsync(bytes));
    }

    [Fact]
    public async Task Picture_WithCaption_IsPlaced()
    {
        using var paper = new Paper(Frame);

        var bytes = paper.Picture(Convert.FromBase64String(OnePixel), "what it shows").ToBytes();

        Assert.Contains("what it shows", (await PdfText.PagesAsync(bytes))[0], StringComparison.Ordinal);
        Assert.Contains("/Subtype/Image", System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
    }

    private const string OnePixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

    private static string Name(int row) => string.Create(CultureInfo.InvariantCulture, $"row{row:000}.");
}
