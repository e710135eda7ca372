using LogBook.Web.Tests.Hosting;
using Microsoft.Playwright;

namespace LogBook.Browser.Tests;

/// <summary>The host on loopback and the system's Chromium; counts what a browser test must never see.</summary>
public sealed class BrowserHost : IAsyncLifetime
{
    private readonly List<string> _complaints = [];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public LogBookWebApp App { get; } = new();

    public Uri Address { get; private set; } = default!;

    /// <summary>Messages about the content security policy, errors of scripts, and requests to other hosts.</summary>
    public IReadOnlyList<string> Complaints
    {
        get
        {
            lock (_complaints)
            {
                return [.. _complaints];
            }
        }
    }

    public async Task InitializeAsync()
    {
        App.UseKestrel(0);
        App.StartServer();
        await TwoCustomers.AddAsync(App);
        Address = App.ClientOptions.BaseAddress;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        await App.DisposeAsync();
    }

    /// <summary>A page in a profile of its own.</summary>
    public async Task<IPage> PageAsync(int width = 1280, int height = 900, ColorScheme look = ColorScheme.Light)
    {
        var context = await _browser!.NewContextAsync(new()
        {
            BaseURL = Address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = look,
            Locale = "en-GB",
        });
        var page = await context.NewPageAsync();
        page.Console += (_, message) =>
        {
            if (message.Type == "error" || message.Text.Contains("Content Security Policy", StringComparison.OrdinalIgnoreCase))
            {
                Complain(message.Text);
            }
        };
        page.PageError += (_, error) => Complain(error);
        page.Request += (_, request) =>
        {
            var uri = new Uri(request.Url);
            if (uri.Scheme is "http" or "https" or "ws" or "wss" && uri.Authority != Address.Authority)
            {
                Complain("request to " + uri.Authority);
            }
        };
        return page;
    }

    /// <summary>Signs in by the form.</summary>
    public static async Task SignInAsync(IPage page, string email)
    {
        await page.GotoAsync("/account/sign-in");
        await page.FillAsync("#email", email);
        await page.FillAsync("#password", LogBookWebApp.Password);
        await page.ClickAsync("button.main");
        await page.WaitForURLAsync(url => !url.Contains("/account/sign-in", StringComparison.Ordinal));
    }

    private void Complain(string text)
    {
        lock (_complaints)
        {
            _complaints.Add(text);
        }
    }
}
