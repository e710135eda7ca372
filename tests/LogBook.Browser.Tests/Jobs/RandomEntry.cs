using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>Somebody at the form of the due site who enters something into a field drawn at random, of each kind that the form has; knows what must stand in each from then on.</summary>
public sealed class RandomEntry
{
    private static readonly string Actions = TypedVisit.Of("actions");

    private static readonly string Drops = DraftKey.Under(new ReadingKey(SamplePoints.Tower, TestCodes.Alkalinity, null).In("CT-1"), "drops");

    private static readonly string[] Outputs = ["bleed", "inhibitor", "biocide-1"];

    // The one whose drops are counted has another box.
    private static readonly string[] Numbers = [.. TypedVisit.Water.Select(field => field.Key).Where(key => key != TypedVisit.Result(SamplePoints.Tower, TestCodes.Alkalinity))];

    private readonly Random _random;
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);
    private readonly (Text Step, string Kind, Func<IPage, Language, Task> EnterAsync)[] _kinds;

    /// <summary>Begins with nothing entered.</summary>
    /// <param name="random">Draws fields and values.</param>
    public RandomEntry(Random random)
    {
        _random = random;
        _kinds =
        [
            (EntryTexts.Water, "number", (page, _) => TypeAsync(page, Any(Numbers), Number())),
            (EntryTexts.Stock, "level", (page, _) => TypeAsync(page, TypedVisit.Of("drums", "D-B1", "level"), Number())),
            (EntryTexts.Stock, "number and unit", (page, _) => NumberAndUnitAsync(page, TypedVisit.Of("drums", "D-INH", Any("level", "addedL")))),
            (EntryTexts.Water, "step pad", CountAsync),
            (EntryTexts.Arrive, "note", (page, _) => TypeAsync(page, "visit/notes", Words("fan noise"))),
            (EntryTexts.Close, "action", ActAsync),
            (EntryTexts.Close, "day", DueAsync),
            (EntryTexts.Close, "time", (page, _) => PutAsync(page, "visit/left", string.Create(CultureInfo.InvariantCulture, $"2025-03-31T10:{_random.Next(60):00}"), ":00")),
            (EntryTexts.Controller, "choice", (page, _) => ChooseAsync(page, TypedVisit.Of("switches", Any(Outputs), "found"))),
            (EntryTexts.Controller, "tick", (page, _) => TickAsync(page, TypedVisit.Of("hoursRun", Any(Outputs), "reset"))),
            (EntryTexts.Reference, "list", (page, _) => PickAsync(page, TypedVisit.Of("probes", "C1", "instrument"))),
        ];
    }

    /// <summary>What was entered last into each field, by its key.</summary>
    public IReadOnlyDictionary<string, Entry> Entries => _entries;

    /// <summary>The kinds of field that are drawn from.</summary>
    public IEnumerable<string> Kinds => _kinds.Select(kind => kind.Kind);

    private string Kind { get; set; } = string.Empty;

    /// <summary>Goes to the step of a field and enters something; the field is not left.</summary>
    /// <param name="page">The form.</param>
    /// <param name="language">Its language.</param>
    public async Task EnterAsync(IPage page, Language language = Language.English)
    {
        (var step, Kind, var enterAsync) = _kinds[_random.Next(_kinds.Length)];
        if (await page.Locator(".lb-step[aria-current=step]", new() { HasText = step.In(language) }).CountAsync() == 0)
        {
            await page.StepAsync(step.In(language));
        }

        await enterAsync(page, language);
    }

    /// <summary>Takes what a draft holds for what was entered: this much was not promised, and counts from now on.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="draft">The draft.</param>
    public void Take(string key, VisitDraft draft) => _entries[key] = _entries[key] with { Text = draft.Text(key), Unit = draft.Field(key)?.Unit, At = 0 };

    private static string Id(string key) => "#" + DraftKey.ElementId(key);

    private async Task TypeAsync(IPage page, string key, string text)
    {
        var box = page.Field(key);
        await box.ClickAsync();
        await box.FillAsync(string.Empty);
        await box.PressSequentiallyAsync(text);
        Enter(key, text);
    }

    private async Task NumberAndUnitAsync(IPage page, string key)
    {
        await TypeAsync(page, key, Number());
        var units = page.Locator(".lb-number", new() { Has = page.Field(key) }).Locator("select.lb-unit");
        var unit = Any(await units.Locator("option").EvaluateAllAsync<string[]>("options => options.map(option => option.value)"));

        // As with a finger: the box is left for the list.
        await units.FocusAsync();
        await units.SelectOptionAsync(unit);
        Enter(key, _entries[key].Text, unit);
    }

    // Counting drops is another way to read the test; it is chosen once.
    private async Task CountAsync(IPage page, Language language)
    {
        var test = page.Locator($"section.lb-test[aria-labelledby='{DraftKey.ElementId(Drops[..Drops.LastIndexOf('/')])}-test']");
        var box = page.Field(Drops);
        await Expect(test.Locator("input").First).ToBeVisibleAsync();
        if (!await box.IsVisibleAsync())
        {
            await test.Locator("summary").ClickAsync();
            await test.GetByRole(AriaRole.Button, new() { Name = StepTexts.ModeDrops.In(language), Exact = true }).ClickAsync();
        }

        for (var more = _random.Next(1, 4); more > 0; more--)
        {
            var before = await box.InputValueAsync();
            await test.Locator(".lb-pad").Last.ClickAsync();
            await Expect(box).Not.ToHaveValueAsync(before);
        }

        Enter(Drops, await box.InputValueAsync());
    }

    private async Task ActAsync(IPage page, Language language) => await TypeAsync(page, DraftKey.Under(await ActionAsync(page), "text"), Words("rinse the strainer"));

    private async Task DueAsync(IPage page, Language language) =>
        await PutAsync(page, DraftKey.Under(await ActionAsync(page), "due"), string.Create(CultureInfo.InvariantCulture, $"2025-04-{_random.Next(1, 30):00}"));

    // The first action, which is added when there is none yet.
    private static async Task<string> ActionAsync(IPage page)
    {
        var add = page.Locator(Id(Actions));
        await Expect(add).ToBeVisibleAsync();
        var text = page.Locator($"textarea[data-key^='{Actions}/']").First;
        if (await text.CountAsync() == 0)
        {
            await add.ClickAsync();
        }

        var key = (await text.GetAttributeAsync("data-key"))!;
        return key[..key.LastIndexOf('/')];
    }

    // Days and times are put in by the browser's own picker; the runtime hands a time on with its seconds.
    private async Task PutAsync(IPage page, string key, string text, string seconds = "")
    {
        await page.Field(key).FillAsync(text);
        Enter(key, text + seconds);
    }

    // Pressing the chosen one again takes the answer back.
    private async Task ChooseAsync(IPage page, string key)
    {
        var positions = Enum.GetNames<SwitchPosition>();
        var at = _random.Next(positions.Length);
        var button = page.Locator($"[role=group][aria-labelledby='{DraftKey.ElementId(key)}-name'] button").Nth(at);
        await button.ClickAsync();

        // Entered once it is shown: a press that a line swallowed shows nothing.
        await Expect(button).ToHaveAttributeAsync("aria-pressed", Stands(key) == positions[at] ? "false" : "true");
        Enter(key, Stands(key) == positions[at] ? string.Empty : positions[at]);
    }

    private async Task TickAsync(IPage page, string key)
    {
        await page.Field(key).ClickAsync();
        Enter(key, Stands(key).Length > 0 ? string.Empty : "yes");
    }

    private async Task PickAsync(IPage page, string key)
    {
        var list = page.Field(key);
        var value = Any(await list.Locator("option").EvaluateAllAsync<string[]>("options => options.map(option => option.value)"));
        await list.FocusAsync();
        await list.SelectOptionAsync(value);
        Enter(key, value);
    }

    private void Enter(string key, string text, string? unit = null) => _entries[key] = new(Kind, text, unit ?? _entries.GetValueOrDefault(key)?.Unit, Stopwatch.GetTimestamp());

    private string Stands(string key) => _entries.GetValueOrDefault(key)?.Text ?? string.Empty;

    private string Number() => (_random.Next(10, 999) / 10.0).ToString("0.0", CultureInfo.InvariantCulture);

    private string Words(string begin) => string.Create(CultureInfo.InvariantCulture, $"{begin} {_random.Next(1000)}");

    private T Any<T>(params IReadOnlyList<T> items) => items[_random.Next(items.Count)];

    /// <summary>What was entered last into a field.</summary>
    /// <param name="Kind">Kind of the field.</param>
    /// <param name="Text">Its text in the draft.</param>
    /// <param name="Unit">Its unit, where one was chosen.</param>
    /// <param name="At">When, as of <see cref="Stopwatch.GetTimestamp"/>.</param>
    public sealed record Entry(string Kind, string Text, string? Unit, long At);
}
