using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Browsers;

/// <summary>A real Chromium with pages of the size of a tablet; keeps what their consoles say and pictures of the main steps.</summary>
public sealed class TestBrowser : IAsyncDisposable
{
    // Shared machines are slow at times; these are limits, not waits.
    private const int Longest = 60_000;

    /// <summary>How Chromium is started: without a screen's help, and without a word to anybody outside.</summary>
    public static IReadOnlyList<string> Flags { get; } =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;
    private readonly List<string> _console = [];
    private int _pictures;

    private TestBrowser(IPlaywright playwright, IBrowser browser, string name)
    {
        Pictures = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "TestResults", name)).FullName;
        _playwright = playwright;
        _browser = browser;
    }

    /// <summary>Folder of the pictures.</summary>
    public string Pictures { get; }

    /// <summary>What the consoles said, as "type: text".</summary>
    public IReadOnlyList<string> Console => _console;

    /// <summary>Starts a browser. LOGBOOK_CHROMIUM names another than Debian's.</summary>
    /// <param name="name">Folder for its pictures.</param>
    public static async Task<TestBrowser> StartAsync(string name)
    {
        Assertions.SetDefaultExpectTimeout(Longest);
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("LOGBOOK_CHROMIUM") ?? "/usr/bin/chromium",
            Args = Flags,
        });
        return new TestBrowser(playwright, browser, name);
    }

    /// <summary>A page of its own with cookies of its own, 820 by 1180.</summary>
    /// <param name="address">Where the host listens.</param>
    /// <param name="locale">Language and region of the browser itself.</param>
    public async Task<IPage> OpenAsync(Uri address, string locale = "en-GB")
    {
        var context = await _browser.NewContextAsync(new()
        {
            BaseURL = address.ToString(),
            ViewportSize = new() { Width = 820, Height = 1180 },
            HasTouch = true,
            Locale = locale,
            TimezoneId = "Europe/London",
        });
        context.SetDefaultTimeout(Longest);
        context.Console += (_, message) => _console.Add($"{message.Type}: {message.Text}");
        context.WebError += (_, error) => _console.Add($"uncaught: {error.Error}");
        return await context.NewPageAsync();
    }

    /// <summary>Keeps a picture of the whole page.</summary>
    public async Task PictureAsync(IPage page, string name) => await page.ScreenshotAsync(new()
    {
        Path = Path.Combine(Pictures, $"{++_pictures:00}-{name}.png"),
        FullPage = true,
    });

    /// <summary>Ends the browser as a dead battery does: without a word to any page.</summary>
    public async Task KillAsync()
    {
        var gone = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        _browser.Disconnected += (_, _) => gone.TrySetResult();
        var session = await _browser.NewBrowserCDPSessionAsync();

        // The answer never comes: the process that would give it is gone.
        _ = session.SendAsync("Browser.crash").ContinueWith(static call => call.Exception, TaskScheduler.Default);
        await gone.Task.WaitAsync(TimeSpan.FromMilliseconds(Longest));
    }

    /// <summary>Leaves pictures of what was last seen and the consoles' lines beside the others, then ends the browser.</summary>
    public async ValueTask DisposeAsync()
    {
        foreach (var page in _browser.IsConnected ? _browser.Contexts.SelectMany(context => context.Pages) : [])
        {
            await PictureAsync(page, "last");
        }

        await File.WriteAllLinesAsync(Path.Combine(Pictures, "console.txt"), _console);
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}
