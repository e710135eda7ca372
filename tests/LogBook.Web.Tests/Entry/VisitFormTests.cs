using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Tests.Entry;

public sealed class VisitFormTests
{
    private const string Inhibitor = "Inhibitor, tower water";

    [Fact]
    public async Task Typing_WholeRoutineVisit_MakesTheVisit()
    {
        await using var page = new EntryPage();

        page.Choose("Is the system running?", "Yes");
        page.Go("Controller");
        page.Type("Probe C1 as found, Conductivity", "1260");
        page.Press("All found automatic");
        page.Press("Clock is right");
        page.Type("Hours run since reset: bleed", "131,5");
        page.Press("As last left: 1350\u00a0µS/cm");
        page.Go("Reference");
        page.Type("Hand meter", "HM-1");
        page.Type("Minutes the hand meter was in the water", "11");
        page.Type("Hand meter on the same water, Conductivity", "1361");
        page.Go("Water");
        page.Type("Conductivity, make-up", "301");
        page.Type(Inhibitor, "95");
        page.Go("Stock");
        page.Type("MU, dial", "50211");
        page.Type("MU, controller's total", "50210");
        page.Type("D-INH, level as found", "38,5");
        page.Go("Adjust");
        page.Press("All left automatic");

        var system = page.Tower;
        Assert.True(system.Running);
        var probe = Assert.Single(system.Probes);
        Assert.Equal((1260, 1361, "HM-1", 11, "uS/cm"), (probe.AsFound, probe.Reference, probe.Instrument, probe.SettledMin, probe.Unit));
        Assert.Equal(1260, Reading(system, "tower", "conductivity", ReadingSource.Controller).Value);
        Assert.Equal((1361, "HM-1"), (Reading(system, "tower", "conductivity", ReadingSource.Reference).Value, Reading(system, "tower", "conductivity", ReadingSource.Reference).Instrument));
        Assert.Equal(301, Reading(system, "make-up", "conductivity", ReadingSource.Reference).Value);
        Assert.Equal((95, "mg/L"), (Reading(system, "tower", "inhibitor", null).Value, Reading(system, "tower", "inhibitor", null).Unit));
        Assert.Equal((50211, 50210), (system.Meters[0].Dial, system.Meters[0].Total));
        Assert.Equal((38.5, "cm"), (system.Drums[0].Level, system.Drums[0].Unit));
        Assert.Equal(131.5, system.HoursRun[0].Hours);
        Assert.Equal(0, system.ClockOffByMin);
        Assert.Equal(1350, system.Settings.Single(s => s.Name == "setPointUsPerCm").Found?.Number);
        Assert.All(system.Switches, s => Assert.Equal((SwitchPosition.Automatic, SwitchPosition.Automatic), (s.Found, s.Left)));
        Assert.Equal("2025-03-31T09:05:00+01:00", page.Draft.ToVisit().Arrived.Text);
    }

    [Fact]
    [Trait("goal", "U1")]
    public async Task Typing_TextThatIsNoNumber_StaysAndTheMessageNamesFieldValueAndExpectation()
    {
        await using var page = new EntryPage();
        page.Go("Water");

        page.Type(Inhibitor, "12O");

        Assert.Equal("12O", page.Field(Inhibitor).GetAttribute("value"));
        var note = page.Group(Inhibitor).TextContent;
        Assert.Contains(Inhibitor, note, StringComparison.Ordinal);
        Assert.Contains("“12O” is not a number", note, StringComparison.Ordinal);
        Assert.Contains("12.5", note, StringComparison.Ordinal);
        Assert.Equal("true", page.Field(Inhibitor).GetAttribute("aria-invalid"));
        Assert.DoesNotContain(page.Draft.ToVisit().Systems.SelectMany(s => s.Readings), r => r.Test == "inhibitor");
    }

    [Fact]
    [Trait("goal", "U1")]
    public async Task Typing_ThreeDigitsBehindOneSign_IsAskedAndTheAnswerCounts()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        page.Type("MU, dial", "48.211");
        Assert.Contains("which number is meant", page.Group("MU, dial").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.Draft.ToVisit().Systems);
        page.Press("48,211\u00a0L");

