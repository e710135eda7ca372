using AngleSharp.Dom;
using Bunit;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry;
using LogBook.Entry.Cautions;
using LogBook.Entry.Drafts;
using LogBook.Entry.Photos;
using Microsoft.Extensions.Time.Testing;

namespace LogBook.Web.Tests.Entry;

/// <summary>The visit form as a person uses it: fields by their label, buttons by their words.</summary>
internal sealed class EntryPage : IAsyncDisposable
{
    private readonly BunitContext _context = new();
    private readonly FirmSetUp _firm;

    public EntryPage(
        FirmSetUp? firm = null,
        VisitDraft? draft = null,
        Language language = Language.English,
        IReadOnlyList<Visit>? previous = null,
        string me = "RYA",
        IPhotoDesk? photos = null,
        Site? site = null,
        Action<Guid>? openVisit = null,
        bool atResult = false,
        IReadOnlyList<StandingAction>? standing = null)
    {
        _firm = firm ?? EntryFirm.TowerOnly;
        Script = _context.JSInterop.SetupModule("./_content/LogBook.Entry/entry.js");
        Script.Mode = JSRuntimeMode.Loose;
        Draft = draft ?? VisitDraft.Start(EntryFirm.Site, "RYA", Clock);
        Form = _context.Render<VisitForm>(form => form
            .Add(f => f.Firm, _firm)
            .Add(f => f.Site, site ?? EntryFirm.Site)
            .Add(f => f.Previous, previous ?? [EntryFirm.Earlier])
            .Add(f => f.Standing, standing ?? [])
            .Add(f => f.Draft, Draft)
            .Add(f => f.AtResult, atResult)
            .Add(f => f.Language, language)
            .Add(f => f.Me, me)
            .Add(f => f.Photos, photos)
            .Add(f => f.OpenVisit, openVisit is null ? null : id => OpenAsync(openVisit, id))
            .Add(f => f.TimeProvider, Clock)
            .Add(f => f.Changed, (VisitDraft changed) => Keep(changed))
            .Add(f => f.Close, (Visit visit) => Closed.Add(visit)));
    }

    public BunitJSModuleInterop Script { get; }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2025, 3, 31, 8, 5, 0, TimeSpan.Zero));

    public VisitDraft Draft { get; }

    public IRenderedComponent<VisitForm> Form { get; }

    public List<string> Kept { get; } = [];

    /// <summary>What the host throws instead of keeping the draft.</summary>
    public Exception? KeepFails { get; set; }

    /// <summary>How often the host was asked to keep the draft.</summary>
    public int Asked { get; private set; }

    public List<Visit> Closed { get; } = [];

    public string Words => Form.Find(".lb-form").TextContent;

    public VisitedSystem Tower => Draft.ToVisit().Systems.Single(s => s.System == "CT-1");

    public void Go(string step) => Done(() => Form.FindAll(".lb-step").Single(b => b.TextContent.Trim().StartsWith(step, StringComparison.Ordinal)).Click());

    public void Press(string words, int which = 0) => Done(() => Button(words, which).Click());

    public IElement Button(string words, int which = 0) =>
        Form.FindAll("button").Where(b => b.TextContent.Trim().TrimStart('○', '●', '■', ' ').Trim() == words).ElementAt(which);

    public bool HasButton(string words) => Form.FindAll("button").Any(b => b.TextContent.Trim().TrimStart('○', '●', '■', ' ').Trim() == words);

    public IElement Field(string label, int which = 0)
    {
        var found = Form.FindAll("label").Where(l => l.TextContent.Trim() == label).ToList();
        Assert.True(found.Count > which, $"no field \"{label}\" among: {string.Join(" | ", Form.FindAll("label").Select(l => l.TextContent.Trim()))}");
        return Form.Find("#" + found[which].GetAttribute("for"));
    }

    public IElement Group(string label, int which = 0)
    {
        for (var element = Field(label, which); element is not null; element = element.ParentElement)
        {
            if (element.ClassList.Contains("lb-field"))
            {
                return element;
            }
        }

        throw new InvalidOperationException("The field stands in no group.");
    }

    /// <summary>Presses "Read" beside a caution.</summary>
    public void Read(Caution caution) => Done(() => Form.FindAll(".lb-caution").Single(c => c.TextContent.Contains(CautionTexts.Of(caution).In(Language.English), StringComparison.Ordinal)).QuerySelector("button")!.Click());

    public void Type(string label, string text, int which = 0) => Done(() => Field(label, which).Change(text));

    public void Choose(string legend, string words)
    {
        var set = Form.FindAll("fieldset").First(f => f.QuerySelector("legend")!.TextContent.Trim() == legend);
        set.QuerySelectorAll("button").Single(b => b.TextContent.Trim().TrimStart('○', '●', ' ') == words).Click();
    }

    public void Show(Language language, IReadOnlyList<Issue>? refusals = null) => Form.Render(form => form
        .Add(f => f.Firm, _firm)
        .Add(f => f.Site, EntryFirm.Site)
        .Add(f => f.Draft, Draft)
        .Add(f => f.Language, language)
        .Add(f => f.Refusals, refusals ?? []));

    // What is still at work in the renderer goes first, and the act behind it: it is done when the renderer is free again.
    private void Done(Action act)
    {
        act();
        Form.InvokeAsync(() => { }).GetAwaiter().GetResult();
    }

    private void Keep(VisitDraft changed)
    {
        Asked++;
        if (KeepFails is not null)
        {
            throw KeepFails;
        }

        Kept.Add(changed.ToJson());
    }

    private static Task OpenAsync(Action<Guid> open, Guid visit)
    {
        open(visit);
        return Task.CompletedTask;
    }

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}
