using Bunit;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Phrases;

namespace LogBook.Web.Tests.Entry;

/// <summary>Visits that are no round: a stop, a delivery, a late result, a start or a cleaning; and two people at one visit.</summary>
public sealed class SpecialVisitTests
{
    [Fact]
    public async Task Stop_FromAnyStep_EndsTheVisitWithItsReasonAndKeepsWhatWasEntered()
    {
        await using var page = new EntryPage();
        page.Go("Stock");
        page.Type("MU, dial", "50211");

        page.Press("I cannot work here");
        page.Press("roof or ladder cannot be used");
        Assert.Equal(["Arrive and look first", "Stock and counters", "Close"], Steps(page));
        page.Go("Close");
        page.Press("Sign as R. Yaffle");
        page.Press("nobody on site");
        page.Press("Close the visit");

        var visit = Assert.Single(page.Closed);
        Assert.Equal((VisitKind.Stopped, "roof or ladder cannot be used"), (visit.Kind, visit.Reason));
        Assert.Equal(50211, visit.Systems[0].Meters[0].Dial);
    }

    [Fact]
    public async Task GoOn_AfterAStop_IsTheKindOfVisitItWas()
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", nameof(VisitKind.StartUp));
        page.Press("I cannot work here");

        page.Press("Go on with the visit");

        Assert.Equal(VisitKind.StartUp, page.Draft.ToVisit().Kind);
        Assert.True(page.HasButton("I cannot work here"));
    }

    [Fact]
    public async Task Delivery_TakesThreeStepsAndAsksWhatWasDelivered()
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", nameof(VisitKind.Delivery));
        Assert.Equal(["Arrive and look first", "Stock and counters", "Close"], Steps(page));
        page.Go("Close");
        Assert.Contains("What was delivered, into which drum", page.Form.Find(".lb-open").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("MU, dial", page.Form.Find(".lb-open").TextContent, StringComparison.Ordinal);

        page.Go("Stock");
        page.Type("D-INH, Delivered into it", "25");
        page.Go("Close");

        Assert.DoesNotContain("What was delivered", page.Form.Find(".lb-open").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Result_TakesThreeSteps()
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", nameof(VisitKind.Result));

        Assert.Equal(["Arrive and look first", "Samples", "Close"], Steps(page));
    }

    [Fact]
    public async Task KindChanged_WhileAStepIsFilled_KeepsThatStep()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        page.Type("Inhibitor, tower water", "95");
        page.Go("Arrive");
        page.Type("Kind of visit", nameof(VisitKind.Delivery));

        Assert.Contains("Water tests", Steps(page));
        Assert.Equal(95, page.Tower.Readings.Single(r => r.Test == "inhibitor").Value);
    }

    [Theory]
    [InlineData(VisitKind.StartUp, "Disinfected")]
    [InlineData(VisitKind.ShutDown, "Drained")]
    [InlineData(VisitKind.Cleaning, "Cleaned")]
    public async Task SpecialVisit_AsksForTheEventItIsNamedAfter(VisitKind kind, string name)
    {
        await using var page = new EntryPage();
        page.Type("Kind of visit", kind.ToString());
        page.Go("Close");
        Assert.Contains(name + ": not noted yet", page.Form.Find(".lb-open").TextContent.Replace("Stopped / ", "", StringComparison.Ordinal).Replace(" / Disinfected", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);

        page.Go("Tower");
        page.Press(name);
        page.Go("Close");

        Assert.DoesNotContain(name + ": not noted yet", page.Form.Find(".lb-open").TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task TwoPeople_AreNamedByTheVisit_AndSurviveAnAmendment()
    {
        await using var page = new EntryPage();

        page.Field("I. Wendle").Change(true);

        var visit = page.Draft.ToVisit();
        Assert.Equal(("RYA", "IWE"), (visit.Technician, Assert.Single(visit.Also)));
        Assert.Equal(["IWE"], VisitDraft.Amend(visit, EntryFirm.Site).ToVisit().Also);
    }

    [Fact]
    public async Task OfficeEntry_NamesThePersonWhoWasThere()
    {
        await using var page = new EntryPage(me: "IWE", draft: VisitDraft.Start(EntryFirm.Site, "IWE", TimeProvider.System));

        page.Type("Done by", "RYA");

        Assert.Equal("RYA", page.Draft.ToVisit().Technician);
    }

    [Fact]
    public async Task Phrase_OfTheFirm_IsWrittenByOneTapInTheFormsLanguage_AndTakenBackByAnother()
    {
        await using var page = new EntryPage(language: Language.Spanish);

        page.Press("nada cambió");
        page.Press("carga mucho mayor");
        Assert.Equal("nada cambió; carga mucho mayor", page.Draft.ToVisit().Notes);
        page.Press("nada cambió");

        Assert.Equal("carga mucho mayor", page.Draft.ToVisit().Notes);
    }

    [Fact]
    public void PhraseBook_FirmsOwn_StandBeforeTheOthers()
    {
        var own = new Text("gate code changed", "cambió el código de la puerta", "mudou o código do portão");
        var book = new PhraseBook(new Dictionary<PhraseUse, IReadOnlyList<Text>> { [PhraseUse.Changed] = [own] });

        Assert.Equal(own, book.Of(PhraseUse.Changed)[0]);
        Assert.Equal(PhraseBook.Default.Of(PhraseUse.Changed), book.Of(PhraseUse.Changed).Skip(1));
        Assert.All(Enum.GetValues<PhraseUse>(), use => Assert.NotEmpty(PhraseBook.Default.Of(use)));
    }

    private static string[] Steps(EntryPage page) => [.. page.Form.FindAll(".lb-step span").Select(s => s.TextContent)];

    [Fact]
    public async Task Stop_OnARecordOnlySystemWithSomethingEntered_HasItsReasonAndTheWayBack()
    {
        await using var page = new EntryPage(EntryFirm.With(EntryFirm.Loop));
        page.Type("TOP-UP, dial", "310");

        page.Press("I cannot work here");

        Assert.Equal(["Arrive and look first", "Sheet of tests", "Close"], Steps(page));
        page.Type("Why work stopped", "scaffold across the ladder");
        Assert.Equal("scaffold across the ladder", page.Draft.ToVisit().Reason);
        page.Press("Go on with the visit");
        Assert.Equal(["Sheet of tests", "Close"], Steps(page));
        Assert.Equal("310", page.Field("TOP-UP, dial").GetAttribute("value"));
    }

    [Fact]
    public async Task QuickEvent_TappedAgain_IsTakenBackUnlessSomethingWasWrittenIntoIt()
    {
        await using var page = new EntryPage();
        page.Go("Tower");
        page.Press("Drained");
        page.Press("Drained");
        Assert.Empty(page.Draft.ToVisit().Systems);

        page.Press("Drained");
        page.Type("Note", "to the sewer");
        page.Press("Drained");

        Assert.Equal((EventType.Drained, "to the sewer"), (Assert.Single(page.Tower.Events).Type, page.Tower.Events[0].Note));
    }
}