        Assert.Equal(48211, page.Tower.Meters[0].Dial);
        Assert.Contains("Understood: 48,211\u00a0L", page.Group("MU, dial").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Typing_Number_IsEchoedWithItsUnitInAPoliteRegion()
    {
        await using var page = new EntryPage(language: Language.Spanish);
        page.Go("Análisis");

        page.Type("Inhibidor, agua de la torre", "95.5");

        var note = page.Group("Inhibidor, agua de la torre").QuerySelector("[aria-live=polite]")!;
        Assert.Contains("Entendido: 95,5\u00a0mg/L", note.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ChoosingUnit_MakesItPartOfTheValue()
    {
        await using var page = new EntryPage();
        page.Go("Controller");
        page.Type("Probe C1 as found, Conductivity", "1,36");

        page.Form.Find("select[aria-label=\"Unit of Probe C1 as found, Conductivity\"]").Change("mS/cm");

        Assert.Equal((1.36, "mS/cm"), (page.Tower.Probes[0].AsFound, page.Tower.Probes[0].Unit));
    }

    [Fact]
    public async Task AddedProduct_InUsGallons_IsRecordedInLitres()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        page.Form.Find("select[aria-label=\"Unit of D-INH, Delivered into it\"]").Change("[gal_us]");
        page.Type("D-INH, Delivered into it", "5");

        Assert.Equal(18.92705892, page.Tower.Drums[0].AddedL!.Value, 6);
    }

    [Fact]
    public async Task Drops_WithTheKitsStepOfLastTime_MakeDropsAndPerDrop()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        var chloride = page.Form.FindAll(".lb-test").Single(t => t.TextContent.Contains("Chloride, tower water", StringComparison.Ordinal));

        chloride.QuerySelectorAll("button").Single(b => b.TextContent.Contains("Drops", StringComparison.Ordinal)).Click();
        page.Type("Drops counted, Chloride, tower water", "23");

        var reading = Reading(page.Tower, "tower", "chloride", null);
        Assert.Equal((23, 5, "mg/L"), (reading.Drops, reading.PerDrop, reading.Unit));
        Assert.Contains("23 drops × 5, result 115\u00a0mg/L", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NotTaken_WithReason_IsARecordAndNotAGap()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        var test = page.Form.FindAll(".lb-test").Single(t => t.TextContent.Contains(Inhibitor, StringComparison.Ordinal));

        test.QuerySelectorAll("button").Single(b => b.TextContent.Contains("Not taken", StringComparison.Ordinal)).Click();
        page.Type("Why Inhibitor, tower water was not taken", "reagent used up");

        var reading = Reading(page.Tower, "tower", "inhibitor", null);
        Assert.Equal(("reagent used up", null, "mg/L"), (reading.NotTaken, reading.Value, reading.Unit));
    }

    [Fact]
    public async Task CensoredResult_KeepsItsSign()
    {
        await using var page = new EntryPage();
        page.Go("Water");

        page.Type("Sign of Inhibitor, tower water", "<");
        page.Type(Inhibitor, "<5");

        var reading = Reading(page.Tower, "tower", "inhibitor", null);
        Assert.Equal(("<", 5), (reading.Qualifier, reading.Value));
    }

    [Fact]
    public async Task SignInACounter_IsRefusedAndNotDropped()
    {
        await using var page = new EntryPage();
        page.Go("Stock");

        page.Type("MU, dial", "<500");

        Assert.Contains("begins with <", page.Group("MU, dial").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U2")]
    public async Task DoubtedValue_OneTapConfirms_AndTheRecordSaysSo()
    {
        await using var page = new EntryPage(previous: EntryFirm.ThreeVisits);
        page.Go("Water");
        page.Type(Inhibitor, "950");
        Assert.Contains("Please read again", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);

        page.Press("950\u00a0mg/L is right");

        var reading = Reading(page.Tower, "tower", "inhibitor", null);
        Assert.Equal((950, 950, true), (reading.Value, reading.FirstValue, reading.Confirmed));
        Assert.DoesNotContain("Please read again", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U2")]
    public async Task DoubtedValue_Corrected_KeepsTheFirstValue()
    {
        await using var page = new EntryPage(previous: EntryFirm.ThreeVisits);
        page.Go("Water");
        page.Type(Inhibitor, "950");

        page.Type(Inhibitor, "95");

        var reading = Reading(page.Tower, "tower", "inhibitor", null);
        Assert.Equal((95, 950, null), (reading.Value, reading.FirstValue, reading.Confirmed));
        Assert.DoesNotContain("Please read again", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U2")]
    public async Task DoubtedCounter_CorrectedOrConfirmed_KeepsWhatWasTypedFirst()
    {
        await using var page = new EntryPage(previous: EntryFirm.ThreeVisits);
        page.Go("Stock");

        page.Type("MU, dial", "5021");
        Assert.Contains("Please read again", page.Group("MU, dial").TextContent, StringComparison.Ordinal);
        page.Type("MU, dial", "50211");
        page.Type("MU, controller's total", "50211");

        var meter = Assert.Single(page.Tower.Meters);
        Assert.Equal((50211, 5021), (meter.Dial, meter.FirstDial));
        Assert.Equal((50211, null), (meter.Total, meter.FirstTotal));
    }

    [Fact]
    public async Task RangeMark_SaysItInWordAndShape()
    {
        await using var page = new EntryPage();
        page.Go("Water");

        page.Type(Inhibitor, "60");
        Assert.Equal(("▼", "below the range"), Mark(page, Inhibitor));
        page.Type(Inhibitor, "121");
        Assert.Equal(("▲", "above the range"), Mark(page, Inhibitor));
        page.Type(Inhibitor, "80");

        Assert.Equal(("●", "in range"), Mark(page, Inhibitor));
        Assert.Contains("Range 80 to 120\u00a0mg/L", page.Words, StringComparison.Ordinal);
        Assert.Contains("Range 7.5 to 9", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task LastValue_OfACounterBeforeEntry_OfATestAfterIt_AndNothingIsPrefilled()
    {
        await using var page = new EntryPage();
        page.Go("Stock");
        Assert.Contains("Last visit: 48,211\u00a0L", page.Group("MU, dial").TextContent, StringComparison.Ordinal);
        Assert.Contains("Last visit: 41.5\u00a0cm", page.Group("D-INH, level as found").TextContent, StringComparison.Ordinal);
        Assert.All(page.Form.FindAll(".lb-number input"), box => Assert.Equal(string.Empty, box.GetAttribute("value") ?? string.Empty));

        page.Go("Water");
        Assert.DoesNotContain("Last visit", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);
        Assert.All(page.Form.FindAll(".lb-number input"), box => Assert.Equal(string.Empty, box.GetAttribute("value") ?? string.Empty));
        page.Type(Inhibitor, "92");

        Assert.Contains("Last visit: 9", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Close_WithOpenPoints_AsksForThemAndHandsNothingOver()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type(Inhibitor, "60");
        page.Go("Adjust");
        page.Choose("bleed, as left", "Forced on");
        page.Go("Close");

        page.Press("Close the visit");

        Assert.Empty(page.Closed);
        var open = page.Form.Find(".lb-open").TextContent;
        Assert.Contains("Inhibitor, tower water: action or reason", open, StringComparison.Ordinal);
        Assert.Contains("bleed is left Forced on: reason", open, StringComparison.Ordinal);
        Assert.Contains("inhibitor: switch as left", open, StringComparison.Ordinal);
        Assert.Contains("MU, dial: not read", open, StringComparison.Ordinal);
        Assert.Contains("Your signature", open, StringComparison.Ordinal);
        Assert.Contains("Customer's signature", open, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Close_LeftOpenWithAReason_HandsOverAndTellsTheSupervisor()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type(Inhibitor, "60");
        page.Go("Close");
        page.Type("Leave open because", "called away");

        page.Press("Close the visit");

        var visit = Assert.Single(page.Closed);
        Assert.Contains("called away", visit.Notes, StringComparison.Ordinal);
        Assert.Contains("Inhibitor, tower water: action or reason", visit.Notes, StringComparison.Ordinal);
        Assert.Equal(("2025-03-31T09:05:00+01:00", "2025-03-31T09:05:00+01:00"), (visit.Left!.Value.Text, visit.EnteredAt!.Value.Text));
    }

    [Fact]
    public async Task Close_EverythingSettled_HandsOverWithoutANote()
    {
        await using var page = new EntryPage();
        page.Choose("Is it in use this season?", "No");
        page.Go("Water");
        page.Type(Inhibitor, "60");
        page.Go("Close");
        page.Press("Add: Action");
        page.Type("What is to be done: Inhibitor, tower water", "raise the feed");
        page.Type("Who", "RYA");
        page.Type("By when", "2025-04-07");
        page.Press("Sign as R. Yaffle");
        page.Type("Why nobody signs for the customer", "office closed");
        Assert.Contains("Nothing is open.", page.Words, StringComparison.Ordinal);

        page.Press("Close the visit");

        var visit = Assert.Single(page.Closed);
        Assert.Null(visit.Notes);
        var action = Assert.Single(visit.Systems[0].Actions);
        Assert.Equal(("tower/inhibitor", "raise the feed", "RYA", new DateOnly(2025, 4, 7)), (action.For, action.Text, action.Owner, action.Due!.Value));
        Assert.Equal(7, action.Id!.Value.Version);
        Assert.Equal([(SignedBy.Customer, null, "office closed"), (SignedBy.Technician, "R. Yaffle", null)], visit.Signatures.Select(s => (s.By, s.Name, s.AbsentReason)));
    }

    [Fact]
    public async Task Close_UnreadableText_IsListedWithALinkAndCannotBeLeftOpen()
    {
        await using var page = new EntryPage();
        page.Go("Stock");
        page.Type("MU, dial", "7..4");
        page.Go("Close");
        page.Type("Leave open because", "no time");

        page.Press("Close the visit");

        Assert.Empty(page.Closed);
        var link = page.Form.Find(".lb-summary a");
        Assert.Contains("MU, dial: “7..4” is not a number", link.TextContent, StringComparison.Ordinal);
        link.Click();
        Assert.Equal("7..4", page.Field("MU, dial").GetAttribute("value"));
    }

    [Fact]
    public async Task Close_OfARefusalThatStillHolds_IsNotSentAgain_AndOneOnlyTheReceiverKnows_Is()
    {
        await using var page = new EntryPage();
        page.Go("Stock");
        page.Type("MU, dial", "7..4");
        page.Go("Close");
        page.Type("Leave open because", "no time");
        page.Press("Close the visit");
        var message = page.Form.Find(".lb-summary a").TextContent;

        page.Show(Language.English, [new Issue("", "refused", message), new Issue("", "refused", "The site is closed.")]);
        page.Press("Close the visit");
        Assert.Empty(page.Closed);
        page.Go("Stock");
        page.Type("MU, dial", "50211");
        page.Go("Close");
        page.Press("Close the visit");

        Assert.Single(page.Closed);
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, 2)]
    public async Task Headings_OnEveryStep_LeaveNoLevelOut(bool underATitle, int first)
    {
        await using var page = new EntryPage(EntryFirm.Firm);
        page.Form.Render(form => form.Add(f => f.UnderATitle, underATitle));
        var names = new[] { "Cooling tower 1", "Closed loop" };
        foreach (var name in names)
        {
            page.Press(name);
            foreach (var step in page.Form.FindAll(".lb-step span").Select(s => s.TextContent).ToList())
            {
                page.Go(step);
                var levels = page.Form.FindAll("h1, h2, h3, h4, h5, h6").Select(h => h.TagName[1] - '0').ToList();

                Assert.Equal(first, levels[0]);
                Assert.Equal(underATitle ? 0 : 1, levels.Count(l => l == 1));
                Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"{step}: {string.Join(' ', levels)}"));
            }
        }
    }

    [Fact]
    public async Task Close_SentAgainAfterALostAnswer_IsTheSameDocument()
    {
        await using var page = new EntryPage();
        page.Go("Close");
        page.Type("Leave open because", "called away");

        page.Press("Close the visit");
        page.Clock.Advance(TimeSpan.FromMinutes(10));
        page.Press("Close the visit");

        Assert.Equal(2, page.Closed.Count);
        Assert.Equal(Json(page.Closed[0]), Json(page.Closed[1]));
    }

    [Fact]
    public async Task Refusal_ShowsAtItsFieldAndInTheSummary_AndNothingIsCleared()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type(Inhibitor, "95");

        page.Show(Language.English, [new Issue("visits[0].systems[0].readings[0].value", "above-limit", "Inhibitor 95 mg/L is above what the kit can show.")]);

        Assert.Contains("above what the kit can show", page.Group(Inhibitor).TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing was lost", page.Form.Find(".lb-summary").TextContent, StringComparison.Ordinal);
        Assert.Equal("95", page.Field(Inhibitor).GetAttribute("value"));
    }

    [Fact]
    public async Task CannotWorkHere_ClosesWithTheReasonAlone()
    {
        await using var page = new EntryPage();
        page.Press("I cannot work here");
        page.Type("Why work stopped", "scaffold across the ladder");
        page.Go("Close");
        page.Press("Sign as R. Yaffle");
        page.Type("Why nobody signs for the customer", "nobody on site");

        page.Press("Close the visit");

        var visit = Assert.Single(page.Closed);
        Assert.Equal((VisitKind.Stopped, "scaffold across the ladder"), (visit.Kind, visit.Reason));
    }

    [Fact]
    public async Task Language_Switched_ChangesTheWordsAndKeepsTheTexts()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type(Inhibitor, "12O");

        page.Show(Language.Portuguese);

        Assert.Contains("Análises de água", page.Words, StringComparison.Ordinal);
        Assert.Contains("não é um número", page.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("Water tests", page.Words, StringComparison.Ordinal);
        Assert.Equal("pt", page.Form.Find(".lb-form").GetAttribute("lang"));
        Assert.Contains(page.Form.FindAll("input"), box => box.GetAttribute("value") == "12O");
    }

    [Fact]
    public async Task Amendment_LateResult_IsTheWholeVisitAgainWithTheResult()
    {
        await using var page = new EntryPage(draft: VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site), previous: [], me: "IWE");
        page.Go("Samples");
        var colonies = page.Form.FindAll(".lb-test").Single(t => t.TextContent.Contains("Dip slide", StringComparison.Ordinal));
        Assert.Contains("1000", colonies.InnerHtml, StringComparison.Ordinal);
        page.Type("Dip slide, tower water", "5000");
        page.Go("Close");
        page.Press("Save the amendment");
        Assert.Empty(page.Closed);
        page.Type("Why the visit is amended", "slide read after two days");

        page.Press("Save the amendment");

        var visit = Assert.Single(page.Closed);
        Assert.Equal((EntryFirm.Earlier.Id, 2, 1, "IWE", "slide read after two days"), (visit.Id, visit.Version, visit.Amends, visit.AmendedBy, visit.Reason));
        Assert.Equal("2025-03-31T09:05:00+01:00", visit.AmendedAt!.Value.Text);
        Assert.Equal(5000, Reading(visit.Systems[0], "tower", "dip-slide", null).Value);
        Assert.Equal(EntryFirm.Earlier.EnteredAt, visit.EnteredAt);
        Assert.Equal(EntryFirm.Earlier.Photos, visit.Photos);
        Assert.Equal(EntryFirm.Earlier.Systems[0].Readings.Count, visit.Systems[0].Readings.Count);
    }

    [Fact]
    public async Task RecordOnlySystem_HasItsSheetInTheSameVisit()
    {
        await using var page = new EntryPage(EntryFirm.Firm);

        page.Press("Closed loop");

        Assert.Equal(["Sheet of tests", "Close"], page.Form.FindAll(".lb-step span").Select(s => s.TextContent));
        page.Type("pH, loop", "8.1");
        page.Type("TOP-UP, dial", "310");
        Assert.Equal(("▼", "below the range"), Mark(page, "pH, loop"));
        var loop = page.Draft.ToVisit().Systems.Single(s => s.System == "CL-1");
        Assert.Equal((8.1, 310), (loop.Readings[0].Value, loop.Meters[0].Dial));
        page.Press("Cooling tower 1");
        Assert.Contains("Controller as found", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Caution_AtTheAct_OncePerActAndVisit()
    {
        await using var page = new EntryPage();
        page.Go("Adjust");
        Assert.Contains("This may start a pump or open a valve at once.", page.Words, StringComparison.Ordinal);

        page.Press("Read");
        page.Go("Water");
        page.Go("Adjust");

        Assert.DoesNotContain("This may start a pump", page.Words, StringComparison.Ordinal);
        Assert.Contains("systems/CT-1/Adjust:Switches", VisitDraft.FromJson(page.Draft.ToJson()).CautionsSeen);
    }

    [Fact]
    public async Task Change_IsKeptWithinASecond_OnceForManyChanges()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type(Inhibitor, "9");
        page.Type(Inhibitor, "95");
        Assert.Empty(page.Kept);

        page.Clock.Advance(TimeSpan.FromSeconds(1));

        page.Form.WaitForAssertion(() => Assert.Single(page.Kept));
        Assert.Contains("\"95\"", page.Kept[0], StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U5")]
    public async Task KeysOfAFieldNotYetLeft_AreKeptAndBackAfterwards()
    {
        await using var page = new EntryPage();
        var key = DraftKey.Under(new ReadingKey("tower", TestCodes.Inhibitor, null).In("CT-1"), "value");

        await page.Form.InvokeAsync(() => page.Form.Instance.KeepTyped(key, "9", "mg/L"));
        page.Clock.Advance(TimeSpan.FromSeconds(1));

        page.Form.WaitForAssertion(() => Assert.Single(page.Kept));
        var back = VisitDraft.FromJson(page.Kept[0]);
        Assert.Equal("9", back.Text(key));
        Assert.Equal(9, back.ToVisit().Systems[0].Readings[0].Value);
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task EveryBox_OnEveryStep_HasALabel()
    {
        await using var page = new EntryPage(EntryFirm.Firm, VisitDraft.Amend(EntryFirm.Earlier, EntryFirm.Site));
        var boxes = 0;
        foreach (var step in page.Form.FindAll(".lb-step span").Select(s => s.TextContent).ToList())
        {
            page.Go(step);
            var labels = page.Form.FindAll("label").Select(l => l.GetAttribute("for")).ToHashSet();
            foreach (var box in page.Form.FindAll("input, select, textarea"))
            {
                Assert.True(labels.Contains(box.Id) || box.HasAttribute("aria-label"), $"{step}: {box.OuterHtml}");
                boxes++;
            }

            var ids = page.Form.FindAll("[id]").Select(e => e.Id).ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
        }

        Assert.True(boxes > 60, $"{boxes} boxes");
    }

    [Fact]
    public async Task CyclesAtTheSide_OnceBothConductivitiesAreThere()
    {
        await using var page = new EntryPage();
        page.Go("Reference");
        page.Type("Hand meter on the same water, Conductivity", "1204");
        Assert.Contains("No figures yet.", page.Words, StringComparison.Ordinal);

        page.Go("Water");
        page.Type("Conductivity, make-up", "301");

        // 1204 / 301 by the definition of cycles.
        Assert.Contains("4.00", page.Form.Find(".lb-side").TextContent, StringComparison.Ordinal);
    }

    private static Reading Reading(VisitedSystem system, string at, string test, ReadingSource? source) =>
        system.Readings.Single(r => r.At == at && r.Test == test && r.Source == source);

    private static (string Shape, string Words) Mark(EntryPage page, string label)
    {
        var mark = page.Group(label).QuerySelector(".lb-mark")!;
        return (mark.QuerySelector(".lb-shape")!.GetAttribute("data-shape")!, mark.TextContent.Trim());
    }

    private static string Json(Visit visit) => System.Text.Json.JsonSerializer.Serialize(visit, LogBook.Domain.Exchange.ExchangeJson.Default.Visit);
}
