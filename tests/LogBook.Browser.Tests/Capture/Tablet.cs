using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A tablet: Chromium with a profile that outlives it, so that a dead battery can be tried.</summary>
public sealed class Tablet : IAsyncDisposable
{
    /// <summary>PIN of the technician.</summary>
    public const string Pin = "246810";

    private const int Longest = 120_000;

    // The device's clock as all scripts and .NET see it: Date alone, so that what waits, waits by the real clock.
    private const string OwnClock = """
        (() => {
          const Real = Date;
          const now = () => Real.now() + Number((location.protocol.startsWith("http") && localStorage.getItem("test-clock-ahead")) || AHEAD);
          globalThis.Date = new Proxy(Real, {
            construct: (target, given, as) => Reflect.construct(target, given.length > 0 ? given : [now()], as === globalThis.Date ? target : as),
            apply: () => new Real(now()).toString(),
            get: (target, name) => (name === "now" ? now : target[name]),
          });
        })();
        """;

    private readonly string _profile = Directory.CreateTempSubdirectory("logbook-tablet-").FullName;
    private readonly Uri _address;
    private readonly List<string> _console = [];
    private readonly string _pictures;
    private IPlaywright? _playwright;
    private IBrowserContext? _context;
    private ICDPSession? _emulation;
    private readonly DateTimeOffset? _clock;
    private readonly string? _zone;
    private readonly string? _locale;
    private readonly IReadOnlyList<string> _flags;
    private readonly string? _platform;
    private int _pictureNumber;

