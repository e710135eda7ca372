using Bunit;
using LogBook.Domain.Summaries;

namespace LogBook.Web.Tests.Entry;

/// <summary>The summary that is shown before closing: what the visit says, and nothing that only the whole record tells.</summary>
public sealed class SummarySheetTests
{
    [Fact]
    public async Task Show_TellsTheResults_AndThatTheRestFollows()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type("Inhibitor, tower water", "145");
        page.Go("Close");
        page.Form.Find("#show-sheet").Click();

        var sheet = page.Form.Find(".lb-paper");
        var row = page.Form.FindAll(".lb-paper tbody tr").Single(r => r.TextContent.Contains("145", StringComparison.Ordinal));
        Assert.Contains(SummaryTexts.Above.En, row.TextContent, StringComparison.Ordinal);
        Assert.Contains(SummaryTexts.FoundLater.En, sheet.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(SummaryTexts.NothingFound.En, sheet.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(SummaryTexts.Worked.En, sheet.TextContent, StringComparison.Ordinal);

        // This host makes no PDF, and none is offered.
        Assert.Empty(page.Form.FindAll("#sheet-pdf"));
    }

    [Fact]
    public async Task Sign_OnTheSheet_StandsInTheVisit_AndLeadsBackToTheForm()
    {
        await using var page = new EntryPage();
        page.Go("Close");
        page.Form.Find("#show-sheet").Click();
        page.Form.FindAll(".lb-no-print button").Single(button => button.TextContent == "Español").Click();
        Assert.Equal("es", page.Form.Find(".lb-paper").GetAttribute("lang"));

        page.Form.Find("[data-key='visit/signatures/Customer/name']").Change("M. Yaffle");

        Assert.Contains("M. Yaffle", page.Form.Find(".lb-paper").TextContent, StringComparison.Ordinal);
        page.Form.Find("#sheet-back").Click();
        Assert.NotNull(page.Form.Find("#close-visit"));
        Assert.Equal("M. Yaffle", Assert.Single(page.Draft.ToVisit().Signatures).Name);
    }
}
