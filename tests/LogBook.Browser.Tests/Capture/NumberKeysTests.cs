using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using LogBook.Testing.Numbers;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The key sequences of the parser's own test, pressed in the boxes of the tablet's form: each is shown and kept as it is read, or asked about.</summary>
public sealed class NumberKeysTests(ITestOutputHelper output)
{
    // Compares boxes, echoes, questions and the kept draft with what is wanted until they agree; gives what does not in the end.
    private const string Differences = """
        async ([wanted, longest]) => {
          const desk = await import("/capture/desk.js");
          const words = (found) => [...found].map((one) => one.textContent.replace(/\s+/g, " ").trim());
          const differences = (fields) => wanted.flatMap(({ id, key, text, echo, asks, isNone }) => {
            const note = document.getElementById(id + "-note");
            const seen = {
              box: document.getElementById(id).value,
              kept: fields[key]?.typing ?? fields[key]?.text ?? "",
              echo: words(note.querySelectorAll(".lb-echo")).join(),
              asks: words(note.querySelectorAll(".lb-row button")).join(" | "),
              isNone: isNone && note.querySelector(".lb-problem") !== null,
            };
            const wants = { box: text, kept: text, echo, asks: asks.join(" | "), isNone };
            return JSON.stringify(seen) === JSON.stringify(wants) ? [] : [`${key}: ${JSON.stringify(seen)} instead of ${JSON.stringify(wants)}`];
          });
          for (const begun = performance.now(); ; await new Promise(requestAnimationFrame)) {
            const { fields } = JSON.parse(await desk.draft((await desk.drafts()).find((row) => !row.closed).id));
            const found = differences(fields);
            if (found.length === 0 || performance.now() - begun > longest) return found;
          }
        }
        """;

    private const double LongestMs = 20_000;

    private static readonly string[] Boxes = [.. TypedVisit.Water.Select(field => field.Key)];

    // Of each locale; all of them take minutes, so the short form takes every nth.
    private static int Most => int.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_SEQUENCES"), CultureInfo.InvariantCulture, out var given) ? given : 60;

    [Fact]
    [Trait("goal", "U1")]
    public async Task Boxes_KeySequencesOfEachLocale_ShowAndKeepWhatIsRead()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "number-keys", locale: null);
        await tablet.RegisterAsync();
        foreach (var (locale, language, _, _) in KeySequences.Locales)
        {
            await tablet.SetLocaleAsync(locale);
            await tablet.GoHomeAsync();
            var (name, open) = language switch
            {
                Language.Spanish => ("Español", "Abrir"),
                Language.Portuguese => ("Português", "Abrir"),
                _ => ("English", "Open"),
            };
            await tablet.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
            await tablet.OpenVisitAsync(JobHost.Site, open);
            Assert.Equal(locale, await tablet.Page.EvaluateAsync<string>("() => new Intl.NumberFormat().resolvedOptions().locale"));
            await tablet.Page.StepAsync(EntryTexts.Water.In(language));
            await PressAllAsync(tablet, locale, language);
        }
    }

    private async Task PressAllAsync(Tablet tablet, string locale, Language language)
    {
        KeySequence[] all = [.. KeySequences.ByHand, .. KeySequences.WrittenIn(locale)];
        Assert.True(all.Length >= 200, $"{locale}: {all.Length} sequences");
        var nth = Math.Max(1, all.Length / Most);
        var random = new Random(20250331);
        var from = random.Next(nth);
        var chosen = all.Where((_, at) => at % nth == from).ToArray();
        random.Shuffle(chosen);
        var (lasted, waiting, asked) = (Stopwatch.StartNew(), chosen.ToList(), 0);
        var last = new Dictionary<string, string>(StringComparer.Ordinal);
        while (waiting.Count > 0)
        {
            List<(string Key, KeySequence Sequence, NumberReading Reading)> pressed = [];
            foreach (var key in Boxes.Take(waiting.Count))
            {
                // What comes of it is another than before in that box, so that nothing old can be taken for it.
                var sequence = waiting.Find(one => Said(one, language) != last.GetValueOrDefault(key)) ?? waiting[0];
                waiting.Remove(sequence);
                var reading = NumberEntry.Parse(sequence.Text, language);
                Assert.True(sequence.Allows(reading), $"{locale}: {sequence}, read as {KeySequences.Said(reading)}");
                await PressAsync(tablet.Page, key, sequence);
                last[key] = Said(sequence, language);
                asked += reading.Kind == NumberReadingKind.Ask ? 1 : 0;
                pressed.Add((key, sequence, reading));
            }

            await tablet.Page.Field(pressed[^1].Key).BlurAsync();
            await ShownAndKeptAsync(tablet, locale, language, pressed);
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{locale}: {chosen.Length} of {all.Length} key sequences pressed in {lasted.Elapsed.TotalSeconds:0} s, {asked} asked about: 0 shown or kept otherwise than read."));
    }

    private static string Said(KeySequence sequence, Language language) => KeySequences.Said(NumberEntry.Parse(sequence.Text, language));

    private static async Task PressAsync(IPage page, string key, KeySequence sequence)
    {
        await page.Field(key).FocusAsync();
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.PressAsync("Backspace");
        foreach (var stroke in sequence.Strokes)
        {
            await (stroke == KeySequence.Delete ? page.Keyboard.PressAsync("Backspace") : page.Keyboard.TypeAsync(stroke));
        }
    }

    private static async Task ShownAndKeptAsync(Tablet tablet, string locale, Language language, List<(string Key, KeySequence Sequence, NumberReading Reading)> pressed)
    {
        List<object> wanted = [];
        foreach (var (key, sequence, reading) in pressed)
        {
            var unit = await tablet.Page.Field(key).GetAttributeAsync("data-unit");
            string Words(double number) => Spaced((reading.Qualifier is { } sign ? sign + " " : string.Empty) + (string.IsNullOrEmpty(unit) ? Shown.Entered(number, language) : Shown.Entered(number, unit, language)));
            wanted.Add(new
            {
                id = DraftKey.ElementId(key),
                key,
                text = sequence.Text,
                echo = reading.Value is { } value ? EntryTexts.Understood.In(language, Words(value)) : string.Empty,
                asks = reading.Choices.Select(Words).ToArray(),
                isNone = reading.Kind is NumberReadingKind.NotANumber or NumberReadingKind.TooManyDigits,
            });
        }

        var differences = await tablet.Page.EvaluateAsync<string[]>(Differences, new object[] { wanted, LongestMs });
        Assert.True(differences.Length == 0, locale + Environment.NewLine + string.Join(Environment.NewLine, differences));
        var draft = VisitDraft.FromJson(await tablet.AskAsync<string>("desk.js", "async (desk) => desk.draft((await desk.drafts()).find((row) => !row.closed).id)"));
        foreach (var (key, sequence, reading) in pressed)
        {
            Assert.Equal((locale, sequence.Keys, reading.Value), (locale, sequence.Keys, draft.Number(key)));
        }
    }

    // Spaces that do not break look the same on the page.
    private static string Spaced(string words) => words.Replace('\u00a0', ' ').Replace('\u202f', ' ');
}