    private Tablet(Uri address, string name, DateTimeOffset? clock, string? zone, string? locale, IReadOnlyList<string> flags, string? platform)
    {
        _flags = flags;
        _platform = platform;
        _locale = locale;
        _clock = clock;
        _zone = zone;
        _address = address;
        _pictures = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "TestResults", name)).FullName;
    }

    /// <summary>The one page of the tablet.</summary>
    public IPage Page { get; private set; } = null!;

    /// <summary>What the console said, as "type: text".</summary>
    public IReadOnlyList<string> Console => _console;

    /// <summary>Switches a new tablet on.</summary>
    /// <param name="address">Where the server is reached.</param>
    /// <param name="name">Folder of its pictures.</param>
    /// <param name="clock">What its clock shows now; the real one when null.</param>
    /// <param name="zone">Its zone; null for one that can be changed while it runs.</param>
    /// <param name="locale">Language and region of its browser; null for one that can be changed while it runs.</param>
    /// <param name="flags">More switches of its browser.</param>
    /// <param name="platform">Script that stands in for what this machine's browser lacks, before any of the page.</param>
    public static async Task<Tablet> StartAsync(
        Uri address, string name, DateTimeOffset? clock = null, string? zone = "Europe/London", string? locale = "en-GB", IReadOnlyList<string>? flags = null, string? platform = null)
    {
        SetDefaultExpectTimeout(Longest);
        var tablet = new Tablet(address, name, clock, zone, locale, flags ?? [], platform) { _playwright = await Playwright.CreateAsync() };
        await tablet.SwitchOnAsync();
        return tablet;
    }

    /// <summary>Starts the browser on the tablet's profile and opens the shell.</summary>
    public async Task SwitchOnAsync()
    {
        await StartBrowserAsync();
        await Page.GotoAsync("/capture/");
        await Expect(Page.Locator("html[data-ready=shell]")).ToHaveCountAsync(1);
    }

    /// <summary>Ends the browser in good order.</summary>
    public async Task SwitchOffAsync()
    {
        await _context!.DisposeAsync();
        _context = null;
    }

    /// <summary>Starts the browser on the tablet's profile; no page is open yet.</summary>
    public async Task StartBrowserAsync()
    {
        _context = await _playwright!.Chromium.LaunchPersistentContextAsync(_profile, new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("LOGBOOK_CHROMIUM") ?? "/usr/bin/chromium",
            Args = [.. TestBrowser.Flags, .. _flags],
            ViewportSize = new() { Width = 820, Height = 1180 },
            HasTouch = true,
            Locale = _locale,
            TimezoneId = _zone,
            BaseURL = _address.ToString(),
        });
        _context.SetDefaultTimeout(Longest);
        _context.Console += (_, message) => _console.Add($"{message.Type}: {message.Text}");
        _context.WebError += (_, error) => _console.Add($"uncaught: {error.Error}");
        if (_clock is { } clock)
        {
            await _context.AddInitScriptAsync(OwnClock.Replace("AHEAD", Milliseconds(clock), StringComparison.Ordinal));
        }

        if (_platform is not null)
        {
            await _context.AddInitScriptAsync(_platform);
        }

        Page = _context.Pages.Count > 0 ? _context.Pages[0] : await _context.NewPageAsync();
    }

    /// <summary>Sets the clock of a tablet that was started with one of its own.</summary>
    public Task SetClockAsync(DateTimeOffset clock) => Page.EvaluateAsync("(ahead) => localStorage.setItem('test-clock-ahead', ahead)", Milliseconds(clock));

    /// <summary>Takes the tablet to another zone.</summary>
    public async Task SetZoneAsync(string zone)
    {
        // One session: a second one may not override what the first has set.
        _emulation ??= await _context!.NewCDPSessionAsync(Page);
        await _emulation.SendAsync("Emulation.setTimezoneOverride", new() { ["timezoneId"] = zone });
    }

    /// <summary>Gives the browser of a tablet that was started without one another locale.</summary>
    public async Task SetLocaleAsync(string locale)
    {
        _emulation ??= await _context!.NewCDPSessionAsync(Page);
        await _emulation.SendAsync("Emulation.setLocaleOverride", new() { ["locale"] = locale });
    }

    /// <summary>Makes the tablet as slow as an old one.</summary>
    public async Task SlowDownAsync(double times)
    {
        var session = await _context!.NewCDPSessionAsync(Page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = times });
    }

    /// <summary>Presses digits, and Enter for \r, in the pace of a hand: each when it is due, whether or not the page has taken the one before.</summary>
    public async Task TypeLikeAHandAsync(string keys, TimeSpan pause)
    {
        var session = await _context!.NewCDPSessionAsync(Page);
        using var pace = new PeriodicTimer(pause);
        List<Task> taken = [];
        foreach (var key in keys)
        {
            var press = new Dictionary<string, object> { ["key"] = key == '\r' ? "Enter" : $"{key}", ["windowsVirtualKeyCode"] = (int)key };
            taken.Add(session.SendAsync("Input.dispatchKeyEvent", new(press) { ["type"] = "keyDown", ["text"] = $"{key}" }));
            taken.Add(session.SendAsync("Input.dispatchKeyEvent", new(press) { ["type"] = "keyUp" }));
            await pace.WaitForNextTickAsync();
        }

        await Task.WhenAll(taken);
        await session.DetachAsync();
    }

    /// <summary>The battery is dead: every process of the browser ends at once.</summary>
    public async Task DieAsync()
    {
        var processes = Process.GetProcesses().Where(process => CommandLine(process.Id).Contains(_profile, StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(processes);
        foreach (var process in processes)
        {
            process.Kill();
        }

        foreach (var process in processes)
        {
            await process.WaitForExitAsync();
            process.Dispose();
        }

        // Chromium marks its profile as in use and would wait for a browser that is gone.
        foreach (var name in new[] { "SingletonLock", "SingletonCookie", "SingletonSocket" })
        {
            File.Delete(Path.Combine(_profile, name));
        }
    }

    /// <summary>Registers the technician, brings the round and waits until the whole form is on the device.</summary>
    public async Task RegisterAsync()
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = "Sign in" }).ClickAsync();
        await Page.GetByLabel("E-mail").FillAsync(JobHost.Technician);
        await Page.GetByLabel("Password").FillAsync(LogBookWebApp.Password);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await Page.WaitForURLAsync("**/capture/**");
        await Page.FillAsync("#tablet", "Barge tablet");
        await Page.FillAsync("#pin", Pin);
        await Page.FillAsync("#pin-again", Pin);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Register this tablet" }).ClickAsync();
        await Expect(Page.Locator(".stop").First).ToBeVisibleAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Bring the round" })).ToBeEnabledAsync();
        await Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null");
    }

    /// <summary>Registers another person with signal, beside those that the tablet knows.</summary>
    /// <param name="email">Their account.</param>
    /// <param name="pin">Their PIN.</param>
    public async Task RegisterAnotherAsync(string email, string pin)
    {
        await Page.Context.ClearCookiesAsync();
        await Page.GotoAsync("/capture/#/register");
        await Page.GetByRole(AriaRole.Link, new() { Name = "Sign in" }).ClickAsync();
        await Page.GetByLabel("E-mail").FillAsync(email);
        await Page.GetByLabel("Password").FillAsync(LogBookWebApp.Password);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await Page.WaitForURLAsync("**/capture/**");
        await Expect(Page.Locator("html[data-ready=shell]")).ToHaveCountAsync(1);
        await Page.GotoAsync("/capture/#/register");
        await Page.FillAsync("#tablet", "Barge tablet");
        await Page.FillAsync("#pin", pin);
        await Page.FillAsync("#pin-again", pin);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Register this tablet" }).ClickAsync();
        await Expect(Page.GetByRole(AriaRole.Button, new() { Name = "Bring the round" })).ToBeEnabledAsync();
    }

    /// <summary>Waits until what the device holds of a site says this. The button tells nothing of it: it can be pressed both before and after.</summary>
    public Task BroughtAsync(string site, string says) => UntilAsync(
        """
        async ([site, says]) => {
            const [round, people] = await Promise.all([import("/capture/round.js"), import("/capture/people.js")]);
            return (await round.sheet(people.at(), site))?.includes(says);
        }
        """,
        new[] { site, says });

    /// <summary>Waits until an asynchronous function of the page says yes. The driver's own wait takes the promise of one for its answer, and waits for nothing.</summary>
    public async Task UntilAsync(string function, object? argument = null) => Assert.True(
        await Page.EvaluateAsync<bool>(
            $$"""
            async ([argument, longest]) => {
                const holds = {{function}};
                for (const begun = performance.now(); performance.now() - begun < longest; await new Promise(requestAnimationFrame)) {
                    if (await holds(argument)) return true;
                }
                return false;
            }
            """,
            new[] { argument, Longest }),
        "It did not come about: " + function);

    /// <summary>Opens the form of a site, with the PIN where it is asked for.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="open">What the button under the PIN says in the language of the tablet.</param>
    public async Task OpenVisitAsync(string site, string open = "Open")
    {
        await Page.GotoAsync("/capture/#/visit/" + site);
        await EnterPinAsync(open);
    }

    /// <summary>Waits for the form, and enters the PIN where it is asked for.</summary>
    /// <param name="open">What the button under the PIN says in the language of the tablet.</param>
    public async Task EnterPinAsync(string open = "Open")
    {
        var pin = Page.Locator("#pin");
        await Expect(pin.Or(Page.Locator(".lb-form"))).ToBeVisibleAsync();
        if (await pin.IsVisibleAsync())
        {
            await pin.FillAsync(Pin);
            await Page.GetByRole(AriaRole.Button, new() { Name = open, Exact = true }).ClickAsync();
        }

        await Expect(Page.Locator(".lb-form")).ToBeVisibleAsync();
    }

    /// <summary>Back to the shell.</summary>
    public async Task GoHomeAsync()
    {
        await Page.GotoAsync("/capture/#/");
        await Expect(Page.Locator("#view h2").First).ToBeVisibleAsync();
    }

    /// <summary>Asks one of the page's own modules.</summary>
    /// <param name="script">Function of the module and the argument, as in <c>(desk, id) => desk.draft(id)</c>.</param>
    /// <param name="module">Its file.</param>
    /// <param name="argument">Handed on.</param>
    public Task<T> AskAsync<T>(string module, string script, object? argument = null) =>
        Page.EvaluateAsync<T>($"async (argument) => ({script})(await import('/capture/{module}'), argument)", argument);

    /// <summary>Keeps a picture of the whole page.</summary>
    public Task PictureAsync(string name) => Page.ScreenshotAsync(new() { Path = Path.Combine(_pictures, $"{++_pictureNumber:00}-{name}.png"), FullPage = true });

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await File.WriteAllLinesAsync(Path.Combine(_pictures, "console.txt"), _console);
        if (_context is not null)
        {
            await _context.DisposeAsync();
        }

        _playwright?.Dispose();
        Directory.Delete(_profile, recursive: true);
    }

    private static string Milliseconds(DateTimeOffset clock) => (clock - TimeProvider.System.GetUtcNow()).TotalMilliseconds.ToString("0", CultureInfo.InvariantCulture);

    private static string CommandLine(int process)
    {
        try
        {
            return File.ReadAllText($"/proc/{process}/cmdline");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return string.Empty;
        }
    }
}
