using LogBook.Browser.Tests.Jobs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The browser is asked once to keep the tablet's store, and what it does not promise is said.</summary>
public sealed class KeepStorageTests
{
    // Whether a browser promises depends on what it knows of the person; here it says what the test wants.
    private const string Browser = """
        navigator.storage.persist = async () => {
          console.info("asked to keep");
          return Boolean(localStorage.getItem("test-promises"));
        };
        navigator.storage.persisted = async () => Boolean(localStorage.getItem("test-promises"));
        """;

    private const string Refused = "The browser may clear this store when the device is full.";

    [Fact]
    public async Task Register_AsksOnce_ARefusalIsSaid_AndCanBeAskedAgain()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "keep-storage", platform: Browser);
        Assert.Equal(0, Asked(tablet));
        await tablet.RegisterAsync();

        await Expect(tablet.Page.GetByText(Refused)).ToBeVisibleAsync();
        await tablet.SwitchOffAsync();
        await tablet.SwitchOnAsync();
        await Expect(tablet.Page.GetByText(Refused)).ToBeVisibleAsync();
        Assert.Equal(1, Asked(tablet));
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Español", Exact = true }).ClickAsync();
        await Expect(tablet.Page.GetByText("El navegador puede borrar este almacén si el dispositivo se llena.")).ToBeVisibleAsync();
        await tablet.PictureAsync("refused");

        await tablet.Page.EvaluateAsync("() => localStorage.setItem('test-promises', 'yes')");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Pedir que se conserve", Exact = true }).ClickAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Pedir que se conserve", Exact = true })).ToHaveCountAsync(0);
        Assert.Equal(2, Asked(tablet));
    }

    private static int Asked(Tablet tablet) => tablet.Console.Count(line => line.EndsWith("asked to keep", StringComparison.Ordinal));
}
