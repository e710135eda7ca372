using Bunit;
using LogBook.Domain.Languages;

namespace LogBook.Web.Tests.Entry;

/// <summary>A visit that read little tells what is open tower by tower and step by step.</summary>
public sealed class OpenGroupTests
{
    private const string ControllerReason = "[data-key='systems/CT-2/leftOpen/Controller/reason']";

    [Fact]
    public async Task TwoTowersThatReadNothing_AreOneLineAStep_WithEveryPointBehindIt()
    {
        await using var page = TwoTowers();

        page.Go("Close");

        Assert.Equal(["Cooling tower 1", "Cooling tower 2"], page.Form.FindAll(".lb-open h4").Select(title => title.TextContent));
        var lines = page.Form.FindAll(".lb-open details > summary").Select(line => line.TextContent.Trim()).ToList();
        Assert.Equal(
            [
                "Controller as found: 10 open", "Water tests: 3 open", "Stock and counters: 5 open", "Adjust: 3 open",

                // The second tower was never visited, so nobody knows whether its controller counts water.
                "Controller as found: 10 open", "Water tests: 3 open", "Stock and counters: 4 open", "Adjust: 3 open",
            ],
            lines);
        Assert.Equal(lines.Sum(line => int.Parse(line.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture)), page.Form.FindAll(".lb-open details li").Count);

        page.Press("MU, dial: not read", which: 1);
        Assert.Contains("Stock and counters", page.Form.Find(".lb-step.lb-chosen").TextContent, StringComparison.Ordinal);
        page.Type("MU, dial", "48300");
        Assert.Equal(48300, page.Draft.ToVisit().Systems.Single(s => s.System == "CT-2").Meters[0].Dial);
    }

    [Fact]
    public async Task ReasonOfAGroup_LeavesItOpen_AndTheRestIsStillAskedFor()
    {
        await using var page = TwoTowers();
        page.Go("Close");

        page.Form.Find(ControllerReason).Change("cabinet locked");
        page.Press("Close the visit");
        Assert.Empty(page.Closed);
        Assert.Contains("Controller as found: 10 open · cabinet locked", page.Words, StringComparison.Ordinal);

        page.Type("Leave open because", "called away");
        page.Press("Close the visit");

        var notes = Assert.Single(page.Closed).Notes!.Split('\n');
        Assert.Equal("Left open (Cooling tower 2, Controller as found: 10 open) because: cabinet locked", notes[0]);
        Assert.Contains("Cooling tower 1, Controller as found: 10 open", notes[1], StringComparison.Ordinal);
        Assert.DoesNotContain("Cooling tower 2, Controller", notes[1], StringComparison.Ordinal);
        Assert.EndsWith("because: called away", notes[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task ReasonsOfAllGroups_AreEnough_WhereNothingElseIsOpen()
    {
        await using var page = new EntryPage();
        page.Go("Reference");
        page.Form.Find("[data-key='systems/CT-1/probes/C1/reference']").Change("1361");
        page.Go("Close");
        page.Press("Sign as R. Yaffle");
        page.Type("Why nobody signs for the customer", "office closed");
        var reasons = page.Form.FindAll(".lb-open details textarea").Select(box => box.GetAttribute("data-key")).ToList();

        foreach (var reason in reasons)
        {
            page.Press("Close the visit");
            Assert.Empty(page.Closed);
            page.Form.Find($"[data-key='{reason}']").Change("no key");
        }

        Assert.Empty(page.Form.FindAll("[data-key='visit/leaveOpen']"));
        page.Press("Close the visit");
        Assert.Equal(reasons.Count, Assert.Single(page.Closed).Notes!.Split('\n').Count(note => note.EndsWith("because: no key", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task SwitchFoundForced_StandsForItself()
    {
        await using var page = TwoTowers();
        page.Go("Controller");
        page.Choose("bleed, as found", "Forced on");

        page.Go("Close");

        Assert.Contains("bleed: switch as left", page.Form.FindAll(".lb-open > ul > li").Select(line => line.TextContent.Trim()));
    }

    [Fact]
    public async Task OnOneTower_NoneIsNamed_AndFewPointsStandAlone()
    {
        await using var page = new EntryPage(language: Language.Spanish);
        page.Go("Cerrar");

        Assert.Empty(page.Form.FindAll(".lb-open h4"));
        Assert.Contains("Controlador como se encontró: 10 pendientes", page.Form.FindAll(".lb-open summary").Select(line => line.TextContent.Trim()));
        Assert.DoesNotContain(page.Form.FindAll(".lb-open summary"), line => line.TextContent.Contains("Referencia", StringComparison.Ordinal));
    }

    private static EntryPage TwoTowers() => new(EntryFirm.With(EntryFirm.Tower, EntryFirm.Tower with { Code = "CT-2", Name = "Cooling tower 2" }));
}
