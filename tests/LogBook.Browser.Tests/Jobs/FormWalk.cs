using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>A walk at random over the visit form of the due site: fields, steps, a device that is turned, and what its host adds. All that was entered must stand afterwards.</summary>
public sealed class FormWalk
{
    private const int CheckEach = 10;

    // What every box that is shown holds, by the key of its field.
    private const string Boxes = "() => Object.fromEntries([...document.querySelectorAll('.lb-form [data-key]')].map((box) => [box.dataset.key, box.value]))";

    // An abrupt act may come before this much has been kept; the form promises no more.
    private static readonly TimeSpan KeptWithin = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private readonly IPage _page;
    private readonly Func<Task<VisitDraft?>> _draftAsync;
    private readonly Random _random;
    private readonly int _seed;
    private readonly RandomEntry _entry;
    private readonly List<(string Name, Func<Task> DoAsync)> _acts = [];
    private readonly SortedDictionary<string, int> _done = new(StringComparer.Ordinal);
    private readonly Queue<(string Name, Func<Task> DoAsync)> _next = [];
    private readonly List<string> _trail = [];
    private long _checked;
    private int _young;

    /// <summary>Begins at an open form.</summary>
    /// <param name="page">Its page.</param>
    /// <param name="draftAsync">Reads what its host keeps by now.</param>
    /// <param name="seed">Draws all acts and values.</param>
    public FormWalk(IPage page, Func<Task<VisitDraft?>> draftAsync, int seed)
    {
        (_page, _draftAsync, _seed, _random) = (page, draftAsync, seed, new Random(seed));
        _entry = new RandomEntry(_random);
        Add("enter", 12, EnterAsync);
        Add("step", 3, StepAsync);
        Add("turn", 1, TurnAsync);
    }

    /// <summary>How many acts a walk has: LOGBOOK_WALK=1000 in the long form.</summary>
    public static int Acts => int.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_WALK"), CultureInfo.InvariantCulture, out var given) ? given : 60;

    /// <summary>Language of the form.</summary>
    public Language Language { get; set; } = Language.English;

    /// <summary>Adds an act.</summary>
    /// <param name="name">What it is called in the report.</param>
    /// <param name="weight">How often it is drawn, beside the others.</param>
    /// <param name="doAsync">Does it; the form is open again afterwards.</param>
    public void Add(string name, int weight, Func<Task> doAsync) => _acts.AddRange(Enumerable.Repeat((name, doAsync), weight));

    /// <summary>Adds an act that takes the page away in haste: half of the time before the host can have kept what was entered last.</summary>
    /// <param name="name">What it is called in the report.</param>
    /// <param name="doAsync">Does it; the form is open again afterwards.</param>
    public void AddAbrupt(string name, Func<Task> doAsync) => Add(name, 1, async () =>
    {
        if (_random.Next(2) == 0)
        {
            await HoldsAsync();
        }

        var at = Stopwatch.GetTimestamp();
        await doAsync();
        var draft = (await _draftAsync())!;
        foreach (var (key, entry) in _entry.Entries.Where(one => Stopwatch.GetElapsedTime(one.Value.At, at) <= KeptWithin && !Holds(draft, one.Key, one.Value)).ToList())
        {
            _entry.Take(key, draft);
            _young++;
        }
    });

    /// <summary>Draws another language than that of the form.</summary>
    public Language OtherLanguage() => Enum.GetValues<Language>().Where(one => one != Language).ElementAt(_random.Next(2));

    /// <summary>Enters something into a field of any kind.</summary>
    public Task EnterAsync() => _entry.EnterAsync(_page, Language);

    /// <summary>Walks, and compares what stands with what was entered after every tenth act and after each that the host has added.</summary>
    /// <param name="output">Takes the figures.</param>
    public async Task RunAsync(ITestOutputHelper output)
    {
        var lasted = Stopwatch.StartNew();
        for (var act = 1; act <= Acts; act++)
        {
            var (name, doAsync) = Next();
            _trail.Add(name);
            try
            {
                await doAsync();
            }
            catch (Exception exception) when (exception is PlaywrightException or TimeoutException)
            {
                throw new InvalidOperationException(Trail(), exception);
            }

            _done[name] = _done.GetValueOrDefault(name) + 1;
            if (act % CheckEach == 0 || act == Acts || name is not ("enter" or "step" or "turn"))
            {
                await HoldsAsync();
            }
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Seed {_seed}, {Acts} acts in {lasted.Elapsed.TotalSeconds:0} s: {string.Join(", ", _done.Select(done => $"{done.Value} {done.Key}"))}; {_entry.Entries.Count} fields, {_checked} values compared, 0 lost; {_young} younger than a second were not kept when the page went."));
        Assert.Equal(_acts.Select(act => act.Name).Distinct().Order(StringComparer.Ordinal), _done.Keys);
    }

    /// <summary>Waits until the host keeps all that was entered, and the boxes that are shown hold it.</summary>
    public async Task HoldsAsync()
    {
        using var within = new CancellationTokenSource(Longest);
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        for (List<string> lost; (lost = await LostAsync()).Count > 0;)
        {
            Assert.False(within.IsCancellationRequested, $"{Trail()}:{Environment.NewLine}{string.Join(Environment.NewLine, lost)}");
            await timer.WaitForNextTickAsync();
        }

        _checked += _entry.Entries.Count;
    }

    private static bool Holds(VisitDraft draft, string key, RandomEntry.Entry entry) => Text(draft, key) == entry.Text && (entry.Unit is null || draft.Field(key)?.Unit == entry.Unit);

    // Keys of a box that was not left yet are kept apart from its text.
    private static string Text(VisitDraft draft, string key) => draft.Field(key)?.Typing ?? draft.Text(key);

    private async Task<List<string>> LostAsync()
    {
        if (_entry.Entries.Count == 0)
        {
            return [];
        }

        if (await _draftAsync() is not { } draft)
        {
            return ["No draft is kept."];
        }

        var boxes = await _page.EvaluateAsync<Dictionary<string, string>>(Boxes);
        return
        [
            .. _entry.Entries.Where(one => !Holds(draft, one.Key, one.Value)).Select(one => $"kept: {one.Key} is '{Text(draft, one.Key)}' {draft.Field(one.Key)?.Unit} instead of {one.Value}"),
            .. _entry.Entries.Where(one => boxes.TryGetValue(one.Key, out var shown) && shown != one.Value.Text).Select(one => $"shown: {one.Key} is '{boxes[one.Key]}' instead of {one.Value}"),
        ];
    }

    // In another order each time, so that a short walk has all acts in it.
    private (string Name, Func<Task> DoAsync) Next()
    {
        if (_next.Count == 0)
        {
            var order = _acts.ToArray();
            _random.Shuffle(order);
            Array.ForEach(order, _next.Enqueue);
        }

        return _next.Dequeue();
    }

    private async Task StepAsync()
    {
        var steps = _page.Locator(".lb-step, .lb-next");
        await Expect(steps.First).ToBeVisibleAsync();
        await steps.Nth(_random.Next(await steps.CountAsync())).ClickAsync();
    }

    private Task TurnAsync() => _page.ViewportSize is { } now ? _page.SetViewportSizeAsync(now.Height, now.Width) : Task.CompletedTask;

    private string Trail() => $"Seed {_seed}, act {_trail.Count}, after {string.Join(", ", _trail.TakeLast(CheckEach))}";
}
