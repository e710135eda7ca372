using Bunit;
using LogBook.Domain.Languages;

namespace LogBook.Web.Tests.Entry;

/// <summary>What is read once more before closing: in the language of the form, and what belongs together in one line.</summary>
public sealed class ReadBackTests
{
    [Fact]
    public async Task Days_AndWhatIsStillToCome_ReadAsTheLanguageWritesThem()
    {
        await using var page = new EntryPage(language: Language.Spanish);
        page.Go("Muestras");
        page.Press("Tomada ahora, resultado después");
        page.Go("Cerrar");

        var lines = Lines(page);

        Assert.Equal("31/03/2025 09:05", lines["Llegada"]);
        Assert.Equal("31/03/2025 09:05", lines.Single(line => line.Key.Contains("Tomada", StringComparison.Ordinal)).Value);
        Assert.Equal("resultado pendiente", lines.Single(line => line.Key.Contains("no se hizo", StringComparison.Ordinal)).Value);
        Assert.DoesNotContain(lines.Values, value => value.Contains("2025-03", StringComparison.Ordinal));
    }

    [Fact]
    public async Task RowOfAList_IsOneLine()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        page.Press("Outputs tested one by one");
        page.Press("Add: Product added by hand");
        page.Type("Product", "P-40");
        page.Type("Amount", "0.5");
        page.Go("Close");

        var lines = Lines(page);

        Assert.Equal("Outputs tested one by one · 31 Mar 2025 09:05", lines["What was done or happened"]);
        Assert.Equal("P-40 · 0.5\u00a0L", lines["Product added by hand"]);
        Assert.DoesNotContain("When", lines.Keys);
    }

    private static Dictionary<string, string> Lines(EntryPage page) =>
        page.Form.FindAll(".lb-readback dt").Select(name => name.TextContent).Zip(page.Form.FindAll(".lb-readback dd").Select(value => value.TextContent)).ToDictionary(line => line.First, line => line.Second);
}
